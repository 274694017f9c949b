using BenchSim.Report.Words;
using BenchSim.Study.Sizing;
using ScottPlot;
using ScottPlot.Plottables;

namespace BenchSim.Report.Charts;

/// <summary>The chance that the plan fits by the number of places, with its interval, the goal and the answer.</summary>
internal static class SizeChart
{
    /// <summary>Width of the picture in layout pixels.</summary>
    public const int Width = 960;

    /// <summary>Height of the picture in layout pixels.</summary>
    public const int Height = 440;

    /// <summary>Draws it as PNG.</summary>
    /// <param name="result">The curve.</param>
    public static byte[] Draw(SizeResult result)
    {
        using var plot = Picture.Blank(
            Picture.InDrawingOrder(
                $"{PlainText.Short(result.Space.Name, 40)}: the plan fits in so many percent of {Numbers.Count(result.Seasons, "season", "seasons")}"
            )
        );
        double[] places = [.. result.Curve.Select(point => (double)(point.Places ?? 0))];
        double[] shares = [.. result.Curve.Select(point => 100 * point.Fits.Share)];
        var band = plot.Add.FillY(
            places,
            [.. result.Curve.Select(point => 100 * point.Fits.Low)],
            [.. result.Curve.Select(point => 100 * point.Fits.High)]
        );
        band.FillColor = Palette.Held.WithAlpha(0.25);
        band.LineWidth = 0;
        band.LegendText = $"{Numbers.Setting(result.Goal.Confidence)} % interval";
        var line = plot.Add.Scatter(places, shares, Palette.Held);
        line.LineWidth = 2;
        line.MarkerSize = 6;
        line.LegendText = "number of places played";
        var goal = plot.Add.HorizontalLine(100 * result.Goal.Share, 2, Palette.Wanted, LinePattern.Dashed);
        goal.LegendText = $"goal: {Numbers.Setting(result.Goal.Share)} %";
        Mark(
            plot,
            result.Curve.FirstOrDefault(point => point.Places == result.Space.Places),
            MarkerShape.OpenSquare,
            Palette.Ink,
            $"as it is: {Numbers.Whole(result.Space.Places)}"
        );
        Mark(plot, result.Answer, MarkerShape.OpenCircle, Palette.Mat, $"enough: {Numbers.Whole(result.Answer?.Places ?? 0)}");
        plot.Axes.SetLimits(-0.02 * result.Largest, Math.Max(1, result.Largest) * 1.02, 0, 104);
        plot.Axes.Bottom.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.OffsetY = Picture.LabelDrop;
        Picture.Name(plot.Axes.Bottom, "places");
        int[] marks = [.. new PlaceScale(result.Largest).Marks];
        plot.Axes.Bottom.SetTicks([.. marks.Select(mark => (double)mark)], [.. marks.Select(mark => Numbers.Whole(mark))]);
        Picture.Legend(plot);
        return Picture.Png(plot, Width, Height);
    }

    private static void Mark(Plot plot, SizePoint? point, MarkerShape shape, Color color, string legend)
    {
        if (point is null)
        {
            return;
        }

        var mark = plot.Add.ScatterPoints(new double[] { point.Places ?? 0 }, new[] { 100 * point.Fits.Share }, color);
        mark.MarkerStyle = new MarkerStyle(shape, 14, color) { LineColor = color, LineWidth = 2.5f };
        mark.LegendText = legend;
    }
}
