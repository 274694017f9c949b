using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace BenchSim.Report.Tests.Pdf;

/// <summary>Reads a PDF with a library that is not its writer. It needs no program beside the tests, and it
/// tells where each letter stands.</summary>
internal static class PdfReader
{
    private const double MmAPoint = 25.4 / 72;

    /// <summary>The text of each page, words parted by one space, in the order they were written.</summary>
    public static string[] Texts(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(page => string.Join(' ', page.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries)))];
    }

    /// <summary>Where the letters of a page stand, millimetres from the upper left corner.</summary>
    public static (string Text, double Left, double Top, double Right, double Bottom)[] Letters(byte[] pdf, int page)
    {
        using var document = PdfDocument.Open(pdf);
        var read = document.GetPage(page);
        return
        [
            .. read
                .Letters.Where(letter => letter.Value != " ")
                .Select(letter =>
                    (
                        letter.Value,
                        letter.StartBaseLine.X * MmAPoint,
                        (read.Height - letter.BoundingBox.Top) * MmAPoint,
                        letter.EndBaseLine.X * MmAPoint,
                        (read.Height - letter.BoundingBox.Bottom) * MmAPoint
                    )
                ),
        ];
    }

    /// <summary>The filled rectangles of a page, shape by shape, millimetres from the upper left corner.</summary>
    public static (double Left, double Top, double Right, double Bottom)[][] Shapes(byte[] pdf, int page)
    {
        using var document = PdfDocument.Open(pdf);
        var read = document.GetPage(page);
        return
        [
            .. read
                .Paths.Where(path => path.IsFilled)
                .Select(path =>
                    path.Select(part => part.GetBoundingRectangle()!.Value)
                        .Select(box =>
                            (
                                box.Left * MmAPoint,
                                (read.Height - box.Top) * MmAPoint,
                                box.Right * MmAPoint,
                                (read.Height - box.Bottom) * MmAPoint
                            )
                        )
                        .ToArray()
                ),
        ];
    }

    /// <summary>Width and height of each page, millimetres.</summary>
    public static (double Width, double Height)[] Sizes(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(page => (page.Width * MmAPoint, page.Height * MmAPoint))];
    }
}
