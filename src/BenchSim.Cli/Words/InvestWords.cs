using BenchSim.Report;
using BenchSim.Study.Invest;

namespace BenchSim.Cli.Words;

/// <summary>Says what a money case comes to, in sentences.</summary>
internal static class InvestWords
{
    /// <summary>Whether it pays on average.</summary>
    public static string Headline(InvestResult result)
    {
        string currency = Currency(result);
        MoneySpread net = result.NetPresentValue;
        string life = Figures.Count(result.Terms.LifeYears, "year", "years");
        if (double.IsNaN(net.HalfWidth))
            return $"One season cannot tell whether it pays: over {life} the net present value would be {InvestNames.Money(net.Mean, currency)}.";
        string interval = $"{InvestNames.Money(net.Low, currency)} to {InvestNames.Money(net.High, currency)}";
        string except = result.LeftOut.IsEmpty ? "" : $", with {Figures.List(result.LeftOut)} not counted";
        if (net.Low > 0)
            return $"With the figures given it pays on average: over {life} the net present value is {InvestNames.Money(net.Mean, currency)} ({interval}){except}.";
        return net.High < 0
            ? $"With the figures given it does not pay on average: over {life} the net present value is {InvestNames.Money(net.Mean, currency)} ({interval}){except}."
            : $"Whether it pays on average cannot be told: over {life} the net present value lies between {InvestNames.Money(net.Low, currency)} and {InvestNames.Money(net.High, currency)}{except}. More seasons narrow it.";
    }

    /// <summary>The chance that it pays.</summary>
    public static string Chance(InvestResult result) =>
        $"It pays in {Figures.Percent(result.Pays.Share)} of {Figures.Whole(result.Lives)} lives drawn from the {Figures.Count(result.Seasons, "season", "seasons")} played (95 % interval {Figures.Percent(result.Pays.Low)} to {Figures.Percent(result.Pays.High)}).";

    /// <summary>What decides it.</summary>
    public static string Deciding(InvestResult result)
    {
        Swing[] deciding = [.. result.Tornado.Take(result.Deciding)];
        if (deciding.Length == 0)
            return "No input given makes a difference.";
        string names = Figures.List([.. deciding.Select(swing => "the " + InvestNames.Of(swing.Input))]);
        string[] turning = [.. deciding.Where(swing => swing.TurnsTheCase).Select(swing => "the " + InvestNames.Of(swing.Input))];
        string turns = turning.Length switch
        {
            0 => "Within the range tried none of them alone turns the case.",
            1 when deciding.Length == 1 => "Within the range tried it turns the case.",
            _ => $"Within the ranges tried {Figures.List([.. turning])} alone would turn the case.",
        };
        return $"{(deciding.Length == 1 ? "What decides it is" : "What decides it most are")} {names}. {turns}";
    }

    /// <summary>What one must believe of one input.</summary>
    public static string BreakEven(BreakEven each, string currency)
    {
        string subject = "the " + InvestNames.Of(each.Input);
        string given = $"; {InvestNames.Value(each.Input, each.Value, currency)} is given";
        if (each.IsHopeless)
            return $"No {Whatever(each.Input)} makes it pay, all else as given{Doubt(each)}.";
        if (each.IsFloor ? each.At <= 0 : double.IsPositiveInfinity(each.At))
            return $"It pays whatever {subject}, all else as given{given}.";
        string bound = each.IsFloor ? "at least" : "at most";
        return $"It pays if {subject} is {bound} {InvestNames.Value(each.Input, each.At, currency)} ({End(each, each.Low, currency)} to {End(each, each.High, currency)}), all else as given{given}.";
    }

    /// <summary>A rate: percent, or that there is none.</summary>
    public static string Rate(double rate) =>
        double.IsNaN(rate) ? "-" : double.IsNegativeInfinity(rate) ? "none, a loss" : double.IsPositiveInfinity(rate) ? "none, no loss" : InvestNames.Percent(rate);

    /// <summary>Years with one decimal, or that it never comes back.</summary>
    public static string Years(double years) => double.IsNaN(years) ? "-" : double.IsInfinity(years) ? "never" : Figures.Tenths(years);

    /// <summary>Currency of the case.</summary>
    public static string Currency(InvestResult result) => result.Base.Scenario.Rules.Prices.Currency;

    private static string Whatever(InvestInput input) => input switch
    {
        InvestInput.Life => "life up to 60 years",
        InvestInput.Capital => "capital, however small,",
        InvestInput.DiscountRate => "discount rate, however low,",
        _ => InvestNames.Of(input),
    };

    private static string Doubt(BreakEven each) =>
        double.IsInfinity(each.Low) == double.IsInfinity(each.High) ? "" : ", though other seasons might have said otherwise";

    private static string End(BreakEven each, double value, string currency)
    {
        if (double.IsFinite(value))
            return InvestNames.Value(each.Input, value, currency);
        return each.IsFloor == double.IsPositiveInfinity(value) ? "no value that would do" : "any value";
    }
}
