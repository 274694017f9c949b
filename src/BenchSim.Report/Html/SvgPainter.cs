using System.Collections.Immutable;
using BenchSim.Report.Charts;
using BenchSim.Report.Words;

namespace BenchSim.Report.Html;

/// <summary>Draws charts as SVG in the page: text stays text, and each mark takes its colour from the class
/// that its look is called by.</summary>
internal static class SvgPainter
{
    private const double Width = 760;
    private const double PlotHeight = 220;
    private const double NamesWidth = 190;
    private const double HeadingHeight = 22;
    private const double Foot = 24;

    /// <summary>Writes what the looks mean.</summary>
    public static void Key(HtmlText html, ImmutableArray<KeyEntry> key)
    {
        html.Add($"<p class=\"key\">");
        foreach (var entry in key)
        {
            html.Add($"<span><i class=\"sw {entry.Look.Name}\">{(entry.Look.Dot == Dot.Diamond ? "◆" : "")}</i>{entry.OnPage}</span>");
        }

        html.Add($"</p>\n");
    }

    /// <summary>Draws a chart.</summary>
    public static void Draw(HtmlText html, Chart chart)
    {
        if (chart.Up is { } up)
        {
            Plot(html, chart, up);
        }
        else
        {
            Rows(html, chart);
        }
    }

    private static void Plot(HtmlText html, Chart chart, ChartAxis up)
    {
        var frame = new SvgFrame(chart.Across, Width, PlotHeight, 46, 8, Foot);
        frame.Open(html, chart.Label);
        frame.DrawUp(html, up);
        frame.DrawAcross(html);
        var marks = new SvgMarks(html, frame);
        foreach (var mark in chart.Marks)
        {
            marks.Add(mark, up);
            html.Add($"\n");
        }

        SvgFrame.Close(html);
    }

    private static void Rows(HtmlText html, Chart chart)
    {
        // A tall chart has its dates at the top as well.
        var tall = chart.Rows.Count() > 20;
        double head = tall ? 18 : 0;
        var rowHeight = SvgMarks.LaneHeight * chart.Lanes;
        var height = head + 10 + chart.Groups.Sum(group => HeadOf(group) + 2 + (rowHeight * group.Rows.Length)) + 26;
        var frame = new SvgFrame(chart.Across, Width, height, NamesWidth, 4 + head, Foot);
        var marks = new SvgMarks(html, frame);
        var figures = new List<(FigureMark Figure, double Y)>();
        frame.Open(html, chart.Label);
        frame.DrawAcross(html, tall);
        var y = 6 + head;
        foreach (var group in chart.Groups)
        {
            if (group.Heading is { } heading)
            {
                html.Add($"<svg x=\"0\" y=\"{y}\" width=\"{Width}\" height=\"{HeadingHeight}\"><text class=\"strong\" x=\"0\" y=\"16\">");
                html.Add($"{heading}</text></svg>\n");
            }

            y += HeadOf(group);
            foreach (var row in group.Rows)
            {
                Row(html, marks, row, y);
                figures.AddRange(row.Figures.Select(figure => (figure, y)));
                y += rowHeight;
            }

            y += 2;
        }

        foreach (var mark in chart.Marks)
        {
            marks.Add(mark, y);
        }

        // Last, so that no line runs through a figure.
        foreach (var (figure, at) in figures)
        {
            marks.Add(figure, at);
        }

        SvgFrame.Close(html);
    }

    private static void Row(HtmlText html, SvgMarks marks, ChartRow row, double y)
    {
        html.Add($"<g>");
        if (row.Told is { } told)
        {
            html.Add($"<title>{told}</title>");
        }

        html.Add($"<svg x=\"8\" y=\"{y}\" width=\"{NamesWidth - 14}\" height=\"{SvgMarks.LaneHeight}\"><text x=\"0\" y=\"13\">");
        if (row.Detail is { } detail)
        {
            // The end of an id tells successions apart: the crop gives way to it.
            var label = PlainText.Short(row.Label, 17);
            html.Add($"{label} <tspan class=\"faint\">{PlainText.Short(detail, Math.Clamp(24 - label.Length, 4, 13))}</tspan>");
        }
        else
        {
            html.Add($"{PlainText.Short(row.Label, 27)}");
        }

        html.Add($"</text></svg>");
        foreach (var mark in row.Marks)
        {
            marks.Add(mark, y);
        }

        html.Add($"</g>\n");
    }

    private static double HeadOf(RowGroup group) => group.Heading is null ? 0 : HeadingHeight;
}
