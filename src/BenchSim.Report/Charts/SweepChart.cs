using BenchSim.Report.Tables;
using BenchSim.Report.Words;
using BenchSim.Study.Sweeps;

namespace BenchSim.Report.Charts;

/// <summary>
/// How often the plans of a sweep fit: a group a folder, a row a plan, with a bar over the sets of values or, without sets, the interval of
/// the seasons. The folders with the poorest best plans are on top.
/// </summary>
internal static class SweepChart
{
    private const int MostRows = 60;
    private const int LongestName = 40;

    /// <summary>The chart.</summary>
    /// <param name="result">The sweep.</param>
    public static Chart Of(SweepResult result)
    {
        var left = MostRows;
        SweptFolder[] shown = [.. result.WorstFirst.TakeWhile(folder => (left -= folder.Plans.Length) >= 0)];
        if (shown.Length == 0)
        {
            shown = [.. result.WorstFirst.Take(1)];
        }

        var all = shown.Length == result.Folders.Length;
        return new Chart
        {
            Title =
                $"{PlainText.Short(result.Name, LongestName)}: seasons that fit, of {Numbers.Whole(result.Seasons)}"
                + (all ? "" : $", the {Numbers.Count(shown.Length, "folder", "folders")} that fit least"),
            Label = "Share of seasons in which each plan fits, folder by folder",
            Table = SweepTables.PlansFile,
            Across = new ChartAxis(0, 100) { Format = share => share is < 0 or > 100 ? "" : $"{Numbers.Whole(share)} %", Air = 0.12 },
            Key =
            [
                new KeyEntry(Looks.Interval, result.ValueSets > 0 ? "nine in ten of the sets of values" : "95 % interval"),
                new KeyEntry(Looks.InField, "at the values as given"),
                new KeyEntry(Looks.Goal, $"goal: {ChanceWords.Setting(result.Goal)}"),
            ],
            Groups =
            [
                .. shown.Select(folder => new RowGroup(
                    PlainText.Short(folder.Name, 2 * LongestName),
                    [.. folder.Plans.Select(plan => Row(plan))]
                )),
            ],
            Marks = [new EdgeMark(Looks.Goal, 100 * result.Goal, IsUpright: true)],
        };
    }

    /// <summary>The ends of the bar of a plan, 0 to 1.</summary>
    public static (double Low, double High) Bar(SweptPlan plan) =>
        plan.Row.FitsOverSets is { } range ? (range.Low, range.High) : (plan.Fits.Low, plan.Fits.High);

    private static ChartRow Row(SweptPlan plan)
    {
        var (low, high) = Bar(plan);
        return new ChartRow(SweepWords.Plan(plan))
        {
            Marks = [new BarMark(Looks.Interval, 100 * low, 100 * high), new PointMark(Looks.InField, 100 * plan.Fits.Share)],
            Figures = [new FigureMark(ChanceWords.Fine(plan.Fits.Share), 100 * Math.Max(high, plan.Fits.Share), IsLeft: false)],
        };
    }
}
