using BenchSim.Report.Words;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Charts;

/// <summary>Which inputs decide a money case: a bar an input, from the net present value at its lower value to
/// that at its higher, widest on top.</summary>
internal static class TornadoChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/invest-tornado.csv";

    /// <summary>The chart.</summary>
    /// <param name="result">The case.</param>
    /// <param name="most">Inputs at the most: those that decide most.</param>
    public static Chart Of(InvestResult result, int most = int.MaxValue)
    {
        var currency = result.Currency;
        var middle = result.NetPresentValue.Mean;
        Swing[] swings = [.. result.Tornado.Where(swing => swing.Size > 0).Take(most)];
        double[] ends = [.. swings.SelectMany(swing => new[] { swing.AtLow, swing.AtHigh }), middle, 0];
        return new Chart
        {
            Title =
                $"{PlainText.Short(result.Name, 30)}: net present value over {Numbers.Count(result.Terms.LifeYears, "year", "years")}, "
                + $"one input lower or higher (mean of {Numbers.Count(result.Seasons, "season", "seasons")})",
            Label = "Net present value with one input lower or higher, the inputs that decide most on top",
            Table = Table,
            Across = new ChartAxis(ends.Min(), ends.Max()) { Format = amount => Amount(amount, currency), Air = 0.16 },
            Key =
            [
                new KeyEntry(Looks.Lower, "at the lower value"),
                new KeyEntry(Looks.Higher, "at the higher value"),
                new KeyEntry(Looks.Even, "breaks even"),
                new KeyEntry(Looks.Given, $"as given: {InvestNames.Money(middle, currency)}"),
            ],
            Groups = [new RowGroup(null, [.. swings.Select(swing => Row(swing, middle, currency))])],
            Marks = [new EdgeMark(Looks.Even, 0, IsUpright: true), new EdgeMark(Looks.Given, middle, IsUpright: true)],
        };
    }

    private static ChartRow Row(Swing swing, double middle, string currency) =>
        new(InvestNames.Of(swing.Input))
        {
            Marks = [new BarMark(Looks.Lower, middle, swing.AtLow), new BarMark(Looks.Higher, middle, swing.AtHigh)],
            Figures =
            [
                new FigureMark(InvestNames.Value(swing.Input, swing.Low, currency), swing.AtLow, swing.AtLow < swing.AtHigh),
                new FigureMark(InvestNames.Value(swing.Input, swing.High, currency), swing.AtHigh, swing.AtHigh < swing.AtLow),
            ],
        };

    // A whole amount has no decimals, whatever its size.
    private static string Amount(double amount, string currency) =>
        Math.Abs(amount - Math.Round(amount)) < 1e-6
            ? (amount <= -0.5 ? "-" : "") + new Money(currency).Whole(Math.Abs(amount))
            : InvestNames.Money(amount, currency);
}
