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
                + $"{SavingWords.Effect(trial.LatePlantDays, result.Seasons)}{SavingWords.Fits(trial.Fits)}."
            ),
            .. result
                .Unlimited.Where(trial => trial != BottleneckOf(result))
                .Select(trial =>
                    $"{SavingWords.Name(trial.Space)} without limit, alone, "
                    + $"{SavingWords.Effect(trial.LatePlantDays, result.Seasons)}{SavingWords.Fits(trial.Fits)}."
                ),
            .. NoPair(result),
        ];
    }

    /// <summary>How the intervals are to be read.</summary>
    /// <param name="result">What was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static string Basis(BottleneckResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return $"Each interval allows for all {Numbers.Whole(result.Comparisons)} comparisons made here (Bonferroni): "
            + "with 95 % confidence every one of them holds at once. Everything is played on the same luck, with the planned dates as "
            + "they are.";
    }

    // The trials come with the greatest mean saving first; one that is unsure may stand before one that is not.
    private static BottleneckTrial? BottleneckOf(BottleneckResult result) =>
        result.Unlimited.FirstOrDefault(trial => SavingWords.IsSaving(trial.LatePlantDays));

    private static string Headline(BottleneckResult result)
    {
        if (result.LatePlantDays == 0)
        {
            return $"No plant is late in {SavingWords.Any(result.Seasons)}: room holds nothing back.";
        }

        if (result.Seasons == 1)
        {
            return "One season cannot tell a bottleneck from luck. In it, one space alone without limit saves at most "
                + $"{Saved(result.Unlimited.Select(trial => trial.LatePlantDays))} of {SavingWords.Amount(result.LatePlantDays)} late "
                + "plant-days.";
        }

        if (BottleneckOf(result) is not { } first)
        {
            return "No space is a bottleneck by itself: none of them, without limit, alone, saves more of the "
                + $"{SavingWords.Amount(result.LatePlantDays)} late plant-days a season than luck can.";
        }

        var late = first.LatePlantDays;
        return $"The bottleneck is {SavingWords.Name(first.Space)}: without a limit there, {SavingWords.Amount(late.Difference)} of "
            + $"{SavingWords.Amount(late.Base)} late plant-days a season would be saved "
            + $"({SavingWords.Range(late)}){SavingWords.Fits(first.Fits)}.";
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
            yield return "No two spaces together save more than each alone adds up to, as far as can be told "
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
