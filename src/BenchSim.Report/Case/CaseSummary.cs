using BenchSim.Report.Html;
using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Case;

/// <summary>
/// The first page of the case of a change, for a lender who reads no further: what is asked for, what it brings, what it costs and when it
/// pays back, what that rests on, and the cautions. Whatever stands in the files, it is one page.
/// </summary>
internal static class CaseSummary
{
    private const int MostChanges = 3;
    private const int LongestAnswer = 220;
    private const int LongestChange = 150;

    // What the rest of the page takes at most, with a change of two lines and the count of those left out.
    private const double RestMm = 195;

    /// <summary>Writes the page, where there is a change.</summary>
    public static void Write(PdfFlow flow, CaseInput input)
    {
        if (input.Variant is not { } variant)
        {
            return;
        }

        flow.Heading("Summary for a lender");
        var money = input.Money;
        flow.Paragraph(
            PlainText.Short(
                money is null ? CompareSentences.Fits(variant.Name, variant.Fits, input.Base.Seasons) : InvestSentences.Headline(money),
                LongestAnswer
            ),
            isBold: true
        );
        Asked(flow, input, variant);
        flow.Heading("What it brings", 2);
        flow.Table(
            [new("A season", 6), new("Without", 2, TextSide.Right), new("With", 2, TextSide.Right), new("Difference", 4, TextSide.Right)],
            Brings(input, variant),
            isSmall: true
        );
        flow.Heading("What it costs, and when it is paid back", 2);
        Costs(flow, variant, money);
        flow.Heading("What this rests on", 2);
        RestsOn(flow, input);
        flow.Heading("Cautions", 2);
        foreach (var caution in CaseCautions.Main(input))
        {
            flow.Point(caution);
        }

        flow.PageBreak();
    }

    private static void Asked(PdfFlow flow, CaseInput input, VariantResult variant)
    {
        flow.Heading("What is asked for", 2);
        var terms = input.Money?.Terms;
        flow.Point(
            terms is null
                ? $"No sum is given: the variant {CaseWords.Name(variant.Name)} has no table [invest]. This is what it changes."
                : $"{InvestNames.Money(terms.Capital, input.Money!.Currency)} to build or buy what {CaseWords.Name(variant.Name)} "
                    + $"changes, for {Numbers.Count(terms.LifeYears, "year", "years")} of use."
        );
        var changes = CaseChanges.Values(input.Base.Plan, input.Changed!.Plan);
        var told = 0;
        while (told < Math.Min(MostChanges, changes.Count) && flow.LeftMm > RestMm)
        {
            flow.Point(PlainText.Short(changes[told++], LongestChange));
        }

        if (changes.Count > told)
        {
            flow.Point($"{Numbers.Count(changes.Count - told, "more change", "more changes")}: section 2.");
        }
    }

    private static IEnumerable<IReadOnlyList<string>> Brings(CaseInput input, VariantResult variant)
    {
        var (without, with) = (input.Base, input.Changed!);
        var wanted = Numbers.Whole(without.PlantsWanted);
        var plants = variant.Of(Measures.PlantsInTime);
        yield return
        [
            $"plants out in time, of {wanted} wanted, mean",
            Numbers.Whole(without.PlantsInTime.Mean),
            Numbers.Whole(with.PlantsInTime.Mean),
            plants is not { IsReal: true } ? "no clear difference"
            : plants.HalfWidth == 0 ? CompareFigures.Signed(plants.Measure, plants.Difference, 0)
            : $"{CompareFigures.Signed(plants.Measure, plants.Difference, 0)} ({CompareFigures.Interval(plants)})",
        ];
        yield return
        [
            "the same in a bad year: one season in ten has no more",
            Numbers.Whole(without.PlantsInTime.P10),
            Numbers.Whole(with.PlantsInTime.P10),
            "",
        ];
        var fits = variant.Fits;
        yield return
        [
            "seasons in which the plan fits",
            $"{ChanceWords.Fine(fits.Base.Share)}",
            $"{ChanceWords.Fine(fits.Variant.Share)}",
            fits.IsReal ? $"{ChanceWords.SignedPoints(fits.Difference)} points ({ChanceWords.SignedPoints(fits)})" : "no clear difference",
        ];
    }

    private static void Costs(PdfFlow flow, VariantResult variant, InvestResult? money)
    {
        if (money is null)
        {
            foreach (var change in variant.Changes.Where(change => change.IsReal && change.Measure.IsMoney))
            {
                flow.Point(CaseWords.Real(change));
            }

            flow.Point("What it costs to build or buy, and when that is paid back, is not worked out: the terms are not given.");
            return;
        }

        string Money(double amount) => InvestNames.Money(amount, money.Currency);
        var (year, net, payback) = (money.YearlyBenefit, money.NetPresentValue, money.SimplePayback);
        var life = Numbers.Count(money.Terms.LifeYears, "year", "years");
        flow.Table(
            [new("", 6), new("On average", 3, TextSide.Right), new("8 runs of 10", 5, TextSide.Right)],
            [
                ["to build or buy", Money(money.Terms.Capital), ""],
                ["net benefit of a year (8 seasons of 10)", Money(year.Mean), Range(year.P10, year.P90, Money)],
                [
                    "years until it is paid back",
                    InvestSentences.Years(payback.OfAverageYear) ?? CaseMoney.Untold,
                    Range(payback.P10, payback.P90, InvestSentences.Years),
                ],
                [
                    $"net present value over {life} at {InvestNames.Percent(money.Terms.DiscountRate)} a year",
                    Money(net.Mean),
                    Range(net.P10, net.P90, Money),
                ],
            ],
            isSmall: true
        );
        flow.Point(InvestSentences.Chance(money));
    }

    private static string Range(double low, double high, Func<double, string?> word) =>
        InvestSentences.Range(low, high, word) ?? CaseMoney.Untold;

    private static void RestsOn(PdfFlow flow, CaseInput input)
    {
        var study = input.Base;
        flow.Point(
            $"{Numbers.Count(study.Seasons, "season", "seasons")} played, the same without and with it. "
                + $"Weather: {PlainText.Short(WeatherPart.Words(study.Plan.Scenario), 120)}."
        );
        flow.Point(CaseUncertainty.OfValues(input));
        if (input.Money is not { } money)
        {
            return;
        }

        flow.Point(
            (
                money.Terms.Basis.Length == 0
                    ? "The sums are those of the grower; no source of them is given. "
                    : $"The sums are those of the grower: “{PlainText.Short(money.Terms.Basis, 40)}”. "
            ) + InvestSentences.Deciding(money)
        );
        if (money.BreakEvens.FirstOrDefault(each => each.Input == InvestInput.PlantOnTime) is { } plant)
        {
            flow.Point(InvestSentences.Belief(plant, money.Currency));
        }
    }
}
