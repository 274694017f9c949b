using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// The work of a season on the plan's own dates: normal weather and room for every tray (docs/model.md section 5). A played season may do the same
/// work later.
/// </summary>
public static class PlannedWork
{
    private const double MinutesAnHour = 60;

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
    /// The first work day on which a batch can be thinned: its trays are off the mat, or half the seedlings are up where they stood on none; null for a
    /// batch that is sown no thicker than it is kept, or in flats.
    /// </summary>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="batch">Batch.</param>
    public static DateOnly? ThinOn(SiteRules rules, BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(batch);
        if (batch.Flat is not null || batch.Order.SeedsPerCell <= batch.Crop.KeepPerCell)
        {
            return null;
        }

        return rules.WorkDayFrom(batch.OffMatOn ?? batch.EmergeOn);
    }

    private static IEnumerable<WorkTask> Of(SiteRules rules, BatchPlan batch)
    {
        var minutes = rules.Minutes;
        var inFlats = batch.Flat is not null;
        var sown = inFlats ? batch.Flats : batch.Trays;
        yield return Task(batch.SowOn, WorkKind.Sow, sown, inFlats, minutes.Sow);
        if (batch.OffMatOn is { } off)
        {
            yield return Task(off, WorkKind.OffMat, sown, inFlats, minutes.Move);
        }

        if (ThinOn(rules, batch) is { } thin)
        {
            yield return Task(thin, WorkKind.Thin, batch.Trays, false, null);
        }

        if (batch.PotUpOn is { } potUp)
        {
            yield return Task(potUp, WorkKind.PotUp, batch.Trays, false, minutes.PotUp);
        }

        yield return Task(batch.TableOn, WorkKind.ToTable, batch.Trays, false, minutes.Move);
        yield return Task(batch.SetOutOn, WorkKind.SetOut, batch.Trays, false, minutes.SetOut);

        WorkTask Task(DateOnly on, WorkKind kind, int pieces, bool areFlats, double? minutesEach) =>
            new(on, kind, batch, pieces, areFlats, pieces * minutesEach / MinutesAnHour);
    }
}
