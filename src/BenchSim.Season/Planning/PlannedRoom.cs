using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>A day on which the plan itself wants more places of a kind than there are.</summary>
/// <param name="On">Day.</param>
/// <param name="Kind">Mats, benches or tables, all of the site together.</param>
/// <param name="Wanted">Places wanted on the planned dates.</param>
/// <param name="Places">Places there are.</param>
public sealed record PlannedShortage(DateOnly On, SpaceKind Kind, int Wanted, int Places);

/// <summary>Whether the planned dates fit the places, day by day. They know nothing of luck: what the play says of them goes further.</summary>
public static class PlannedRoom
{
    /// <summary>The days on which more is planned than fits, in order of day and kind.</summary>
    /// <param name="plan">Plan.</param>
    public static ImmutableArray<PlannedShortage> Shortages(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var wanted = new SortedDictionary<(DateOnly On, SpaceKind Kind), int>();
        foreach (var (kind, from, until, places) in plan.Batches.SelectMany(Stays))
        {
            for (var day = from; day < until; day = day.AddDays(1))
            {
                wanted[(day, kind)] = wanted.GetValueOrDefault((day, kind)) + places;
            }
        }

        return
        [
            .. wanted
                .Select(each => new PlannedShortage(
                    each.Key.On,
                    each.Key.Kind,
                    each.Value,
                    PlacesOf(plan.Scenario, each.Key.Kind, each.Key.On)
                ))
                .Where(each => each.Wanted > each.Places),
        ];
    }

    // From the mat, where there is one, to the bench, in trays or in flats that are potted up there, and to the table until set out. A tray that leaves makes room that day.
    private static IEnumerable<(SpaceKind Kind, DateOnly From, DateOnly Until, int Places)> Stays(BatchPlan batch)
    {
        var trays = batch.Trays * batch.Tray.PlacesEach;
        var sown = batch.Flat is { } flat ? batch.Flats * flat.PlacesEach : trays;
        var offMat = batch.OffMatOn ?? batch.SowOn;
        yield return (SpaceKind.Mat, batch.SowOn, offMat, sown);
        if (batch.PotUpOn is { } potUp)
        {
            yield return (SpaceKind.Bench, offMat, potUp, sown);
            yield return (SpaceKind.Bench, potUp, batch.TableOn, trays);
        }
        else
        {
            yield return (SpaceKind.Bench, offMat, batch.TableOn, trays);
        }

        yield return (SpaceKind.Table, batch.TableOn, batch.SetOutOn, trays);
    }

    private static int PlacesOf(Scenario scenario, SpaceKind kind, DateOnly on) =>
        Enumerable
            .Range(0, scenario.Spaces.Length)
            .Where(space => scenario.Spaces[space].Kind == kind)
            .Sum(space => SpacePlaces.On(scenario, space, on));
}
