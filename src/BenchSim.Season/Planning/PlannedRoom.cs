using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>A day on which the plan itself wants more places of a kind than there are.</summary>
/// <param name="On">Day.</param>
/// <param name="Kind">Mats, benches or tables, all of the site together.</param>
/// <param name="Wanted">Places wanted on the planned dates.</param>
/// <param name="Places">Places there are.</param>
public sealed record PlannedShortage(DateOnly On, SpaceKind Kind, int Wanted, int Places);

/// <summary>A batch on a kind of space, on its planned dates.</summary>
/// <param name="Kind">Mats, benches or tables.</param>
/// <param name="From">First day.</param>
/// <param name="Until">Day on which it leaves, and makes room.</param>
/// <param name="Places">Places it holds.</param>
public readonly record struct PlannedStay(SpaceKind Kind, DateOnly From, DateOnly Until, int Places);

/// <summary>
/// Whether the planned dates fit the places, day by day. They know nothing of luck: what the play says of them goes further.
/// </summary>
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

    /// <summary>The batches that are planned to stand on a kind of space on a day, most places first.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="on">Day.</param>
    /// <param name="kind">Mats, benches or tables.</param>
    public static ImmutableArray<BatchPlan> Standing(SeasonPlan plan, DateOnly on, SpaceKind kind)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. plan
                .Batches.Select(batch => (Batch: batch, Places: Stays(batch).Where(Holds).Sum(stay => stay.Places)))
                .Where(each => each.Places > 0)
                .OrderByDescending(each => each.Places)
                .Select(each => each.Batch),
        ];

        bool Holds(PlannedStay stay) => stay.Kind == kind && stay.From <= on && on < stay.Until;
    }

    /// <summary>Places held on the planned dates, added up over the days from one to another, both counted.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="from">First day.</param>
    /// <param name="to">Last day.</param>
    public static long PlaceDays(SeasonPlan plan, DateOnly from, DateOnly to)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan
            .Batches.SelectMany(Stays)
            .Sum(stay =>
                (long)stay.Places
                * Math.Max(0, Math.Min(stay.Until.DayNumber, to.DayNumber + 1) - Math.Max(stay.From.DayNumber, from.DayNumber))
            );
    }

    /// <summary>
    /// From the mat, where there is one, to the bench, in trays or in flats that are potted up there, and to the table until set out.
    /// </summary>
    /// <param name="batch">Batch.</param>
    public static IEnumerable<PlannedStay> Stays(BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return StaysOf(batch);
    }

    private static IEnumerable<PlannedStay> StaysOf(BatchPlan batch)
    {
        var trays = batch.Trays * batch.Tray.PlacesEach;
        var sown = batch.Flat is { } flat ? batch.Flats * flat.PlacesEach : trays;
        var offMat = batch.OffMatOn ?? batch.SowOn;
        yield return new PlannedStay(SpaceKind.Mat, batch.SowOn, offMat, sown);
        if (batch.PotUpOn is { } potUp)
        {
            yield return new PlannedStay(SpaceKind.Bench, offMat, potUp, sown);
            yield return new PlannedStay(SpaceKind.Bench, potUp, batch.TableOn, trays);
        }
        else
        {
            yield return new PlannedStay(SpaceKind.Bench, offMat, batch.TableOn, trays);
        }

        yield return new PlannedStay(SpaceKind.Table, batch.TableOn, batch.SetOutOn, trays);
    }

    private static int PlacesOf(Scenario scenario, SpaceKind kind, DateOnly on) =>
        Enumerable
            .Range(0, scenario.Spaces.Length)
            .Where(space => scenario.Spaces[space].Kind == kind)
            .Sum(space => SpacePlaces.On(scenario, space, on));
}
