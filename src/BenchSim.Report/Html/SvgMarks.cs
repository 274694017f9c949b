using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Report.Charts;

namespace BenchSim.Report.Html;

/// <summary>Writes the marks of a chart as elements of SVG.</summary>
internal sealed class SvgMarks(HtmlText html, SvgFrame frame)
{
    /// <summary>Height that a bar takes in a row, with the gap to the next.</summary>
    public const double LaneHeight = 18;

    private const double Middle = (LaneHeight / 2) - 0.5;

    /// <summary>A mark of a chart with an axis at the left.</summary>
    public void Add(Mark mark, ChartAxis up)
    {
        switch (mark)
        {
            case LineMark line:
                var points = Scaled(line.Points, up);
                if (!line.Look.IsDotsAlone)
                {
                    html.Add($"<path class=\"{line.Look.Name}\" d=\"{new Markup("M" + Point(points[0]) + Through(points))}\"/>");
                }

                foreach (var (x, y) in line.Look.Dot == Dot.None ? [] : points)
                {
                    html.Add($"<circle class=\"{line.Look.Name}\" cx=\"{x}\" cy=\"{y}\" r=\"{line.Look.DotSize / 2}\"/>");
                }

                break;
            case BandMark band:
                var high = Scaled([.. band.Points.Select(point => (point.X, point.High))], up);
                var low = Scaled([.. band.Points.Reverse().Select(point => (point.X, point.Low))], up);
                var path = $"M{Point(high[0])}{Through(high)}{Upright(low[0])}{Through(low)}Z";
                html.Add($"<path class=\"{band.Look.Name}\" d=\"{new Markup(path)}\"/>");
                break;
            case EdgeMark { IsUpright: false } edge:
                var at = frame.Y(edge.At, up);
                html.Add(
                    $"<line class=\"{edge.Look.Name}\" x1=\"{frame.Left}\" y1=\"{at}\" x2=\"{frame.Left + frame.PlotWidth}\" y2=\"{at}\"/>"
                );
                break;
            default:
                Add(mark, 0);
                break;
        }
    }

    /// <summary>A mark in a row whose upper edge is at <paramref name="y"/>, or one over all rows.</summary>
    public void Add(Mark mark, double y)
    {
        switch (mark)
        {
            case BarMark bar:
                var (from, to) = (frame.X(Math.Min(bar.From, bar.To)), frame.X(Math.Max(bar.From, bar.To)));
                html.Add($"<rect class=\"{bar.Look.Name}\" x=\"{from}\" y=\"{Lane(y, bar.Lane) + 2.5}\" width=\"{to - from}\" ");
                html.Add($"height=\"{LaneHeight - 6}\"/>");
                break;
            case SpanMark span:
                var along = Lane(y, span.Lane) + (span.IsBelow ? LaneHeight - 1.5 : Middle);
                html.Add(
                    $"<line class=\"{span.Look.Name}\" x1=\"{frame.X(span.From)}\" y1=\"{along}\" x2=\"{frame.X(span.To)}\" "
                        + $"y2=\"{along}\"/>"
                );
                break;
            case PointMark { Look.Dot: Dot.Upright } point:
                html.Add(
                    $"<rect class=\"{point.Look.Name}\" x=\"{frame.X(point.At) - 1.5}\" y=\"{y + 1}\" width=\"3\" "
                        + $"height=\"{LaneHeight - 3}\"/>"
                );
                break;
            case PointMark point:
                Diamond(point.Look.Name, frame.X(point.At), y + Middle);
                break;
            case NoteMark note:
                html.Add($"<text class=\"faint\" x=\"{frame.X(note.At) + 4}\" y=\"{y + 13}\">{note.Text}</text>");
                break;
            case FigureMark figure:
                var x = frame.X(figure.At) + (figure.IsLeft ? -5 : 5);
                html.Add(
                    $"<text class=\"{(figure.IsLeft ? "figure end" : "figure")}\" x=\"{x}\" "
                        + $"y=\"{Lane(y, figure.Lane) + 13}\">{figure.Text}</text>"
                );
                break;
            case EdgeMark { IsUpright: true } edge:
                var over = frame.X(edge.At);
                html.Add($"<line class=\"{edge.Look.Name}\" x1=\"{over}\" y1=\"{frame.Top}\" x2=\"{over}\" y2=\"{frame.PlotBottom}\"/>");
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(mark), mark, "A mark that no row of a page draws.");
        }
    }

    private static double Lane(double y, int lane) => y + (lane * LaneHeight);

    private void Diamond(string look, double x, double y) =>
        html.Add($"<path class=\"{look}\" d=\"M{x} {y - 5.5}L{x + 5} {y}L{x} {y + 5.5}L{x - 5} {y}Z\"/>");

    private ImmutableArray<(double X, double Y)> Scaled(ImmutableArray<(double X, double Y)> points, ChartAxis up) =>
        [.. points.Select(point => (frame.X(point.X), frame.Y(point.Y, up)))];

    /// <summary>The way from the first point to the last; points on one level are one line.</summary>
    private static string Through(ImmutableArray<(double X, double Y)> points)
    {
        var path = new StringBuilder();
        for (var at = 1; at < points.Length; at++)
        {
            var (before, here) = (points[at - 1], points[at]);
            if (here.Y.Equals(before.Y))
            {
                if (at + 1 == points.Length || !points[at + 1].Y.Equals(here.Y))
                {
                    path.Append(CultureInfo.InvariantCulture, $"H{here.X:0.#}");
                }
            }
            else
            {
                path.Append(here.X.Equals(before.X) ? Upright(here) : "L" + Point(here));
            }
        }

        return path.ToString();
    }

    private static string Point((double X, double Y) at) => string.Create(CultureInfo.InvariantCulture, $"{at.X:0.#} {at.Y:0.#}");

    private static string Upright((double X, double Y) at) => string.Create(CultureInfo.InvariantCulture, $"V{at.Y:0.#}");
}
