using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Invest;

namespace BenchSim.Answers.Invest;

/// <summary>The first screen of a money case: whether it pays, what decides it, and what one must believe.</summary>
internal static class InvestScreen
{
    private const int LongestName = 32;

    public static FirstScreen Of(InvestAnswer answer)
    {
        var result = answer.Result;
        return new FirstScreen(
            $"{PlainText.Short(result.Base.Scenario.Name, 30)}, {PlainText.Quote(PlainText.Short(result.Name, 24))}: "
                + InvestSentences.Headline(result)
        )
        {
            Facts =
            [
                InvestSentences.Chance(result),
                InvestSentences.Deciding(result),
                .. result
                    .BreakEvens.OrderByDescending(each => each.Input == InvestInput.Capital)
                    .Take(1)
                    .Select(each => InvestSentences.Belief(each, result.Currency)),
            ],
            Warnings = ["The terms are yours: what you leave out is not counted. Building and wiring fall under local codes."],
            Next = answer.ScenarioFolder is { } folder
                ? NextStep.Of("Write a case for a grant or a lender", "compare", folder, "--with", result.Name, "--case")
                : null,
            Table = Table(result),
            Written = answer.Folder is { } place ? $"Chart and tables: {place}" : null,
            Footnote =
                $"The same {Numbers.Count(result.Seasons, "season", "seasons")} of each; {Numbers.Whole(result.Lives)} runs of "
                + $"{Numbers.Count(result.Terms.LifeYears, "year", "years")} drawn from them.",
        };
    }

    private static Table Table(InvestResult result)
    {
        var table = new Table(["a year", ">money"], LongestName);
        table.Add("net benefit", InvestNames.Money(result.YearlyBenefit.Mean, result.Currency));
        foreach (var part in result.Parts.Where(part => part.IsPriced))
        {
            table.Add(part.Name, InvestNames.Money(part.Benefit, result.Currency));
        }

        table.Add("upkeep", InvestNames.Money(0 - result.Terms.Upkeep, result.Currency));
        return table;
    }
}
