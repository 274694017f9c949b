using System.Globalization;
using BenchSim.Report.Charts;

namespace BenchSim.Report.Pdf;

/// <summary>Puts the marks of a chart on paper.</summary>
/// <param name="sheet">The paper.</param>
/// <param name="frame">The plot.</param>
/// <param name="laneMm">Height of a bar in a row, with the gap to the next.</param>
/// <param name="figureMm">Width of a figure.</param>
internal sealed class PdfMarks(PdfSheet sheet, PdfFrame frame, double laneMm = 0, double figureMm = 0)
{
    private const double DashMm = 1.4;

    private static readonly TextStyle s_text = new(8);

    /// <summary>The ink of a colour; the darkest is black on paper.</summary>
    public static Ink InkOf(string colour, double cover = 1)
    {
        if (colour == Palette.Ink)
        {
            return Ink.Black;
        }

        byte Part(int at) =>
            (byte)Math.Round(255 - (cover * (255 - int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture))));
        return new Ink(Part(1), Part(3), Part(5));
    }

    /// <summary>A sample of a look for the key, 7 mm wide.</summary>
    public static void Sample(PdfSheet sheet, Look look, double left, double top)
    {
        if (look.IsFilled)
        {
            sheet.Fill(left, top + 0.5, 7, 3, InkOf(look));
        }
        else if (look.IsDotsAlone)
        {
            Diamond(sheet, look, left + 3.5, top + 2);
        }
        else
        {
            sheet.Curve([(left, top + 2), (left + 7, top + 2)], Thickness(look) + 0.05, InkOf(look), Dash(look));
        }
    }

    /// <summary>Draws marks, in a row where its upper end is given.</summary>
    public void Add(IEnumerable<Mark> marks, double y = 0)
    {
        foreach (var mark in marks)
        {
            Add(mark, y);
        }
    }

    private void Add(Mark mark, double y)
    {
        switch (mark)
        {
            case LineMark line:
                Line(line);
                break;
            case BandMark band:
                var high = band.Points.Select(point => (frame.Across(point.X), frame.Down(point.High)));
                var low = band.Points.Reverse().Select(point => (frame.Across(point.X), frame.Down(point.Low)));
                sheet.Area([.. high, .. low], InkOf(band.Look));
                break;
            case EdgeMark { IsUpright: true } edge:
                var x = frame.Across(edge.At);
                Stroke(edge.Look, (x, frame.Top), (x, frame.Top + frame.Height));
                break;
            case EdgeMark edge:
                var level = frame.Down(edge.At);
                Stroke(edge.Look, (frame.Left, level), (frame.Left + frame.Width, level));
                break;
            case BarMark bar:
                var (from, to) = (frame.Across(bar.From), frame.Across(bar.To));
                sheet.Fill(
                    Math.Min(from, to),
                    y + (bar.Lane * laneMm) + 0.6,
                    Math.Max(0.05, Math.Abs(to - from)),
                    laneMm - 1.2,
                    InkOf(bar.Look)
                );
                break;
            case SpanMark span:
                var along = y + (laneMm * (span.Lane + (span.IsBelow ? 0.95 : 0.5)));
                Stroke(span.Look, (frame.Across(span.From), along), (frame.Across(span.To), along));
                break;
            case PointMark { Look.Dot: Dot.Upright } point:
                Stroke(point.Look, (frame.Across(point.At), y + 0.3), (frame.Across(point.At), y + laneMm - 0.3));
                break;
            case PointMark point:
                Diamond(sheet, point.Look, frame.Across(point.At), y + (laneMm / 2));
                break;
            case NoteMark note:
                sheet.TextWithin(note.Text, frame.Across(note.At) + 1, y + 0.7, frame.Width - 1, s_text);
                break;
            case FigureMark figure:
                Figure(figure, y + (figure.Lane * laneMm));
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(mark), mark, "A mark that no paper draws.");
        }
    }

    private void Line(LineMark line)
    {
        (double X, double Y)[] points = [.. line.Points.Select(point => (frame.Across(point.X), frame.Down(point.Y)))];
        if (!line.Look.IsDotsAlone)
        {
            sheet.Curve(points, Thickness(line.Look), InkOf(line.Look), Dash(line.Look));
        }

        if (line.Look.Dot != Dot.None)
        {
            foreach (var (x, y) in points)
            {
                Diamond(sheet, line.Look, x, y);
            }
        }
    }

    // It stands outside the bar, at the end it belongs to.
    private void Figure(FigureMark figure, double y)
    {
        var end = frame.Across(figure.At);
        sheet.TextWithin(
            figure.Text,
            figure.IsLeft ? end - figureMm : end + 1,
            y + 0.7,
            figureMm - 1,
            s_text,
            figure.IsLeft ? TextSide.Right : TextSide.Left
        );
    }

    private void Stroke(Look look, (double X, double Y) from, (double X, double Y) to) =>
        sheet.Curve([from, to], Thickness(look), InkOf(look), Dash(look));

    // Dots of every shape are diamonds on paper: of one colour, they are told apart by where they stand.
    private static void Diamond(PdfSheet sheet, Look look, double x, double y)
    {
        var half = look.DotSize * 0.1;
        sheet.Area([(x, y - half), (x + half, y), (x, y + half), (x - half, y)], InkOf(look));
    }

    private static Ink InkOf(Look look) => InkOf(look.Colour, look.Cover);

    private static double Thickness(Look look) => look.Width > 2 ? 0.55 : 0.4;

    private static double Dash(Look look) => look.IsDashed ? DashMm : 0;
}
