using BenchSim.Report.Words;
using BenchSim.Study.Sizing;

namespace BenchSim.Report.Charts;

/// <summary>How often the plan fits against the number of places: the curve with its interval, the goal and the answer.</summary>
internal static class SizeChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/size.csv";

    /// <summary>The chart.</summary>
    /// <param name="result">The curve.</param>
    public static Chart Of(SizeResult result)
    {
        (SizePoint? Point, KeyEntry Entry)[] marked =
        [
            (
                result.Curve.FirstOrDefault(point => point.Places == result.Space.Places),
                new KeyEntry(Looks.Today, $"as it is: {Numbers.Whole(result.Space.Places)}")
            ),
            (result.Answer, new KeyEntry(Looks.Enough, $"enough: {Numbers.Whole(result.Answer?.Places ?? 0)}")),
        ];
        marked = [.. marked.Where(mark => mark.Point is not null)];
        return new Chart
        {
            Title =
                $"{PlainText.Short(result.Space.Name, 40)}: the plan fits in so many percent of "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")}",
            Label = $"Share of seasons in which the plan fits by number of places: {PlainText.Short(result.Space.Name, 40)}",
            Table = Table,
            Across = ChartAxis.OfPlaces(result.Largest) with
            {
                Name = "places",
                Low = -0.02 * result.Largest,
                High = Math.Max(1, result.Largest) * 1.02,
            },
            Up = new ChartAxis(0, 104),
            Key =
            [
                new KeyEntry(Looks.Interval, $"{ChanceWords.Setting(result.Goal.Confidence)} interval"),
                new KeyEntry(Looks.Played, "number of places played"),
                new KeyEntry(Looks.Goal, $"goal: {ChanceWords.Setting(result.Goal.Share)}"),
                .. marked.Select(mark => mark.Entry),
            ],
            Marks =
            [
                new BandMark(Looks.Interval, [.. result.Curve.Select(point => (At(point).X, 100 * point.Fits.Low, 100 * point.Fits.High))]),
                new LineMark(Looks.Played, [.. result.Curve.Select(At)]),
                new EdgeMark(Looks.Goal, 100 * result.Goal.Share, IsUpright: false),
                .. marked.Select(mark => new LineMark(mark.Entry.Look, [At(mark.Point!)])),
            ],
        };
    }

    private static (double X, double Y) At(SizePoint point) => (point.Places ?? 0, 100 * point.Fits.Share);
}
