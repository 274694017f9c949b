using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Study.Precision;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Words;

/// <summary>Says why a play that looked for precision stopped where it did.</summary>
public static class PrecisionWords
{
    /// <summary>What was asked for, when it was looked at, where it stopped and why, with the intervals there.</summary>
    public static string WhyItStopped(PrecisionResult result)
    {
        string[] asked = [.. Asked(result.Goal)];
        var why = result.IsReached
            ? $"It stopped there because {(asked.Length == 1 ? "the interval was" : "both intervals were")} narrow "
                + $"enough{(result.Looks.Length == 1 ? "" : " for the first time")}"
            : "It stopped there because no more seasons were allowed (--most); the "
                + $"{(asked.Length == 1 ? "interval is" : "intervals are not both narrow enough,")} "
                + $"{(asked.Length == 1 ? "still wider than asked" : "so take more seasons or ask for less")}";
        return $"Asked for: {string.Join(" and ", asked)}. {Looks(result)} {why}: {string.Join("; ", Reached(result))}.";
    }

    private static IEnumerable<string> Asked(PrecisionGoal goal)
    {
        if (goal.Chance is { } chance)
        {
            yield return "a 95 % interval of the chance that the plan fits of no more than "
                + $"{ChanceWords.FinePoints(chance)} percentage points to either side";
        }

        if (goal.LatePlantDays is { } late)
        {
            yield return $"a 95 % interval of the mean late plant-days of no more than {Numbers.Plain(late)} to either side";
        }
    }

    private static string Looks(PrecisionResult result)
    {
        ImmutableArray<string> looks = [.. result.Looks.Select(look => Numbers.Whole(look.Seasons))];
        return $"The play was looked at after {PlainText.List(looks)} seasons{(looks.Length == 1 ? "" : ", numbers fixed beforehand")}.";
    }

    private static IEnumerable<string> Reached(PrecisionResult result)
    {
        var seasons = Numbers.Count(result.Study.Seasons, "season", "seasons");
        if (result.Goal.Chance is not null)
        {
            var fits = result.Study.Fits;
            yield return $"the plan fits in {ChanceWords.Fine(fits.Share)} of {seasons} (95 % interval {ChanceWords.FineInterval(fits)}, "
                + $"{ChanceWords.FinePoints((fits.High - fits.Low) / 2)} points to either side)";
        }

        if (result.Goal.LatePlantDays is not null)
        {
            var late = result.Study.LatePlantDays;
            yield return $"late plant-days {Numbers.Short(late.Mean)} on average of {seasons} (95 % interval "
                + $"{Numbers.Short(Math.Max(0, late.Mean - late.HalfWidth))} to {Numbers.Short(late.Mean + late.HalfWidth)}, "
                + $"{Numbers.Short(late.HalfWidth)} to either side)";
        }
    }
}
