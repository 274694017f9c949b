using BenchSim.Report.Words;
using BenchSim.Study.Dense;

namespace BenchSim.Report.Charts;

/// <summary>How dense is dense enough: planned tray-days on the mats against seeds a flat, as a share of direct
/// sowing, crop by crop.</summary>
internal static class DensityChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/dense-curve.csv";

    private const double Most = 150;

    /// <summary>The chart: of many crops those that hold the most mat tray-days sown directly.</summary>
    /// <param name="result">The result.</param>
    public static Chart Of(DenseResult result)
    {
        DenseCrop[] crops =
        [
            .. result
                .Crops.Where(crop => crop.Curve[0].DirectMatTrayDays > 0)
                .OrderByDescending(crop => crop.Curve[0].DirectMatTrayDays)
                .Take(Looks.Series.Length),
        ];
        int[] densities = result.Crops.IsEmpty ? [50, 1000] : [.. result.Crops[0].Curve.Select(point => point.SeedsPerFlat)];
        return new Chart
        {
            Title = "Planned tray-days on the heat mats by seeds a flat",
            Label = "Planned tray-days on the heat mats by seeds a flat, percent of direct sowing, by crop",
            Table = Table,

            // Each density twice the last takes as much room as the one before.
            Across = new ChartAxis(Math.Log10(densities[0]), Math.Log10(densities[^1]))
            {
                Name = "seeds a flat",
                Ticks = _ => [.. densities.Select(density => new AxisTick(Math.Log10(density), Numbers.Whole(density)))],
            },
            Up = new ChartAxis(0, Most) { Name = "percent of direct sowing" },
            Key =
            [
                .. crops.Select((crop, at) => new KeyEntry(Looks.Series[at], PlainText.Short(crop.Crop.Name, 20))),
                new KeyEntry(Looks.Goal, "as many as sown directly"),
            ],
            Marks = [.. crops.Select((crop, at) => Line(crop, Looks.Series[at])), new EdgeMark(Looks.Goal, 100, IsUpright: false)],
        };
    }

    private static LineMark Line(DenseCrop crop, Look look) =>
        new(
            look,
            [
                .. crop.Curve.Select(point =>
                    (Math.Log10(point.SeedsPerFlat), Math.Min(100 * point.MatTrayDays / point.DirectMatTrayDays, 10 * Most))
                ),
            ]
        );
}
