using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Workbench.Plays;

/// <summary>
/// Sets a try against the files as a variant is set against its base: what the files call in time, and the dates they promise, hold for
/// both. Else a try that calls seven more days in time would win by that alone.
/// </summary>
internal static class Yardstick
{
    /// <summary>The plan of a try as the variant that it can be kept as, planned anew.</summary>
    /// <param name="files">Plan of the files.</param>
    /// <param name="tried">Plan of the try, which opens on the same day.</param>
    public static SeasonPlan Judged(SeasonPlan files, SeasonPlan tried)
    {
        var (rules, below) = (tried.Scenario.Rules, files.Scenario.Rules);
        var scenario = tried.Scenario with
        {
            IsPlannedAnew = true,
            Rules = rules with { ServiceGoal = below.ServiceGoal, LateDays = below.LateDays },
        };

        // Where a promised date cannot be kept, the dates are those of the try.
        return VariantPlanner.Make(files, scenario).Plan ?? tried with { Scenario = scenario, SownInTimeDays = files.SownInTimeDays };
    }

    /// <summary>Whether a try changes what its seasons are judged by: what counts as in time, or a date that the files promise.</summary>
    /// <param name="files">Plan of the files.</param>
    /// <param name="tried">Plan of the try.</param>
    public static bool IsMoved(SeasonPlan files, SeasonPlan tried)
    {
        var (rules, below) = (tried.Scenario.Rules, files.Scenario.Rules);
        if (rules.LateDays != below.LateDays || rules.ServiceGoal != below.ServiceGoal || tried.SownInTimeDays != files.SownInTimeDays)
        {
            return true;
        }

        var promised = files.Batches.ToDictionary(batch => batch.Order.Id, StringComparer.Ordinal);
        return tried.Batches.Any(batch => promised.TryGetValue(batch.Order.Id, out var before) && IsMoved(before, batch));
    }

    private static bool IsMoved(BatchPlan before, BatchPlan after) =>
        before.Crop.HoldDays != after.Crop.HoldDays
        || (before.Order.Sow == after.Order.Sow && before.Order.SetOut == after.Order.SetOut && before.SetOutOn != after.SetOutOn);
}
