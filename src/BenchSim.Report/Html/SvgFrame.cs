using BenchSim.Report.Charts;

namespace BenchSim.Report.Html;

/// <summary>A chart on the page: its frame, its axes, and where a value lies.</summary>
internal sealed class SvgFrame(ChartAxis across, double width, double height, double left, double top, double bottom)
{
    private const double Right = 14;

    public double Left => left;

    public double Top => top;

    public double PlotWidth => width - left - Right;

    public double PlotBottom => height - bottom;

    /// <summary>Where a value of the axis below lies; of a day the left edge.</summary>
    public double X(double value) => left + ((value - across.Low) / (across.High - across.Low) * PlotWidth);

    /// <summary>Height of a value of an axis at the left.</summary>
    public double Y(double value, ChartAxis up) => PlotBottom - ((value - up.Low) / (up.High - up.Low) * (PlotBottom - top));

    /// <summary>Opens the drawing. The label says in words what the chart shows; its table follows in the page.</summary>
    public void Open(HtmlText html, string label)
    {
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"{label}\"><svg class=\"chart\" role=\"img\" ");
        html.Add($"aria-label=\"{label}\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">\n");
    }

    /// <summary>Closes the drawing.</summary>
    public static void Close(HtmlText html) => html.Add($"</svg></div>\n");

    /// <summary>Draws the axis below the plot, and its labels above it too where asked.</summary>
    public void DrawAcross(HtmlText html, bool above = false)
    {
        var end = PlotBottom;
        foreach (var tick in across.TicksOrEnds())
        {
            var x = X(tick.At);
            html.Add($"<line class=\"tick\" x1=\"{x}\" y1=\"{top}\" x2=\"{x}\" y2=\"{end + 5}\"/>");
            var fits = x + (7 * tick.Label.Length) + 4 <= width;
            if (fits)
            {
                html.Add($"<text x=\"{x + 3}\" y=\"{end + 17}\">{tick.Label}</text>");
            }

            if (fits && above)
            {
                html.Add($"<text x=\"{x + 3}\" y=\"{top - 4}\">{tick.Label}</text>");
            }
        }

        html.Add($"<line class=\"axis\" x1=\"{left}\" y1=\"{end}\" x2=\"{left + PlotWidth}\" y2=\"{end}\"/>\n");
    }

    /// <summary>Draws an axis at the left.</summary>
    public void DrawUp(HtmlText html, ChartAxis up)
    {
        foreach (var tick in up.TicksOrEnds())
        {
            var y = Y(tick.At, up);
            html.Add($"<line class=\"grid\" x1=\"{left}\" y1=\"{y}\" x2=\"{left + PlotWidth}\" y2=\"{y}\"/>");
            html.Add($"<text class=\"end\" x=\"{left - 6}\" y=\"{y + 4}\">{tick.Label}</text>");
        }
    }
}
