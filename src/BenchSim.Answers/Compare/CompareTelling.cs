using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;

namespace BenchSim.Answers.Compare;

/// <summary>Tells what variants change: a table, then a sentence for each difference.</summary>
internal static class CompareTelling
{
    private const int LongestName = 40;

    public static void Tell(Passages words, CompareResult result, string? caseReport)
    {
        words.Sentence(
            $"{PlainText.Short(result.Base.Scenario.Name, 60)}: the base against "
                + $"{Numbers.Count(result.Variants.Length, "variant", "variants")}, "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")} of each, the same ones, seed {result.Seed}."
        );
        foreach (var variant in result.Variants)
        {
            words.Gap();
            TellVariant(words, result, variant);
        }

        words.Gap();
        words.Sentence(
            CompareSentences.Allowance(result.Comparisons)
                + " Chances: Newcombe's paired interval; the rest: Student's interval of the mean difference, season by season."
        );
        words.Sentence("Each figure is rounded by itself, so a difference may seem one off.");
        words.Sentence(
            result.Variants.Any(variant => !variant.Plan.Scenario.IsPlannedAnew)
                ? "Sowings that a variant does not change keep the planned dates of the base, so that late means the same in both."
                : "Late is counted from the set-out dates of the base, which stay, so that it means the same in both."
        );
        foreach (var caution in Cautions(result))
        {
            words.Sentence(caution);
        }

        if (caseReport is not null)
        {
            words.Line($"Case report: {caseReport}");
        }
    }

    private static IEnumerable<string> Cautions(CompareResult result)
    {
        if (result.Measures.Any(measure => measure.IsFuel))
        {
            yield return "Fuel: " + HeatCautions.Fuel;
        }

        if (result.Measures.Any(measure => measure.Is(Measures.MatPower)))
        {
            yield return "Heat mats: " + HeatCautions.Mats;
        }

        if (result.Variants.Any(variant => variant.Plan.Scenario.Houses.Length > result.Base.Scenario.Houses.Length))
        {
            yield return "A house more: " + HeatCautions.Structure;
        }
    }

    /// <summary>Tells one variant: a table, then a sentence for each difference.</summary>
    public static void TellVariant(Passages words, CompareResult result, VariantResult variant)
    {
        words.Sentence($"{PlainText.Quote(variant.Name)} against the base, means of a season:");
        words.Gap();
        var table = words.Table(["", ">base", ">variant", ">difference", ">interval", "unit"], LongestName);
        var fits = variant.Fits;
        table.Add(
            "chance that the plan fits",
            ChanceWords.Fine(fits.Base.Share),
            ChanceWords.Fine(fits.Variant.Share),
            ChanceWords.SignedPoints(fits.Difference),
            ChanceWords.SignedPoints(fits),
            "percentage points"
        );
        foreach (var change in variant.Changes)
        {
            var measure = change.Measure;
            var decimals = CompareFigures.Decimals(change);
            table.Add(
                measure.Name,
                CompareFigures.Amount(measure, change.Base, decimals),
                CompareFigures.Amount(measure, change.Variant, decimals),
                CompareFigures.Signed(measure, change.Difference, decimals),
                CompareFigures.Interval(change) ?? "-",
                CompareFigures.Unit(measure)
            );
        }

        if (variant.Plan.Scenario.IsPlannedAnew)
        {
            TellMoves(words, result, variant);
        }

        words.Gap();
        words.Point(CompareSentences.Fits(variant.Name, fits, result.Seasons), fits.IsReal);
        foreach (var change in variant.Changes.Where(change => change.IsReal))
        {
            words.Point(CompareSentences.Real(variant.Name, change), true);
        }

        foreach (var change in variant.Changes.Where(change => !change.IsReal))
        {
            words.Point(CompareSentences.NotReal(change, result.Seasons), false);
        }
    }

    private static void TellMoves(Passages words, CompareResult result, VariantResult variant)
    {
        words.Gap();
        words.Sentence(ReplanWords.Moved(result.Base, variant.Name, variant.Plan));
        var moves = MovedSowing.Between(result.Base, variant.Plan);
        if (moves.IsEmpty)
        {
            return;
        }

        words.Gap();
        var table = words.Table(["batch", "grower", "planned", "planned anew", ">days"], LongestName);
        foreach (var move in moves)
        {
            table.Add(move.Batch, move.Grower, Dates.Iso(move.From), Dates.Iso(move.To), ReplanWords.Days(move));
        }
    }
}
