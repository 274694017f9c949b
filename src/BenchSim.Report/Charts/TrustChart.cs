using BenchSim.Report.Words;
using BenchSim.Study.Trust;

namespace BenchSim.Report.Charts;

/// <summary>
/// Which values decide whether the plan fits: a bar a value, from the share of seasons that fit where it is at one end of its range to that
/// at the other, widest on top.
/// </summary>
internal static class TrustChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/values.csv";

    private const int Most = 20;
    private const double Percent = 100;

    /// <summary>The chart.</summary>
    /// <param name="result">The study.</param>
    public static Chart Of(TrustResult result)
    {
        TrustValue[] values = [.. result.InOrder.Where(value => value.FitsSwing > 0).Take(Most)];
        var given = values.Length > 0 ? values[0].Given[0] : result.Fits.AsGiven;
        return new Chart
        {
            Title =
                $"{PlainText.Short(result.Plan.Scenario.Name, 40)}: seasons that fit, one value wrong alone "
                + $"({Numbers.Count(result.Options.FewerSeasons, "season", "seasons")} of each)",
            Label = "Share of seasons that fit with one value at either end of its range, the values that move it most on top",
            Table = Table,
            Across = new ChartAxis(0, Percent)
            {
                Format = share => share is < 0 or > Percent ? "" : $"{Numbers.Whole(share)} %",
                Air = 0.16,
            },
            Key =
            [
                new KeyEntry(Looks.Lower, "at the low end of its range"),
                new KeyEntry(Looks.Higher, "at the high end"),
                new KeyEntry(Looks.Given, $"as given: {ChanceWords.Fine(given)}"),
            ],
            Groups = [new RowGroup(null, [.. values.Select(Row)])],
            Marks = [new EdgeMark(Looks.Given, Percent * given, IsUpright: true)],
        };
    }

    private static ChartRow Row(TrustValue value)
    {
        var (low, high, given) = (Percent * value.AtLow[0], Percent * value.AtHigh[0], Percent * value.Given[0]);
        return new ChartRow(DoubtWords.Name(value.Value))
        {
            Marks = [new BarMark(Looks.Lower, given, low), new BarMark(Looks.Higher, given, high)],
            Figures = [new FigureMark(value.Value.At(0.05), low, low < high), new FigureMark(value.Value.At(0.95), high, high < low)],
        };
    }
}
