using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// The work of a season on the plan's own dates: normal weather and room for every tray (docs/model.md section 5). A played season may do
/// the same work later.
/// </summary>
public static class PlannedWork
{
    private const double MinutesAnHour = 60;
    private const double SecondsAMinute = 60;

    /// <summary>All jobs, in order of date, job, planned set-out date, planned sow date and batch id.</summary>
    /// <param name="plan">Plan.</param>
    public static ImmutableArray<WorkTask> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. plan
                .Batches.SelectMany(batch => Of(plan.Scenario.Rules, batch))
                .OrderBy(task => task.On)
                .ThenBy(task => task.Kind)
                .ThenBy(task => task.Batch.SetOutOn)
                .ThenBy(task => task.Batch.SowOn)
                .ThenBy(task => task.Batch.Order.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>
    /// The first work day on which a batch can be thinned: its trays are off the mat, or half the seedlings are up where they stood on
    /// none; null for a batch that is sown no thicker than it is kept, or in flats.
    /// </summary>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="batch">Batch.</param>
    public static DateOnly? ThinOn(SiteRules rules, BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(batch);
        return batch.IsThinned ? rules.WorkDayFrom(batch.OffMatOn ?? batch.EmergeOn) : null;
    }

    /// <summary>Hours of watering from a day to another, both counted; 0 where the site gives no minutes for it.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="from">First day.</param>
    /// <param name="to">Last day.</param>
    public static double WateringHours(SeasonPlan plan, DateOnly from, DateOnly to)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return PlannedRoom.PlaceDays(plan, from, to) * plan.Scenario.Rules.Minutes.WaterAPlace / MinutesAnHour;
    }

    private static IEnumerable<WorkTask> Of(SiteRules rules, BatchPlan batch)
    {
        var (minutes, seconds) = (rules.Minutes, rules.Seconds);
        var inFlats = batch.Flat is not null;
        var sown = inFlats ? batch.Flats : batch.Trays;
        var seeds = inFlats ? batch.Order.SeedsPerFlat : batch.Order.SeedsPerCell;
        var sowing = seconds.Sowing(batch.Flat ?? batch.Tray, seeds) / SecondsAMinute;
        yield return Task(batch.SowOn, WorkKind.Sow, sown, inFlats, minutes.Sow + sowing);
        if (batch.OffMatOn is { } off)
        {
            yield return Task(off, WorkKind.OffMat, sown, inFlats, minutes.Move);
        }

        if (ThinOn(rules, batch) is { } thin)
        {
            var each = seconds.Thinning(batch.Tray, batch.Order.SeedsPerCell, batch.Crop.KeepPerCell) / SecondsAMinute;
            yield return Task(thin, WorkKind.Thin, batch.Trays, false, each > 0 ? each : null);
        }

        if (batch.PotUpOn is { } potUp)
        {
            yield return Task(potUp, WorkKind.PotUp, batch.Trays, false, minutes.PotUp + (seconds.PottingUp(batch.Tray) / SecondsAMinute));
        }

        if (batch.FinishOn is { } finish)
        {
            yield return Task(finish, WorkKind.Finish, batch.Trays, false, minutes.Move);
        }

        yield return Task(batch.TableOn, WorkKind.ToTable, batch.Trays, false, minutes.Move);
        yield return Task(batch.SetOutOn, WorkKind.SetOut, batch.Trays, false, minutes.SetOut);

        WorkTask Task(DateOnly on, WorkKind kind, int pieces, bool areFlats, double? minutesEach) =>
            new(on, kind, batch, pieces, areFlats, pieces * minutesEach / MinutesAnHour);
    }
}
