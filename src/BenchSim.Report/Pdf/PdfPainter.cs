using System.Collections.Immutable;
using BenchSim.Report.Charts;

namespace BenchSim.Report.Pdf;

/// <summary>Draws charts on a page of paper. Places and sizes are in millimetres.</summary>
internal static class PdfPainter
{
    private const double TitleMm = 4.6;
    private const double AroundMm = 9;
    private const double MarksMm = 10;
    private const double RowMm = 5.4;
    private const double RowsFootMm = 6;
    private const double NamesMm = 46;
    private const double FiguresMm = 24;

    private static readonly Ink s_rule = PdfMarks.InkOf(Palette.Rule);
    private static readonly TextStyle s_title = new(8.5, IsBold: true);
    private static readonly TextStyle s_mark = new(7.5, Ink: Ink.Grey);
    private static readonly TextStyle s_text = new(8);
    private static readonly TextStyle s_heading = new(8, IsBold: true);

    /// <summary>Writes what the looks mean, on one line.</summary>
    public static void Key(PdfSheet sheet, ImmutableArray<KeyEntry> key, double left, double top, double width)
    {
        var each = width / key.Length;
        for (var at = 0; at < key.Length; at++)
        {
            PdfMarks.Sample(sheet, key[at].Look, left + (at * each), top);
        }

        for (var at = 0; at < key.Length; at++)
        {
            sheet.TextWithin(key[at].OnPaper, left + (at * each) + 8.5, top, each - 9, s_mark);
        }
    }

    /// <summary>Height of a chart with rows, without a title; 0 where it has none.</summary>
    public static double RowsMm(Chart chart) => Lines(chart) is > 0 and var lines ? (lines * RowMm) + RowsFootMm : 0;

    /// <summary>Draws a chart with an axis at the left.</summary>
    /// <param name="sheet">Where.</param>
    /// <param name="chart">The chart.</param>
    /// <param name="left">Left end.</param>
    /// <param name="top">Upper end.</param>
    /// <param name="width">Width with the marks at the left.</param>
    /// <param name="height">Height with the words above and below.</param>
    public static void Plot(PdfSheet sheet, Chart chart, double left, double top, double width, double height)
    {
        sheet.TextWithin(chart.Title, left, top, width, s_title);
        var frame = new PdfFrame(left + MarksMm, top + TitleMm, width - MarksMm, height - AroundMm, chart.Across, chart.Up!);
        foreach (var tick in chart.Up!.TicksOrEnds())
        {
            var y = frame.Down(tick.At);
            sheet.Rule(frame.Left, y, frame.Left + frame.Width, y, 0.15, s_rule);
            sheet.TextWithin(tick.Label, left, y - 1.9, MarksMm - 1.2, s_mark, TextSide.Right);
        }

        Across(sheet, frame);
        new PdfMarks(sheet, frame).Add(chart.Marks);
    }

    /// <summary>Says in the place of such a chart why it is not there.</summary>
    public static void Blank(PdfSheet sheet, string title, string words, double left, double top, double width, double height)
    {
        sheet.TextWithin(title, left, top, width, s_title);
        sheet.Frame(left + MarksMm, top + TitleMm, width - MarksMm, height - AroundMm, 0.1, Ink.Grey);
        var middle = top + TitleMm + ((height - AroundMm) / 2);
        sheet.TextWithin(words, left + MarksMm, middle - 1.5, width - MarksMm, s_mark, TextSide.Middle);
    }

    /// <summary>Draws a chart with rows, without its title.</summary>
    public static void Rows(PdfSheet sheet, Chart chart, double left, double top, double width)
    {
        var figures = chart.Rows.Any(row => row.Figures.Length > 0 || row.Marks.OfType<FigureMark>().Any()) ? FiguresMm : 0;
        var frame = new PdfFrame(left + NamesMm + figures, top, width - NamesMm - (2 * figures), Lines(chart) * RowMm, chart.Across, null);
        var marks = new PdfMarks(sheet, frame, RowMm / chart.Lanes, FiguresMm);
        var rows = new List<(ChartRow Row, double Y)>();
        var y = top;
        foreach (var group in chart.Groups)
        {
            if (group.Heading is { } heading)
            {
                sheet.TextWithin(heading, left, y + 0.6, width, s_heading);
                y += RowMm;
            }

            foreach (var row in group.Rows)
            {
                sheet.TextWithin(row.Detail is { } detail ? $"{row.Label} {detail}" : row.Label, left, y + 0.6, NamesMm - 1, s_text);
                marks.Add(row.Marks, y);
                rows.Add((row, y));
                y += RowMm;
            }
        }

        marks.Add(chart.Marks);

        // Last, so that no line runs through a figure.
        foreach (var (row, at) in rows)
        {
            marks.Add(row.Figures, at);
        }

        if (chart.Across.Ticks is not null)
        {
            Across(sheet, frame);
            return;
        }

        var (low, high) = (chart.Across.TicksOrEnds()[0], chart.Across.TicksOrEnds()[^1]);
        sheet.TextWithin(low.Label, frame.Left - 30, y + 0.8, 60, s_text, TextSide.Middle);
        sheet.TextWithin(high.Label, frame.Left + frame.Width - 30, y + 0.8, 30 + FiguresMm, s_text, TextSide.Middle);
    }

    private static int Lines(Chart chart) => chart.Groups.Sum(group => group.Rows.Length + (group.Heading is null ? 0 : 1));

    private static void Across(PdfSheet sheet, PdfFrame frame)
    {
        var foot = frame.Top + frame.Height;
        foreach (var tick in frame.Axis.TicksOrEnds(frame.Width > 100 ? 12 : 6))
        {
            var at = frame.Across(tick.At);
            sheet.Rule(at, foot, at, foot + 0.8, 0.2, Ink.Grey);
            if (at + 8 < frame.Left + frame.Width)
            {
                sheet.TextWithin(tick.Label, at, foot + 0.8, 10, s_mark);
            }
        }

        sheet.Rule(frame.Left, foot, frame.Left + frame.Width, foot, 0.2, Ink.Grey);
    }
}
