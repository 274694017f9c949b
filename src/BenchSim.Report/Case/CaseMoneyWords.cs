using BenchSim.Report.Words;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Case;

/// <summary>The sentences of a case report about money.</summary>
internal static class CaseMoneyWords
{
    /// <summary>Currency of the case.</summary>
    public static string Currency(InvestResult result) => result.Base.Scenario.Rules.Prices.Currency;

    /// <summary>Whether it pays on average.</summary>
    public static string Headline(InvestResult result)
    {
        string currency = Currency(result);
        MoneySpread net = result.NetPresentValue;
        string life = Numbers.Count(result.Terms.LifeYears, "year", "years");
        if (double.IsNaN(net.HalfWidth))
            return $"One season cannot tell whether it pays; over {life} the net present value would be {InvestNames.Money(net.Mean, currency)}.";
        string range = $"95 % interval {InvestNames.Money(net.Low, currency)} to {InvestNames.Money(net.High, currency)}, {Numbers.Count(result.Seasons, "season", "seasons")}";
        string except = result.LeftOut.IsEmpty ? "" : $" Not counted, for want of a price: {string.Join(", ", result.LeftOut.Select(part => PlainText.Short(part, 40)))}.";
        string answer = net switch
        {
            { Low: > 0 } => "With the figures given it pays on average",
            { High: < 0 } => "With the figures given it does not pay on average",
            _ => "Whether it pays on average cannot be told from the seasons played",
        };
        return $"{answer}; over {life} the net present value is {InvestNames.Money(net.Mean, currency)} ({range}).{except}";
    }

    /// <summary>The chance that it pays.</summary>
    public static string Chance(InvestResult result) =>
        $"Chance that it pays: {Numbers.Percent(result.Pays.Share)} % of {Numbers.Whole(result.Lives)} lives drawn from the {Numbers.Count(result.Seasons, "season", "seasons")} played ({Numbers.Interval(result.Pays)}).";

    /// <summary>What one must believe of one input.</summary>
    public static string Belief(BreakEven each, string currency)
    {
        string subject = InvestNames.Of(each.Input);
        string given = InvestNames.Value(each.Input, each.Value, currency);
        if (each.IsHopeless)
            return $"Whatever the {subject}, all else as given, it does not pay ({given} is given).";
        if (each.IsFloor ? each.At <= 0 : double.IsPositiveInfinity(each.At))
            return $"It pays whatever the {subject}, all else as given ({given} is given).";
        return $"It pays if the {subject} is {(each.IsFloor ? "at least" : "at most")} {InvestNames.Value(each.Input, each.At, currency)} "
            + $"(95 % interval {End(each, each.Low, currency)} to {End(each, each.High, currency)}; {given} is given).";
    }

    /// <summary>A rate in percent, or that there is none.</summary>
    public static string Rate(double rate) => rate switch
    {
        double.NaN => "–",
        double.NegativeInfinity => "none (a loss)",
        double.PositiveInfinity => "none (no loss)",
        _ => InvestNames.Percent(rate),
    };

    /// <summary>Years with one decimal, or that the money never comes back.</summary>
    public static string Years(double years) => double.IsNaN(years) ? "–" : double.IsInfinity(years) ? "never" : years.ToString("0.0", null);

    /// <summary>The ends of an interval; a dash where one season tells nothing of it.</summary>
    public static string Range(double low, double high, Func<double, string> word)
    {
        if (double.IsNaN(low) || double.IsNaN(high))
            return "–";
        return string.Equals(word(low), word(high), StringComparison.Ordinal) ? word(low) : $"{word(low)} to {word(high)}";
    }

    private static string End(BreakEven each, double value, string currency)
    {
        if (double.IsFinite(value))
            return InvestNames.Value(each.Input, value, currency);
        return each.IsFloor == double.IsPositiveInfinity(value) ? "no value that would do" : "any value";
    }
}
