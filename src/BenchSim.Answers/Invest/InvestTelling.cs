using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Study.Invest;

namespace BenchSim.Answers.Invest;

/// <summary>Tells a money case.</summary>
internal static class InvestTelling
{
    // What one season cannot tell.
    private const string Untold = "-";

    public static void Tell(Passages words, InvestResult result, string? folder)
    {
        words.Sentence(
            $"{PlainText.Short(result.Base.Scenario.Name, 60)}: does {PlainText.Quote(result.Name)} pay? "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")} of the base and of the variant, "
                + $"the same ones, seed {result.Seed}. Money gained is positive, money spent negative; intervals are of 95 %."
        );
        if (result.Terms.Basis.Length > 0)
        {
            words.Sentence($"Where the terms come from, in the words of the variant: {PlainText.Short(result.Terms.Basis, 300)}");
        }

        words.Gap();
        words.Point(InvestSentences.Headline(result), isSure: true);
        words.Point(InvestSentences.Chance(result), isSure: true);
        words.Point(InvestSentences.Deciding(result), isSure: true);
        words.Point(
            $"The plan fits in {ChanceWords.Fine(result.VariantFits.Share)} of seasons ({ChanceWords.FineInterval(result.VariantFits)}) "
                + $"instead of {ChanceWords.Fine(result.BaseFits.Share)} ({ChanceWords.FineInterval(result.BaseFits)}).",
            isSure: true
        );
        words.Gap();
        TellYear(words, result);
        TellLife(words, result);
        TellTornado(words, result);
        words.Sentence(
            "What would have to be true of one figure, all else as given, for it to pay (on average, "
                + "at the net present value of 0 or more; in brackets the 95 % interval):"
        );
        words.Gap();
        foreach (var each in result.BreakEvens)
        {
            words.Point(InvestSentences.Belief(each, result.Currency), isSure: true);
        }

        words.Gap();
        foreach (var caution in Cautions(result))
        {
            words.Sentence(caution);
        }

        if (folder is not null)
        {
            words.Sentence($"Chart and tables: {folder}");
        }
    }

    private static void TellYear(Passages words, InvestResult result)
    {
        var currency = result.Currency;
        words.Sentence("A year of the variant against the base, means of the seasons:");
        words.Gap();
        var table = words.Table(["", ">more or less", "unit", ">money", ">interval"]);
        foreach (var part in result.Parts)
        {
            table.Add(
                part.Name,
                Signed(part.Quantity),
                part.Unit,
                part.IsPriced ? InvestNames.Money(part.Benefit, currency) : "no price",
                part.IsPriced ? Interval(part.Benefit, part.BenefitHalfWidth, currency) : "-"
            );
        }

        table.Add("upkeep", "", "", InvestNames.Money(0 - result.Terms.Upkeep, currency), "");
        table.Add(
            "net benefit",
            "",
            "",
            InvestNames.Money(result.YearlyBenefit.Mean, currency),
            Interval(result.YearlyBenefit.Mean, result.YearlyBenefit.HalfWidth, currency)
        );
        words.Gap();
        words.Sentence(
            $"A plant more in time is worth {InvestNames.Money(result.Terms.PlantWorth, currency)} by the terms: "
                + "share bought in x its price, and for the rest the value of a plant on time."
        );
        foreach (var part in result.LeftOut)
        {
            words.Sentence($"Not counted: {part}, for it has no price in [prices], or in a house or mat.");
        }

        words.Gap();
    }

    private static void TellLife(Passages words, InvestResult result)
    {
        var currency = result.Currency;
        words.Sentence(
            $"Over a life of {Numbers.Count(result.Terms.LifeYears, "year", "years")} at "
                + $"{InvestNames.Percent(result.Terms.DiscountRate)} a year, capital {InvestNames.Money(result.Terms.Capital, currency)}. "
                + $"Average: every year as the mean of the seasons. Spread: {Numbers.Whole(result.Lives)} runs of that many years, "
                + "each year a season drawn from those played (net benefit: the seasons themselves)."
        );
        words.Gap();
        var table = words.Table(["", ">average", ">interval", ">P10", ">P50", ">P90", "unit"]);
        MoneyRow("yearly net benefit", result.YearlyBenefit, "a year");
        MoneyRow("net present value", result.NetPresentValue, "");
        var rate = result.InternalRate;
        AddRow(
            table,
            "internal rate of return",
            [rate.OfAverageYear, rate.P10, rate.P50, rate.P90],
            InvestSentences.Range(rate.Low, rate.High, InvestSentences.Rate),
            InvestSentences.Rate,
            "a year"
        );
        YearsRow("payback", result.SimplePayback);
        YearsRow("payback, discounted", result.DiscountedPayback);
        words.Gap();
        if (rate.LivesWithout + rate.LivesWithSeveral > 0)
        {
            words.Sentence(
                $"{Numbers.Count(rate.LivesWithout, "run has", "runs have")} no internal rate (the money never comes back, or "
                    + "nothing is ever lost), and "
                    + $"{Numbers.Count(rate.LivesWithSeveral, "run has", "runs have")} several; of these the greatest counts."
            );
            words.Gap();
        }

        void MoneyRow(string name, MoneySpread spread, string unit) =>
            table.Add(
                name,
                InvestNames.Money(spread.Mean, currency),
                Interval(spread.Mean, spread.HalfWidth, currency),
                InvestNames.Money(spread.P10, currency),
                InvestNames.Money(spread.P50, currency),
                InvestNames.Money(spread.P90, currency),
                unit
            );
        void YearsRow(string name, PaybackSpread spread) =>
            AddRow(
                table,
                name,
                [spread.OfAverageYear, spread.P10, spread.P50, spread.P90],
                InvestSentences.Range(spread.Low, spread.High, InvestSentences.Years),
                InvestSentences.Years,
                "years"
            );
    }

    private static void TellTornado(Passages words, InvestResult result)
    {
        var currency = result.Currency;
        words.Sentence(
            "The net present value with one input lower or higher, all else as given (a quarter less and more, "
                + "a life to whole years outwards, unless the variant gives a range, marked +):"
        );
        words.Gap();
        var table = words.Table(["", ">given", ">lower", ">then", ">higher", ">then", ">swing"]);
        foreach (var swing in result.Tornado)
        {
            table.Add(
                InvestNames.Of(swing.Input) + (swing.IsGiven ? " +" : ""),
                InvestNames.Value(swing.Input, swing.Value, currency),
                InvestNames.Value(swing.Input, swing.Low, currency),
                Amount(swing.AtLow, swing.AtLowHalfWidth, currency),
                InvestNames.Value(swing.Input, swing.High, currency),
                Amount(swing.AtHigh, swing.AtHighHalfWidth, currency),
                InvestNames.Money(swing.Size, currency)
            );
        }

        words.Gap();
    }

    private static IEnumerable<string> Cautions(InvestResult result)
    {
        yield return InvestCautions.LeavesOut;
        yield return InvestCautions.Advice;
        yield return InvestCautions.Building;
        if (result.Parts.Any(part => part.Kind == MoneyKind.Fuel))
        {
            yield return "Fuel: " + HeatCautions.Fuel;
        }

        if (result.Parts.Any(part => part.Kind == MoneyKind.MatPower))
        {
            yield return "Heat mats: " + HeatCautions.Mats;
        }
    }

    private static string Amount(double amount, double halfWidth, string currency) =>
        InvestNames.Money(amount, currency) + (double.IsNaN(halfWidth) ? "" : $" (± {InvestNames.HalfWidth(amount, halfWidth, currency)})");

    private static string Interval(double mean, double halfWidth, string currency) =>
        InvestSentences.Range(mean - halfWidth, mean + halfWidth, amount => InvestNames.Money(amount, currency)) ?? Untold;

    private static void AddRow(Table table, string name, double[] values, string? interval, Func<double, string?> word, string unit) =>
        table.Add(
            name,
            word(values[0]) ?? Untold,
            interval ?? Untold,
            word(values[1]) ?? Untold,
            word(values[2]) ?? Untold,
            word(values[3]) ?? Untold,
            unit
        );

    private static string Signed(double amount)
    {
        var text = Numbers.Fine(Math.Abs(amount));
        return text is "0" ? "0" : (amount < 0 ? "-" : "+") + text;
    }
}
