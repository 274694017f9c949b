using BenchSim.Report.Words;
using PdfSharp.Pdf;

namespace BenchSim.Report.Pdf;

/// <summary>
/// A PDF being made, page by page. It carries its own fonts, its text can be searched and copied, and it holds no time of day and no random
/// identifier: the same pages give the same bytes.
/// </summary>
internal sealed class PdfBook : IDisposable
{
    private readonly PdfDocument _document;
    private readonly List<PdfSheet> _sheets = [];

    /// <summary>An empty book.</summary>
    /// <param name="title">Title, shown by viewers in place of the file's name.</param>
    public PdfBook(string title)
    {
        PdfFontResolver.Use();
        _document = new PdfDocument { Language = "en" };
        _document.Info.Title = TitleOf(title);
        _document.Info.Creator = "BenchSim";
        _document.ViewerPreferences.DisplayDocTitle = true;
    }

    /// <summary>The pages so far.</summary>
    public IReadOnlyList<PdfSheet> Sheets => _sheets;

    /// <summary>Adds a page.</summary>
    public PdfSheet Add(PaperSize size)
    {
        var page = _document.AddPage();
        page.Width = PdfSharp.Drawing.XUnit.FromMillimeter(size.WidthMm);
        page.Height = PdfSharp.Drawing.XUnit.FromMillimeter(size.HeightMm);
        var sheet = new PdfSheet(page, size);
        _sheets.Add(sheet);
        return sheet;
    }

    /// <summary>Adds a line to the contents that viewers show beside the pages.</summary>
    /// <param name="text">The line.</param>
    /// <param name="sheet">Where it leads.</param>
    /// <param name="level">1 for a line of its own, 2 for one under the last of level 1.</param>
    public void AddToContents(string text, PdfSheet sheet, int level)
    {
        var lines = level > 1 && _document.Outlines.Count > 0 ? _document.Outlines[^1].Outlines : _document.Outlines;
        lines.Add(PlainText.OneLine(text), sheet.Page, opened: true);
    }

    /// <summary>The finished file. Nothing can be drawn after it.</summary>
    /// <exception cref="InvalidOperationException">The book has no page.</exception>
    public byte[] ToBytes()
    {
        if (_sheets.Count == 0)
        {
            throw new InvalidOperationException("A book without a page cannot be written.");
        }

        foreach (var sheet in _sheets)
        {
            sheet.Dispose();
        }

        using var stream = new MemoryStream();
        _document.Save(stream, closeStream: false);
        return PdfIdentity.Fixed(stream.ToArray());
    }

    // Without the brackets of markup, for the library copies the title into a part of the file that is XML.
    private static string TitleOf(string title) => PlainText.Short(title, 200).Replace('<', '‹').Replace('>', '›').Replace('&', '+');

    /// <inheritdoc/>
    public void Dispose() => _document.Dispose();
}
