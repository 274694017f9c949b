using BenchSim.Report.Words;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Tables;

/// <summary>The tables of a money case. Money in the user's currency, rates and shares from 0 to 1; blank where there is no figure.</summary>
internal static class InvestTables
{
    /// <summary>The outcome: means, intervals of the mean and spread.</summary>
    public static byte[] Figures(InvestResult result)
    {
        var table = new CsvTable("figure", "unit", "mean", "low", "high", "p10", "p50", "p90", "spread_over", "number");
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
        return table.ToBytes();
    }

    /// <summary>What the yearly net benefit is made of.</summary>
    public static byte[] Parts(InvestResult result)
    {
        var table = new CsvTable(
            "part",
            "unit",
            "quantity",
            "quantity_low",
            "quantity_high",
            "is_priced",
            "benefit",
            "benefit_low",
            "benefit_high"
        );
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
        return table.ToBytes();
    }

    /// <summary>The inputs one at a time.</summary>
    public static byte[] Tornado(InvestResult result)
    {
        var table = new CsvTable(
            "input",
            "value",
            "low",
            "high",
            "range_is_given",
            "net_at_low",
            "net_at_low_half_width",
            "net_at_high",
            "net_at_high_half_width",
            "swing",
            "decides"
        );
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

        return table.ToBytes();
    }

    /// <summary>What one must believe.</summary>
    public static byte[] BreakEvens(InvestResult result)
    {
        var table = new CsvTable("input", "value", "must_be", "break_even", "low", "high", "possible");
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

        return table.ToBytes();
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
