using BenchSim.Report.Words;
using BenchSim.Study.Dense;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Charts;

/// <summary>What dense sowing does to mats and benches, crop by crop: tray-days more or less than sown directly, with intervals.</summary>
internal static class DenseChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/dense-changes.csv";

    private const int MostCrops = 40;

    /// <summary>The chart.</summary>
    /// <param name="result">The result.</param>
    public static Chart Of(DenseResult result)
    {
        DenseCrop[] crops = [.. result.Crops.Take(MostCrops)];
        double[] ends =
        [
            0,
            .. crops
                .SelectMany(crop => new[] { crop.Of(Measures.MatTrayDays), crop.Of(Measures.BenchTrayDays) })
                .SelectMany(change => new[] { change.Difference - Reach(change), change.Difference + Reach(change) }),
        ];
        return new Chart
        {
            Title = $"Sown dense less sown directly, tray-days a season: means of {Numbers.Count(result.Seasons, "season", "seasons")}",
            Label = "Tray-days on mats and benches, sown dense less sown directly, by crop",
            Table = Table,
            Across = new ChartAxis(ends.Min(), ends.Max()) { Air = 0.12 },
            Lanes = 2,
            Key = [new KeyEntry(Looks.Mat, "on the heat mats"), new KeyEntry(Looks.Bench, "on the benches")],
            Groups = [new RowGroup(null, [.. crops.Select(Row)])],
            Marks = [new EdgeMark(Looks.Given, 0, IsUpright: true)],
        };
    }

    private static ChartRow Row(DenseCrop crop) =>
        new($"{PlainText.Short(crop.Crop.Name, 20)}, {SeedsAFlat(crop)} a flat")
        {
            Marks = [.. Bar(crop.Of(Measures.MatTrayDays), Looks.Mat, 0), .. Bar(crop.Of(Measures.BenchTrayDays), Looks.Bench, 1)],
        };

    private static string SeedsAFlat(DenseCrop crop) =>
        crop.SeedsPerFlat.Least == crop.SeedsPerFlat.Most
            ? $"{crop.SeedsPerFlat.Least}"
            : $"{crop.SeedsPerFlat.Least} to {crop.SeedsPerFlat.Most}";

    private static IEnumerable<Mark> Bar(MeasureChange change, Look look, int lane)
    {
        var reach = Reach(change);
        var isLess = change.Difference < 0;
        yield return new BarMark(look, 0, change.Difference, lane);
        if (reach > 0)
        {
            yield return new SpanMark(Looks.Reach, change.Difference - reach, change.Difference + reach, lane);
        }

        yield return new FigureMark(Signed(change.Difference), change.Difference + (isLess ? -reach : reach), isLess, lane);
    }

    // One season has no interval.
    private static double Reach(MeasureChange change) => double.IsNaN(change.HalfWidth) ? 0 : change.HalfWidth;

    private static string Signed(double value) => Numbers.Whole(value) is "0" or "-0" ? "0" : (value > 0 ? "+" : "") + Numbers.Whole(value);
}
