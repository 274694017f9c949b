using BenchSim.Study.Billing;

namespace BenchSim.Report.Words;

/// <summary>Bills in words: the rules, and amounts in the unit in which they are given.</summary>
/// <param name="unit">The unit.</param>
/// <param name="currency">Sign or code of the user's money; may be empty.</param>
public sealed class BillWords(BillUnit unit, string currency)
{
    private readonly Money _money = new(currency);

    /// <summary>A rule as it follows "the bill is": "divided by tray-days".</summary>
    /// <param name="rule">Rule.</param>
    public static string Divided(BillRule rule) =>
        rule switch
        {
            BillRule.Equal => "divided equally",
            BillRule.TrayDays => "divided by tray-days",
            _ => "divided equally in an open house, by tray-days in full weeks",
        };

    /// <summary>An amount.</summary>
    /// <param name="amount">Amount, 0 or more.</param>
    public string Amount(double amount) =>
        unit switch
        {
            BillUnit.Money => _money.Amount(amount),
            BillUnit.Heat => $"{Numbers.Whole(amount)} kWh",
            _ => $"{Numbers.Short(amount)} {(Numbers.Short(amount) == "1" ? "day" : "days")}",
        };

    /// <summary>What is in the bill.</summary>
    public string What =>
        unit switch
        {
            BillUnit.Money => "fuel and mats",
            BillUnit.Heat => "heat and mats",
            _ => "days with trays in a heated house",
        };

    /// <summary>A part of the whole with its share: "$123 of $456 for fuel and mats, 27 %".</summary>
    /// <param name="amount">The part.</param>
    /// <param name="all">The whole.</param>
    public string Part(double amount, double all) =>
        unit == BillUnit.Days
            ? $"{Numbers.Short(amount)} of {Numbers.Short(all)} {What}, {Share(amount, all)}"
            : $"{Amount(amount)} of {Amount(all)} for {What}, {Share(amount, all)}";

    /// <summary>A share of all that is shared, as a percentage; a dash where nothing is.</summary>
    /// <param name="amount">Amount.</param>
    /// <param name="all">All.</param>
    public static string Share(double amount, double all) => all > 0 ? ChanceWords.Percent(amount / all) : "–";
}
