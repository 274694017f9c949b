using System.Collections.Immutable;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>
/// Which space holds the plan back, in plain words. The only text from users in the sentences are names of spaces, shortened, on one line
/// and without control characters, so the sentences can go to a screen as they are.
/// </summary>
public static class BottleneckSentences
{
    /// <summary>The findings, most important first.</summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static ImmutableArray<string> Of(BottleneckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return
        [
            Headline(result),
            .. result.Pairs.Where(pair => pair.HelpsTogether).Select(pair => Pair(result, pair)),
            .. result.Larger.Select(trial =>
                $"{SavingWords.Unit(trial.Space, trial.PlacesAdded ?? 0)} "
                + $"{SavingWords.Effect(trial, result.Seasons)}{SavingWords.Fits(trial.Fits)}."
            ),
            .. result
                .Unlimited.Where(trial => trial != Bottleneck(result))
                .Select(trial =>
                    $"{SavingWords.Name(trial.Space)} without limit, alone, "
                    + $"{SavingWords.Effect(trial, result.Seasons)}{SavingWords.Fits(trial.Fits)}."
                ),
            .. result.Warmer.Select(trial => Warmer(result, trial)),
            .. NoPair(result),
        ];
    }

    /// <summary>How the intervals are to be read.</summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static string Basis(BottleneckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return CompareSentences.Allowance(result.Comparisons) + " Everything is played in the same seasons, on the planned dates.";
    }

    /// <summary>
    /// The space that brings most plants out in time without a limit, of those that surely bring some; where none does, that which saves
    /// most late plant-days, of those that surely save some; null for none.
    /// </summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static BottleneckTrial? Bottleneck(BottleneckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);

        // The trials come with the greatest mean gain first; one that is unsure may stand before one that is not.
        return result.Unlimited.FirstOrDefault(trial => trial.Helps && trial.PlantsInTime.IsReal)
            ?? result.Unlimited.FirstOrDefault(trial => trial.Helps);
    }

    private static string Headline(BottleneckResult result)
    {
        if (result.LatePlantDays == 0)
        {
            return $"No plant is late in {SavingWords.Any(result.Seasons)}: room holds nothing back.";
        }

        if (result.Seasons == 1)
        {
            return "One season cannot tell a bottleneck from chance. In it, one space alone without limit saves at most "
                + $"{Saved(result.Unlimited.Select(trial => trial.LatePlantDays))} of {SavingWords.Amount(result.LatePlantDays)} late "
                + "plant-days.";
        }

        if (Bottleneck(result) is not { } first)
        {
            return "No space is a bottleneck by itself: with no limit on any one of them, no more plants are clearly out in time, and none "
                + $"of the {SavingWords.Amount(result.LatePlantDays)} late plant-days a season is clearly saved.";
        }

        if (first.PlantsInTime is { IsReal: true } plants)
        {
            return $"The bottleneck is {SavingWords.Name(first.Space)}: without a limit there, "
                + $"{SavingWords.Amount(plants.Difference)} more plants a season would be out in time ({SavingWords.Range(plants)}), "
                + $"of {Numbers.Whole(Wanted(result))} wanted{SavingWords.Fits(first.Fits)}.";
        }

        var late = first.LatePlantDays;
        return $"The bottleneck is {SavingWords.Name(first.Space)}: without a limit there, {SavingWords.Amount(late.Difference)} of "
            + $"{SavingWords.Amount(late.Base)} late plant-days a season would be saved "
            + $"({SavingWords.Range(late)}){SavingWords.Fits(first.Fits)}.";
    }

    private static long Wanted(BottleneckResult result) => result.Plan.Batches.Sum(batch => (long)batch.Order.Plants);

    private static string Warmer(BottleneckResult result, WarmerTrial trial)
    {
        var units = result.Plan.Scenario.Units;
        return $"The house {PlainText.Quote(PlainText.Short(trial.House.Name, 40))} as warm as the warmest one "
            + $"({Temperatures.Words(trial.Warmer.NightC ?? 0, units)} at night instead of "
            + $"{Temperatures.Words(trial.House.NightC ?? 0, units)}) "
            + $"{SavingWords.Effect(trial.PlantsInTime, trial.LatePlantDays, result.Seasons)}{SavingWords.Fits(trial.Fits)}. "
            + "That takes more fuel.";
    }

    private static IEnumerable<string> NoPair(BottleneckResult result)
    {
        if (result.LatePlantDays == 0 || result.Pairs.IsEmpty || result.Pairs.Any(pair => pair.HelpsTogether))
        {
            yield break;
        }

        var best = result.Pairs.MinBy(pair => pair.BeyondSum.Difference)!;
        if (result.Seasons == 1 && best is { BeyondSum.Difference: < 0, LatePlantDays.Difference: < 0 })
        {
            yield return $"{SavingWords.Name(best.First)} and {SavingWords.Name(best.Second)} together, without limit on both, "
                + $"save {SavingWords.Amount(best.LatePlantDays.Difference)} late plant-days in that season, "
                + $"{SavingWords.Amount(best.BeyondSum.Difference)} more than the two save apart.";
        }
        else
        {
            yield return "No two spaces together clearly save more than the two save apart "
                + $"({Numbers.Count(result.Pairs.Length, "pair was", "pairs were")} tried).";
        }
    }

    // The most that one of several trials saves; 0 where none saves any.
    private static string Saved(IEnumerable<MeasureChange> changes) =>
        SavingWords.Amount(changes.Select(change => Math.Min(0, change.Difference)).DefaultIfEmpty(0).Min());

    private static string Pair(BottleneckResult result, BottleneckPair pair)
    {
        var alone = result.Unlimited.Any(trial =>
            (trial.Space == pair.First || trial.Space == pair.Second) && SavingWords.IsSaving(trial.LatePlantDays)
        );
        var late = pair.LatePlantDays;
        return $"{SavingWords.Name(pair.First)} and {SavingWords.Name(pair.Second)} "
            + $"{(alone ? "help more together than apart" : "help only together")}: without a limit on both, "
            + $"{SavingWords.Amount(late.Difference)} late plant-days a season would be saved ({SavingWords.Range(late)}), "
            + $"{SavingWords.Amount(pair.BeyondSum.Difference)} more than each alone adds up to "
            + $"({SavingWords.Range(pair.BeyondSum)}){SavingWords.Fits(pair.Fits)}.";
    }
}
