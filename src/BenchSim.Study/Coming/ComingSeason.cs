using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Coming;

/// <summary>What one season tells of the next days, and of how late the batches are.</summary>
internal sealed record ComingSeason
{
    public required Dictionary<JobKey, SeenJob> Jobs { get; init; }

    /// <summary>Places held just after the round, by space and day from the first that is looked at.</summary>
    public required ImmutableArray<ImmutableArray<int>> Held { get; init; }

    /// <summary>The batches of which too few plants are out in time, by position.</summary>
    public required ImmutableDictionary<int, LateBatch> Late { get; init; }

    public static ComingSeason Of(SeasonPlan plan, int day, Dictionary<JobKey, SeenJob> jobs, SeasonResult result) =>
        new()
        {
            Jobs = jobs,
            Held = [.. result.Held.Select(held => held.Skip(day).Take(ComingDays.RoomDays).ToImmutableArray())],
            Late = plan
                .Batches.Select((batch, index) => (Index: index, Late: LateBatch.Of(plan, batch, result.Batches[index])))
                .Where(each => each.Late is not null)
                .ToImmutableDictionary(each => each.Index, each => each.Late!.Value),
        };
}

/// <summary>A batch that is late in one season.</summary>
/// <param name="Days">Days from the planned set-out date to the middle tray's; null where none went out.</param>
/// <param name="IsShort">Whether too few plants went out at all.</param>
/// <param name="IsHeld">Whether the weather held trays that were ready.</param>
/// <param name="NoRoomIn">Position of the space that kept most of it waiting for a place; -1 for none.</param>
internal readonly record struct LateBatch(int? Days, bool IsShort, bool IsHeld, int NoRoomIn)
{
    public static LateBatch? Of(SeasonPlan plan, BatchPlan batch, BatchOutcome outcome)
    {
        // In decimal: 0.55 of 100 plants is 55, not 55.00000000000001.
        var goal = (decimal)plan.Scenario.Rules.ServiceGoal * batch.Order.Plants;
        if (outcome.PlantsInTimeWeatherCounted >= goal)
        {
            return null;
        }

        var blocked = outcome.BlockedTrayDays;
        var most = blocked.Max();
        return new LateBatch(
            outcome.OutMedian < 0 ? null : plan.FirstDay.AddDays(outcome.OutMedian).DayNumber - batch.SetOutOn.DayNumber,
            outcome.PlantsOut < goal,
            outcome.HoldTrayDays > 0,
            most > 0 ? Array.IndexOf(blocked, most) : -1
        );
    }
}
