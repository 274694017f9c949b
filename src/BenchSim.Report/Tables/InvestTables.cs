using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Tables;

/// <summary>
/// The tables of a money case. Money in the user's currency, rates and shares from 0 to 1; blank where there is no figure.
/// </summary>
internal static class InvestTables
{
    private static readonly ImmutableArray<Column> s_figures =
    [
        new("figure", "text", "name of the figure"),
        new("unit", "text", "unit of the row; money in your currency"),
        new("mean", "see unit", "mean; of a rate or a payback that of the average year"),
        new("low", "see unit", "lower end of the 95 % interval of the mean"),
        new("high", "see unit", "upper end"),
        new("p10", "see unit", "one in ten has no more"),
        new("p50", "see unit", "half have no more"),
        new("p90", "see unit", "nine in ten have no more"),
        new("spread_over", "text", "what p10 to p90 are of: seasons, or whole terms of use"),
        new("number", "count", "how many of them"),
    ];

    /// <summary>The outcome: means, intervals of the mean and spread.</summary>
    public static CsvTable Figures(InvestResult result)
    {
        var table = new CsvTable(s_figures);
        Money(table, "yearly_net_benefit", result.YearlyBenefit, "seasons", result.Seasons);
        Money(table, "net_present_value", result.NetPresentValue, "lives", result.Lives);
        var rate = result.InternalRate;
        table
            .Text("internal_rate")
            .Text("a year")
            .Number(rate.OfAverageYear)
            .Number(rate.Low)
            .Number(rate.High)
            .Number(rate.P10)
            .Number(rate.P50)
            .Number(rate.P90)
            .Text("lives")
            .Number(result.Lives);
        Years(table, "simple_payback", result.SimplePayback, result.Lives);
        Years(table, "discounted_payback", result.DiscountedPayback, result.Lives);
        table
            .Text("chance_that_it_pays")
            .Text("share")
            .Number(result.Pays.Share)
            .Number(result.Pays.Low)
            .Number(result.Pays.High)
            .Number(double.NaN)
            .Number(double.NaN)
            .Number(double.NaN)
            .Text("lives")
            .Number(result.Lives);
        return table;
    }

    private static readonly ImmutableArray<Column> s_parts =
    [
        new("part", "text", "part of the yearly net benefit"),
        new("unit", "text", "unit of its quantity"),
        new("quantity", "see unit", "variant less base, mean of a season"),
        new("quantity_low", "see unit", "lower end of its 95 % interval"),
        new("quantity_high", "see unit", "upper end"),
        new("is_priced", "yes or no", "a price is given for it"),
        new("benefit", "money a year", "what it is worth; below 0 a cost"),
        new("benefit_low", "money a year", "lower end of its 95 % interval"),
        new("benefit_high", "money a year", "upper end"),
    ];

    /// <summary>What the yearly net benefit is made of.</summary>
    public static CsvTable Parts(InvestResult result)
    {
        var table = new CsvTable(s_parts);
        foreach (var part in result.Parts)
        {
            table
                .Text(part.Name)
                .Text(part.Unit)
                .Number(part.Quantity)
                .Number(part.Quantity - part.QuantityHalfWidth)
                .Number(part.Quantity + part.QuantityHalfWidth)
                .Text(part.IsPriced ? "yes" : "no")
                .Number(part.Benefit)
                .Number(part.Benefit - part.BenefitHalfWidth)
                .Number(part.Benefit + part.BenefitHalfWidth);
        }

        var upkeep = 0 - result.Terms.Upkeep;
        table
            .Text("upkeep")
            .Text("")
            .Number(double.NaN)
            .Number(double.NaN)
            .Number(double.NaN)
            .Text("yes")
            .Number(upkeep)
            .Number(upkeep)
            .Number(upkeep);
        return table;
    }

    private static readonly ImmutableArray<Column> s_tornado =
    [
        new("input", "text", "what is taken lower and higher"),
        new("value", "its own", "value in force"),
        new("low", "its own", "lower value"),
        new("high", "its own", "higher value"),
        new("range_is_given", "yes or no", "the range is the user's own"),
        new("net_at_low", "money", "net present value with the lower value"),
        new("net_at_low_half_width", "money", "half the width of its 95 % interval"),
        new("net_at_high", "money", "net present value with the higher value"),
        new("net_at_high_half_width", "money", "half the width of its 95 % interval"),
        new("swing", "money", "how far apart the two lie"),
        new("decides", "yes or no", "one of those that decide"),
    ];

    /// <summary>The inputs one at a time.</summary>
    public static CsvTable Tornado(InvestResult result)
    {
        var table = new CsvTable(s_tornado);
        for (var at = 0; at < result.Tornado.Length; at++)
        {
            var swing = result.Tornado[at];
            table
                .Text(InvestNames.Of(swing.Input))
                .Number(swing.Value)
                .Number(swing.Low)
                .Number(swing.High)
                .Text(swing.IsGiven ? "yes" : "no")
                .Number(swing.AtLow)
                .Number(swing.AtLowHalfWidth)
                .Number(swing.AtHigh)
                .Number(swing.AtHighHalfWidth)
                .Number(swing.Size)
                .Text(at < result.Deciding ? "yes" : "no");
        }

        return table;
    }

    private static readonly ImmutableArray<Column> s_breakEvens =
    [
        new("input", "text", "the value asked about"),
        new("value", "its own", "value in force"),
        new("must_be", "text", "whether it must be at least or at most the break-even"),
        new("break_even", "its own", "value at which the net present value is 0"),
        new("low", "its own", "lower end of its 95 % interval"),
        new("high", "its own", "upper end"),
        new("possible", "yes or no", "a possible value reaches it"),
    ];

    /// <summary>What one must believe.</summary>
    public static CsvTable BreakEvens(InvestResult result)
    {
        var table = new CsvTable(s_breakEvens);
        foreach (var each in result.BreakEvens)
        {
            table
                .Text(InvestNames.Of(each.Input))
                .Number(each.Value)
                .Text(each.IsFloor ? "at least" : "at most")
                .Number(each.At)
                .Number(each.Low)
                .Number(each.High)
                .Text(each.IsHopeless ? "no" : "yes");
        }

        return table;
    }

    private static void Money(CsvTable table, string name, MoneySpread spread, string over, int number) =>
        table
            .Text(name)
            .Text("money")
            .Number(spread.Mean)
            .Number(spread.Low)
            .Number(spread.High)
            .Number(spread.P10)
            .Number(spread.P50)
            .Number(spread.P90)
            .Text(over)
            .Number(number);

    private static void Years(CsvTable table, string name, PaybackSpread spread, int lives) =>
        table
            .Text(name)
            .Text("years")
            .Number(spread.OfAverageYear)
            .Number(spread.Low)
            .Number(spread.High)
            .Number(spread.P10)
            .Number(spread.P50)
            .Number(spread.P90)
            .Text("lives")
            .Number(lives);
}
