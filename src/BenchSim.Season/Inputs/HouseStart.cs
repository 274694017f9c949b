using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>From which day on a house is open though nothing stands in it: an empty house that waits for its first trays.</summary>
public static class HouseStart
{
    /// <summary>Days before its first planned tray from which a house that is open all season is heated, so that it is warm.</summary>
    public const int WarmingDays = 2;

    /// <summary>
    /// The first date on which each house is open whatever stands in it: its opening date; where it is open all season,
    /// <see cref="WarmingDays"/> before the first day on which a tray is planned to stand in it; null for one opened "when needed", and
    /// where no tray is planned to stand in it.
    /// </summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="batches">The batches with their planned dates.</param>
    /// <returns>The dates, in the order of the houses.</returns>
    public static ImmutableArray<DateOnly?> Of(Scenario scenario, IEnumerable<BatchPlan> batches)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(batches);
        var first = FirstTrays(scenario, batches);
        return
        [
            .. scenario.Houses.Select(house =>
                house.Opening switch
                {
                    HouseOpening.FromDate => house.OpensOn,
                    HouseOpening.AllSeason => first.TryGetValue(house.Id, out var on) ? on.AddDays(-WarmingDays) : null,
                    _ => null,
                }
            ),
        ];
    }

    // Each tray where it is first wanted: in the first space of its group that has places on the day it is to go there.
    private static Dictionary<string, DateOnly> FirstTrays(Scenario scenario, IEnumerable<BatchPlan> batches)
    {
        var first = new Dictionary<string, DateOnly>(StringComparer.Ordinal);
        foreach (var (on, group) in batches.SelectMany(Stays).Where(stay => !stay.Group.IsEmpty))
        {
            if (
                scenario.Spaces[SpacePlaces.FirstOpen(scenario, group, on)].HouseId is { } house
                && !(first.TryGetValue(house, out var before) && before <= on)
            )
            {
                first[house] = on;
            }
        }

        return first;
    }

    private static IEnumerable<(DateOnly On, ImmutableArray<int> Group)> Stays(BatchPlan batch)
    {
        yield return (batch.SowOn, batch.Mats.IsEmpty ? batch.Benches : batch.Mats);
        if (batch.OffMatOn is { } off)
        {
            yield return (off, batch.Benches);
        }

        if (batch.PotUpOn is { } potUp)
        {
            yield return (potUp, batch.Benches);
        }

        if (batch.FinishOn is { } finish)
        {
            yield return (finish, batch.Finish);
        }

        yield return (batch.TableOn, batch.Tables);
    }
}
