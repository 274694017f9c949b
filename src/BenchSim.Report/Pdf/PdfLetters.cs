using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using BenchSim.Engine.Randomness;
using BenchSim.Report.Words;
using SkiaSharp;

namespace BenchSim.Report.Pdf;

/// <summary>
/// Text as the fonts of the program can set it: what has no letter there shows as an empty box, lines are as wide as measured, and what
/// does not fit is wrapped or shortened.
/// </summary>
internal static class PdfLetters
{
    /// <summary>What stands for a letter that the fonts do not have.</summary>
    public const string MissingBox = "□";

    private const string Ellipsis = "…";

    private static readonly Lazy<Face> s_regular = new(() => new Face(bold: false));
    private static readonly Lazy<Face> s_bold = new(() => new Face(bold: true));

    /// <summary>
    /// The text on one line as it is set: letters that the fonts lack become <see cref="MissingBox"/>, right-to-left letters stand in the
    /// order they are seen in (one by one: they are not joined).
    /// </summary>
    public static string Settable(string text, bool bold)
    {
        var face = bold ? s_bold.Value : s_regular.Value;
        var builder = new StringBuilder(text.Length);
        foreach (var rune in LatinAccents.Join(PlainText.OneLine(text)).EnumerateRunes())
        {
            if (IsWithoutShape(rune))
            {
                continue;
            }

            builder.Append(
                Rune.IsWhiteSpace(rune) ? " "
                : face.Has(rune) ? rune.ToString()
                : MissingBox
            );
        }

        return RightToLeftRuns.AsSeen(builder.ToString());
    }

    /// <summary>Width of settable text, millimetres.</summary>
    public static double WidthMm(string text, TextStyle style)
    {
        var face = style.IsBold ? s_bold.Value : s_regular.Value;
        double width = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            width += face.Advance(rune);
        }

        return width * style.Points * PdfSheet.MmAPoint;
    }

    /// <summary>Settable text on one line, cut so that it is no wider than that; an ellipsis shows that something is left out.</summary>
    public static string Shortened(string text, double widthMm, TextStyle style)
    {
        var line = Settable(text.Trim(), style.IsBold);
        return WidthMm(line, style) <= widthMm ? line : Cut(line, widthMm, style);
    }

    /// <summary>
    /// Settable text in lines no wider than that, broken at spaces, and inside a word that is wider than a line. Where more lines would be
    /// needed than allowed, the last one ends in an ellipsis.
    /// </summary>
    public static IReadOnlyList<string> Lines(string text, double widthMm, TextStyle style, int most = int.MaxValue)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Settable(text, style.IsBold).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (WidthMm(longer, style) <= widthMm)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = Broken(word, widthMm, style, lines);
        }

        if (line.Length > 0 || lines.Count == 0)
        {
            lines.Add(line);
        }

        if (lines.Count > most)
        {
            var last = lines[most - 1] + Ellipsis;
            lines.RemoveRange(most, lines.Count - most);
            lines[^1] = WidthMm(last, style) <= widthMm ? last : Cut(lines[^1], widthMm, style);
        }

        return lines;
    }

    // Adds the lines that a too wide word fills and returns its rest.
    private static string Broken(string word, double widthMm, TextStyle style, List<string> lines)
    {
        while (WidthMm(word, style) > widthMm)
        {
            var fit = Math.Max(FirstElement(word), Fitting(word, widthMm, style));
            if (fit == word.Length)
            {
                break;
            }

            lines.Add(word[..fit]);
            word = word[fit..];
        }

        return word;
    }

    private static string Cut(string line, double widthMm, TextStyle style)
    {
        var left = widthMm - WidthMm(Ellipsis, style);
        return left <= 0 ? "" : line[..Fitting(line, left, style)].TrimEnd() + Ellipsis;
    }

    /// <summary>Characters of the longest beginning, in whole letters with their accents, that is no wider than that.</summary>
    private static int Fitting(string text, double widthMm, TextStyle style)
    {
        double width = 0;
        var fit = 0;
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            width += WidthMm(element, style);
            if (width > widthMm)
            {
                break;
            }

            fit = elements.ElementIndex + element.Length;
        }

        return fit;
    }

    private static int FirstElement(string text) => StringInfo.GetNextTextElementLength(text);

    // Joiners and variation selectors steer how neighbours look; they have no shape of their own.
    private static bool IsWithoutShape(Rune rune) =>
        rune.Value is 0x200B or 0x200C or 0x200D or 0x2060 or 0x00AD or (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0000 and <= 0xE01EF);

    private sealed class Face
    {
        private readonly SKTypeface _typeface;
        private readonly ConcurrentDictionary<int, double> _advances = new();

        public Face(bool bold)
        {
            PdfFontResolver.Use();
            using var data = SKData.CreateCopy(PdfFontResolver.Read(bold));
            _typeface = SKTypeface.FromData(data) ?? throw new InvalidOperationException("A font of the program cannot be read.");
        }

        // Letters beyond the first plane are drawn well but copied out of the file as others, so they count as lacking.
        public bool Has(Rune rune) => rune.IsBmp && _typeface.GetGlyph(rune.Value) != 0;

        /// <summary>Width of a letter at size 1.</summary>
        public double Advance(Rune rune) => _advances.GetOrAdd(rune.Value, Measure);

        private double Measure(int rune)
        {
            using var font = new SKFont(_typeface, _typeface.UnitsPerEm)
            {
                Hinting = SKFontHinting.None,
                Subpixel = true,
                LinearMetrics = true,
            };
            return font.GetGlyphWidths([_typeface.GetGlyph(rune)])[0] / (double)_typeface.UnitsPerEm;
        }
    }
}
