using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// The last day on which each batch can be sown again and still meet its field date: in normal weather and with a place for every tray, by
/// the planner that dated it.
/// </summary>
public static class LastSowings
{
    /// <summary>
    /// By batch, the last work day of the season from which it is ready at most <see cref="SiteRules.LateDays"/> after its planned set-out
    /// date; null where there is none.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="isWanted">By position, whether the day of a batch is asked for; the others have none. Null for all.</param>
    public static ImmutableArray<DateOnly?> Of(SeasonPlan plan, Func<int, bool>? isWanted = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var redater = new Redater(plan);
        return [.. plan.Batches.Select((_, index) => isWanted?.Invoke(index) == false ? null : Last(plan, redater, index))];
    }

    /// <summary>The latest date that still counts as in time.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="batch">A batch of it.</param>
    public static DateOnly OutBy(SeasonPlan plan, BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(batch);
        return batch.SetOutOn.AddDays(plan.Scenario.Rules.LateDays);
    }

    // From the last day backward, as a later sowing may come into a better house and be ready sooner.
    private static DateOnly? Last(SeasonPlan plan, Redater redater, int index)
    {
        var batch = plan.Batches[index];
        var outBy = OutBy(plan, batch);
        var last = outBy.AddDays(-batch.Crop.HardeningNights);
        for (
            var day = last < plan.Scenario.Window.Closes ? last : plan.Scenario.Window.Closes;
            day >= plan.Scenario.Window.Opens;
            day = day.AddDays(-1)
        )
        {
            if (plan.Scenario.Rules.IsWorkDay(day) && redater.ReadyOn(index, day) is { } ready && ready <= outBy)
            {
                return day;
            }
        }

        return null;
    }
}
