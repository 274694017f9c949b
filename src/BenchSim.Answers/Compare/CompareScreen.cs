using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Compare;

/// <summary>The first screen of a comparison: which variants help, by how much, and what else they change.</summary>
internal static class CompareScreen
{
    private const int MostFacts = 3;
    private const int MostTold = 2;
    private const int LongestName = 24;

    // What a grower feels of it stands in the headline.
    private static readonly ImmutableArray<Measure> s_felt = [Measures.PlantsInTime, Measures.LatePlantDays];

    public static FirstScreen Of(CompareAnswer answer)
    {
        var result = answer.Result;
        VariantResult[] best = [.. result.Variants.OrderByDescending(Gain)];
        var others = best.Length - MostTold;
        var more = others > 0 ? $" {Numbers.Count(others, "other variant", "other variants")}: see the table." : "";
        var told = string.Join(' ', best.Take(MostTold).Select(variant => Sentence(variant, result.Seasons)));
        return new FirstScreen($"{FirstScreen.Subject(result.Base.Scenario.Name, null, answer.From?.Today)}: {told}{more}")
        {
            Facts = [.. Moved(result, best).Concat(best.Length > 1 ? [] : Others(best[0])).Take(MostFacts)],
            Next = answer.ScenarioFolder is { } folder ? Next(best[0], folder, answer.Replan) : null,
            Table = Table(result, best),
            Footnote =
                $"The same {Numbers.Count(result.Seasons, "season", "seasons")} of each; "
                + $"each range allows for {Numbers.Count(result.Comparisons, "comparison", "comparisons")}.",
            Written = answer.CaseFile is { } file ? $"Case report: {file}" : null,
        };
    }

    private static IEnumerable<string> Moved(CompareResult result, VariantResult[] best) =>
        best.Where(variant => variant.Plan.Scenario.IsPlannedAnew)
            .Select(variant => ReplanWords.Moved(result.Base, variant.Name, variant.Plan));

    private static IEnumerable<string> Others(VariantResult variant) =>
        variant
            .Changes.Where(change => change.IsReal && !s_felt.Contains(change.Measure))
            .Select(change => CompareSentences.Real(variant.Name, change));

    private static bool Helps(VariantResult variant) =>
        variant.Of(Measures.PlantsInTime) is { IsReal: true, Difference: > 0 } || variant.Fits is { IsReal: true, Difference: > 0 };

    private static double Gain(VariantResult variant) =>
        variant.Of(Measures.PlantsInTime) is { IsReal: true } plants ? plants.Difference : 0;

    private static string Sentence(VariantResult variant, int seasons)
    {
        var name = PlainText.Quote(PlainText.Short(variant.Name, LongestName));
        var plants = variant.Of(Measures.PlantsInTime);
        var fits = variant.Fits;
        var share = fits.IsReal
            ? $"the plan fits in {ChanceWords.Fine(fits.Variant.Share)} of seasons instead of {ChanceWords.Fine(fits.Base.Share)}"
            : "";
        if (plants is { IsReal: true })
        {
            var real = CompareSentences.Real(PlainText.Short(variant.Name, LongestName), plants).TrimEnd('.');
            return share.Length > 0 ? $"{real}, and {share}." : $"{real}.";
        }

        return share.Length > 0
            ? $"With {name} {share}; no clear difference in the plants out in time."
            : $"{name} makes no difference to the plants in time that {Numbers.Count(seasons, "season", "seasons")} can show.";
    }

    // Whether it pays is asked of the variant as it is written: the dates that only this comparison moves are not in it.
    private static NextStep Next(VariantResult best, string folder, bool replan) =>
        !Helps(best) ? NextStep.Of("See what would help", "mend", folder)
        : replan ? NextStep.Of("See all that it changes", "compare", folder, "--with", best.Name, "--replan", "--all")
        : best.Plan.Scenario.Invest is null ? NextStep.Of("See all that it changes", "compare", folder, "--with", best.Name, "--all")
        : NextStep.Of("See whether it pays", "invest", folder, "--with", best.Name);

    private static Table Table(CompareResult result, VariantResult[] best)
    {
        var table = new Table(["", ">more plants in time", ">range", ">plan fits", ">points more"], LongestName);
        table.Add("as it is", "", "", ChanceWords.Fine(result.Variants[0].Fits.Base.Share), "");
        foreach (var variant in best)
        {
            var plants = variant.Of(Measures.PlantsInTime);
            table.Add(
                variant.Name,
                plants is null ? "-" : CompareFigures.Signed(plants.Measure, plants.Difference, CompareFigures.Decimals(plants)),
                plants is null or { Differing: 0 } ? "-" : CompareFigures.Interval(plants) ?? "-",
                ChanceWords.Fine(variant.Fits.Variant.Share),
                ChanceWords.SignedPoints(variant.Fits.Difference)
            );
        }

        return table;
    }
}
