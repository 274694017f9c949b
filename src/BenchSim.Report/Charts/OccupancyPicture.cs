using BenchSim.Report.Words;
using BenchSim.Study.Results;
using ScottPlot;
using ScottPlot.Plottables;

namespace BenchSim.Report.Charts;

/// <summary>One space by day: places there are, held (band and median) and wanted (median).</summary>
internal static class OccupancyPicture
{
    /// <summary>Width of the picture in layout pixels.</summary>
    public const int Width = 960;

    /// <summary>Height of the picture in layout pixels.</summary>
    public const int Height = 420;

    /// <summary>Draws it as PNG.</summary>
    public static byte[] Draw(SpaceResult space, StudyResult result)
    {
        var dates = new Dates(result.Plan);
        using var plot = Picture.Blank(
            $"{Picture.InDrawingOrder(PlainText.Short(space.Space.Name, 60))}: places by day, "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")}"
        );
        var days = dates.Days;
        var scale = new PlaceScale(
            Enumerable.Range(0, days).Max(day => Math.Max(space.Places[day], Math.Max(space.Held[day].P90, space.Wanted[day].P50)))
        );

        (var edges, var low) = Steps(days, day => space.Held[day].P10);
        (_, var high) = Steps(days, day => space.Held[day].P90);
        var band = plot.Add.FillY(edges, low, high);
        band.FillColor = Palette.Held.WithAlpha(0.25);
        band.LineWidth = 0;
        band.LegendText = "held, eight seasons of ten";

        // What is held lies over the places there are, so that it is seen where the space is full.
        Line(plot, days, day => space.Places[day], Palette.Ink, 2.5f, LinePattern.Solid, "places there are");
        Line(plot, days, day => space.Wanted[day].P50, Palette.Wanted, 2, LinePattern.Dashed, "wanted without limit, median");
        Line(plot, days, day => space.Held[day].P50, Palette.Held, 2, LinePattern.Solid, "held, median");

        Picture.DateAxis(plot, dates);
        int[] marks = [.. scale.Marks];
        plot.Axes.Left.SetTicks([.. marks.Select(mark => (double)mark)], [.. marks.Select(mark => Numbers.Whole(mark))]);
        plot.Axes.Left.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.OffsetY = Picture.LabelDrop;
        plot.Axes.SetLimits(0, days, 0, scale.Top);
        Picture.Legend(plot);
        return Picture.Png(plot, Width, Height);
    }

    private static void Line(Plot plot, int days, Func<int, int> value, Color color, float width, LinePattern pattern, string legend)
    {
        (var xs, var ys) = Steps(days, value);
        var line = plot.Add.ScatterLine(xs, ys, color);
        line.LineWidth = width;
        line.LinePattern = pattern;
        line.LegendText = legend;
    }

    /// <summary>A number holds for the whole of its day: two points a day.</summary>
    private static (double[] Edges, double[] Values) Steps(int days, Func<int, int> value)
    {
        var edges = new double[2 * days];
        var values = new double[2 * days];
        for (var day = 0; day < days; day++)
        {
            edges[2 * day] = day;
            edges[(2 * day) + 1] = day + 1;
            values[2 * day] = values[(2 * day) + 1] = value(day);
        }

        return (edges, values);
    }
}
