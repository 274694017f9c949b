using BenchSim.Report.Charts;
using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Case;

/// <summary>The money of a case, where its terms are given.</summary>
internal static class CaseMoney
{
    // What one season cannot tell.
    internal const string Untold = "–";

    // So that the report keeps its length.
    private const int MostBars = 8;

    /// <summary>Writes the section.</summary>
    public static void Write(PdfFlow flow, CaseInput input)
    {
        flow.KeepTogether(40);
        flow.Heading("4. Money");
        if (input.Money is not { } result)
        {
            flow.Paragraph(
                input.Comparison is null
                    ? "There is no money case here: this report looks at one plan by itself. What a change of it would save and cost is "
                        + "worked out when the plan is compared with a variant that has a table [invest]."
                    : "There is no money case here: the variant has no table [invest] with its cost, life and discount rate."
            );
            return;
        }

        var currency = result.Currency;
        flow.Paragraph(InvestSentences.Headline(result));
        flow.Point(InvestSentences.Chance(result));
        var source =
            result.Terms.Basis.Length == 0
                ? "No source of the terms is given."
                : $"Their source, in the words of the variant: “{PlainText.Short(result.Terms.Basis, 200)}”.";
        flow.Point(
            $"Terms: {InvestNames.Money(result.Terms.Capital, currency)} to build or buy, "
                + $"{Numbers.Count(result.Terms.LifeYears, "year", "years")} of life, discount rate "
                + $"{InvestNames.Percent(result.Terms.DiscountRate)} a year; a plant more in time is worth "
                + $"{InvestNames.Money(result.Terms.PlantWorth, currency)}. {source}"
        );
        flow.Space(1.5);
        flow.Table(
            [
                new("A year with it against a year without", 3),
                new("More or less", 2, TextSide.Right),
                new("Money", 2, TextSide.Right),
                new("95 % interval", 3, TextSide.Right),
            ],
            Year(result, currency),
            isSmall: true
        );
        flow.Table(
            [
                new("Over its life", 3),
                new("Average", 2, TextSide.Right),
                new("95 % interval", 3, TextSide.Right),
                new("8 of 10 runs", 3, TextSide.Right),
            ],
            Life(result, currency),
            isSmall: true
        );
        Deciding(flow, result, currency);
    }

    private static IEnumerable<IReadOnlyList<string>> Year(InvestResult result, string currency)
    {
        string Money(double amount) => InvestNames.Money(amount, currency);
        foreach (var part in result.Parts)
        {
            var quantity = $"{SavingWords.Signed(part.Quantity)} {PlainText.Short(part.Unit, 20)}";
            yield return part.IsPriced
                ?
                [
                    PlainText.Short(part.Name, 60),
                    quantity,
                    Money(part.Benefit),
                    Range(part.Benefit - part.BenefitHalfWidth, part.Benefit + part.BenefitHalfWidth, Money),
                ]
                : [PlainText.Short(part.Name, 60), quantity, "no price", "–"];
        }

        yield return ["upkeep", "", Money(0 - result.Terms.Upkeep), ""];
        var year = result.YearlyBenefit;
        yield return ["net benefit of a year", "", Money(year.Mean), Range(year.Low, year.High, Money)];
    }

    private static IEnumerable<IReadOnlyList<string>> Life(InvestResult result, string currency)
    {
        string Money(double amount) => InvestNames.Money(amount, currency);
        var year = result.YearlyBenefit;
        var net = result.NetPresentValue;
        var rate = result.InternalRate;
        yield return
        [
            "net benefit of a year (8 of 10 seasons)",
            Money(year.Mean),
            Range(year.Low, year.High, Money),
            Range(year.P10, year.P90, Money),
        ];
        yield return ["net present value", Money(net.Mean), Range(net.Low, net.High, Money), Range(net.P10, net.P90, Money)];
        yield return
        [
            "internal rate of return, a year",
            InvestSentences.Rate(rate.OfAverageYear) ?? Untold,
            Range(rate.Low, rate.High, InvestSentences.Rate),
            Range(rate.P10, rate.P90, InvestSentences.Rate),
        ];
        yield return Payback("payback, years", result.SimplePayback);
        yield return Payback("payback, discounted, years", result.DiscountedPayback);
    }

    private static IReadOnlyList<string> Payback(string name, PaybackSpread spread) =>
        [
            name,
            InvestSentences.Years(spread.OfAverageYear) ?? Untold,
            Range(spread.Low, spread.High, InvestSentences.Years),
            Range(spread.P10, spread.P90, InvestSentences.Years),
        ];

    private static string Range(double low, double high, Func<double, string?> word) => InvestSentences.Range(low, high, word) ?? Untold;

    private static void Deciding(PdfFlow flow, InvestResult result, string currency)
    {
        var chart = TornadoChart.Of(result, MostBars);
        var height = PdfPainter.RowsMm(chart);
        if (height > 0)
        {
            flow.Drawing(
                height,
                (sheet, left, top) => PdfPainter.Rows(sheet, chart, left, top, flow.WidthMm),
                $"Figure 2. Net present value over {Numbers.Count(result.Terms.LifeYears, "year", "years")}, mean of "
                    + $"{Numbers.Count(result.Seasons, "season", "seasons")}, with one input lower (light) or higher (dark), "
                    + "all else as given: a quarter less and more, a life to whole years outwards, unless the variant gives a range. "
                    + "Broken line: it breaks even; black line: as given."
            );
        }

        flow.Heading("What would have to be true of one figure, all else as given, for it to pay (95 % interval)", 2);
        foreach (var each in result.BreakEvens)
        {
            flow.Point(InvestSentences.Belief(each, currency));
        }

        flow.Space(1.5);
        flow.Small(InvestCautions.LeavesOut);
    }
}
