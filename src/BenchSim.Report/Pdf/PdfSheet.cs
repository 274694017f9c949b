using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BenchSim.Report.Pdf;

/// <summary>One page that is drawn on. Places and sizes are in millimetres from the upper left corner.</summary>
internal sealed class PdfSheet : IDisposable
{
    /// <summary>Millimetres in a point (1/72 inch).</summary>
    public const double MmAPoint = 25.4 / 72;

    private readonly XGraphics _canvas;

    /// <summary>A sheet on a page of a book.</summary>
    public PdfSheet(PdfPage page, PaperSize size)
    {
        Page = page;
        Size = size;
        _canvas = XGraphics.FromPdfPage(page);
    }

    /// <summary>Paper.</summary>
    public PaperSize Size { get; }

    /// <summary>The page.</summary>
    internal PdfPage Page { get; }

    /// <summary>Sets one line of text as it is; letters that the fonts lack show as boxes.</summary>
    /// <param name="text">Text.</param>
    /// <param name="x">Its left end, middle or right end, by <paramref name="side"/>.</param>
    /// <param name="top">Top of the line.</param>
    /// <param name="style">How it is set.</param>
    /// <param name="side">What <paramref name="x"/> stands for.</param>
    public void Text(string text, double x, double top, TextStyle style, TextSide side = TextSide.Left) =>
        Draw(PdfLetters.Settable(text, style.IsBold), x, top, style, side);

    /// <summary>Sets one line of text no wider than that; what does not fit is cut, with an ellipsis.</summary>
    public void TextWithin(string text, double x, double top, double width, TextStyle style, TextSide side = TextSide.Left)
    {
        var at = side switch
        {
            TextSide.Left => x,
            TextSide.Middle => x + (width / 2),
            _ => x + width,
        };
        Draw(PdfLetters.Shortened(text, width, style), at, top, style, side);
    }

    /// <summary>Sets lines that are settable already, one below the other.</summary>
    /// <returns>Where the next line would begin.</returns>
    public double Lines(IEnumerable<string> lines, double x, double top, TextStyle style, TextSide side = TextSide.Left)
    {
        foreach (var line in lines)
        {
            Draw(line, x, top, style, side);
            top += style.LineMm;
        }

        return top;
    }

    /// <summary>A straight line.</summary>
    public void Rule(double x1, double y1, double x2, double y2, double thickness = 0.2, Ink ink = default) =>
        _canvas.DrawLine(new XPen(Colour(ink), Points(thickness)), Points(x1), Points(y1), Points(x2), Points(y2));

    /// <summary>The outline of a rectangle.</summary>
    public void Frame(double x, double y, double width, double height, double thickness = 0.2, Ink ink = default) =>
        _canvas.DrawRectangle(new XPen(Colour(ink), Points(thickness)), Points(x), Points(y), Points(width), Points(height));

    /// <summary>A filled rectangle.</summary>
    public void Fill(double x, double y, double width, double height, Ink ink) =>
        _canvas.DrawRectangle(new XSolidBrush(Colour(ink)), Points(x), Points(y), Points(width), Points(height));

    /// <summary>Many filled rectangles as one shape, so that no seam shows between those that touch.</summary>
    public void FillAll(IEnumerable<(double X, double Y, double Width, double Height)> parts, Ink ink)
    {
        var shape = new XGraphicsPath { FillMode = XFillMode.Winding };
        foreach ((var x, var y, var width, var height) in parts)
        {
            shape.AddRectangle(Points(x), Points(y), Points(width), Points(height));
        }

        _canvas.DrawPath(new XSolidBrush(Colour(ink)), shape);
    }

    /// <summary>A line through points.</summary>
    /// <param name="points">Two points or more.</param>
    /// <param name="thickness">Thickness.</param>
    /// <param name="ink">Colour.</param>
    /// <param name="dash">Length of a dash and of the gap behind it; 0 for a line without gaps.</param>
    public void Curve(IReadOnlyList<(double X, double Y)> points, double thickness, Ink ink, double dash = 0)
    {
        var pen = new XPen(Colour(ink), Points(thickness)) { LineJoin = XLineJoin.Bevel };
        if (dash > 0)
        {
            pen.DashPattern = [dash / thickness, dash * 0.7 / thickness];
        }

        _canvas.DrawLines(pen, Corners(points));
    }

    /// <summary>A filled area with those corners.</summary>
    public void Area(IReadOnlyList<(double X, double Y)> corners, Ink ink) =>
        _canvas.DrawPolygon(new XSolidBrush(Colour(ink)), Corners(corners), XFillMode.Winding);

    /// <inheritdoc/>
    public void Dispose() => _canvas.Dispose();

    private static double Points(double millimetres) => millimetres / MmAPoint;

    private static XPoint[] Corners(IReadOnlyList<(double X, double Y)> points) =>
        [.. points.Select(point => new XPoint(Points(point.X), Points(point.Y)))];

    private static XColor Colour(Ink ink) => XColor.FromArgb(ink.Red, ink.Green, ink.Blue);

    private void Draw(string line, double x, double top, TextStyle style, TextSide side)
    {
        if (line.Length == 0)
        {
            return;
        }

        var width = PdfLetters.WidthMm(line, style);
        var left = side switch
        {
            TextSide.Left => x,
            TextSide.Middle => x - (width / 2),
            _ => x - width,
        };
        var font = new XFont(PdfFontResolver.Family, style.Points, style.IsBold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
        _canvas.DrawString(
            line,
            font,
            new XSolidBrush(Colour(style.Ink)),
            Points(left),
            Points(top + style.BaselineMm),
            XStringFormats.Default
        );
    }
}
