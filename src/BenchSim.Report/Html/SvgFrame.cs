using BenchSim.Report.Charts;
using BenchSim.Report.Words;

namespace BenchSim.Report.Html;

/// <summary>A chart over the dates of the play: its frame, its axes, and where a day lies.</summary>
internal sealed class SvgFrame(Dates dates, double width, double height, double left, double top, double bottom)
{
    private const double Right = 14;

    public double Width => width;

    public double Height => height;

    public double Left => left;

    public double Top => top;

    public double PlotWidth => width - left - Right;

    public double PlotBottom => height - bottom;

    /// <summary>Left edge of a day.</summary>
    public double X(double day) => left + (day / Math.Max(1, dates.Days) * PlotWidth);

    /// <summary>Opens the drawing. The label says in words what the chart shows; its table follows in the page.</summary>
    public void Open(HtmlText html, string label) =>
        html.Add(
            $"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"{label}\"><svg class=\"chart\" role=\"img\" aria-label=\"{label}\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">\n"
        );

    /// <summary>Closes the drawing.</summary>
    public static void Close(HtmlText html) => html.Add($"</svg></div>\n");

    /// <summary>Draws the axis of dates below the plot, and its labels above it too where asked.</summary>
    public void DrawDates(HtmlText html, bool above = false)
    {
        var end = PlotBottom;
        foreach (var tick in DateTick.Of(dates))
        {
            var x = X(tick.Day);
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

    /// <summary>Draws a scale of whole numbers at the left.</summary>
    public void DrawScale(HtmlText html, PlaceScale scale)
    {
        foreach (var mark in scale.Marks)
        {
            var y = Y(mark, scale);
            html.Add($"<line class=\"grid\" x1=\"{left}\" y1=\"{y}\" x2=\"{left + PlotWidth}\" y2=\"{y}\"/>");
            html.Add($"<text class=\"end\" x=\"{left - 6}\" y=\"{y + 4}\">{Numbers.Whole(mark)}</text>");
        }
    }

    /// <summary>Height of a value.</summary>
    public double Y(double value, PlaceScale scale) => PlotBottom - (value / scale.Top * (PlotBottom - top));
}
