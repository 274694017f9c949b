using BenchSim.Report.Words;
using BenchSim.Study.Dense;
using ScottPlot;
using ScottPlot.Plottables;

namespace BenchSim.Report.Charts;

/// <summary>How dense is dense enough: planned tray-days on the mats against seeds a flat, as a share of direct sowing, crop by crop.</summary>
internal static class DensityChart
{
    /// <summary>Width of the picture in layout pixels.</summary>
    public const int Width = 960;

    /// <summary>Height of the picture in layout pixels.</summary>
    public const int Height = 520;

    // More lines than colours that can be told apart would say nothing.
    private const int MostCrops = 5;
    private const double Most = 150;

    private static readonly Color[] s_colors = [Palette.Held, Palette.Mat, Palette.Bench, Palette.Table, Palette.Ink];

    /// <summary>Draws it as PNG: of many crops those that hold the most mat tray-days sown directly.</summary>
    /// <param name="result">The result.</param>
    public static byte[] Draw(DenseResult result)
    {
        DenseCrop[] crops =
        [
            .. result
                .Crops.Where(crop => crop.Curve[0].DirectMatTrayDays > 0)
                .OrderByDescending(crop => crop.Curve[0].DirectMatTrayDays)
                .Take(MostCrops),
        ];
        using var plot = Picture.Blank("Planned tray-days on the heat mats by seeds a flat");
        for (var at = 0; at < crops.Length; at++)
        {
            Line(plot, crops[at], s_colors[at]);
        }

        var even = plot.Add.HorizontalLine(100, 2, Palette.Wanted, LinePattern.Dashed);
        even.LegendText = "as many as sown directly";
        int[] densities = result.Crops.IsEmpty ? [50, 1000] : [.. result.Crops[0].Curve.Select(point => point.SeedsPerFlat)];
        plot.Axes.SetLimits(Math.Log10(densities[0]), Math.Log10(densities[^1]), 0, Most);
        plot.Axes.Bottom.SetTicks(
            [.. densities.Select(density => Math.Log10(density))],
            [.. densities.Select(density => Numbers.Whole(density))]
        );
        plot.Axes.Bottom.TickLabelStyle.FontSize = 12;
        plot.Axes.Bottom.TickLabelStyle.ForeColor = Palette.Ink;
        plot.Axes.Left.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.OffsetY = Picture.LabelDrop;
        Picture.Name(plot.Axes.Bottom, "seeds a flat");
        Picture.Name(plot.Axes.Left, "percent of direct sowing");
        Picture.Legend(plot);
        return Picture.Png(plot, Width, Height);
    }

    private static void Line(Plot plot, DenseCrop crop, Color color)
    {
        DensityPoint[] points = [.. crop.Curve];
        var line = plot.Add.Scatter(
            [.. points.Select(point => Math.Log10(point.SeedsPerFlat))],
            points.Select(point => Math.Min(100 * point.MatTrayDays / point.DirectMatTrayDays, 10 * Most)).ToArray(),
            color
        );
        line.LineWidth = 2;
        line.MarkerSize = 6;
        line.LegendText = Picture.InDrawingOrder(PlainText.Short(crop.Crop.Name, 20));
    }
}
