using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Logbook;

/// <summary>The row of the log that says that a due job was done as planned.</summary>
public static class PlannedRow
{
    /// <summary>
    /// The row: all pieces of the job, to the first space of their group that has room for them; where none has, to the one with most.
    /// Flats that are potted up fill the trays that are planned of them.
    /// </summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    /// <param name="job">The job.</param>
    /// <param name="on">The day on which it was done.</param>
    public static LogEntry Of(SeasonPlan plan, BenchLedger ledger, DueJob job, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        ArgumentNullException.ThrowIfNull(job);
        var batch = plan.Batches[job.Batch];
        var trays = job.Kind == WorkKind.PotUp ? TraysOf(batch, ledger.Batches[job.Batch], job.Count) : job.Count;
        var places = job is { AreFlats: true, Kind: not WorkKind.PotUp }
            ? job.Count * (batch.Flat?.PlacesEach ?? 1)
            : trays * batch.Tray.PlacesEach;
        var group = Group(batch, job.Kind);
        return new LogEntry
        {
            Date = on,
            BatchId = batch.Order.Id,
            What = What(job.Kind),
            Trays = job.AreFlats && job.Kind != WorkKind.PotUp ? null : trays,
            Flats = job.AreFlats ? job.Count : null,
            From = job.Kind is WorkKind.Sow || job.Space is not { } from ? null : plan.Scenario.Spaces[from].Id,
            Space = group.IsEmpty ? null : plan.Scenario.Spaces[To(plan, ledger, group, places, on)].Id,
        };
    }

    private static LogKind What(WorkKind kind) =>
        kind switch
        {
            WorkKind.Sow => LogKind.Sown,
            WorkKind.PotUp => LogKind.PottedUp,
            WorkKind.SetOut => LogKind.SetOut,
            _ => LogKind.Moved,
        };

    private static ImmutableArray<int> Group(BatchPlan batch, WorkKind kind) =>
        kind switch
        {
            WorkKind.Sow when !batch.Mats.IsEmpty => batch.Mats,
            WorkKind.Finish => batch.Finish,
            WorkKind.ToTable => batch.Tables,
            WorkKind.SetOut => [],
            _ => batch.Benches,
        };

    // The last flats fill what is left of the planned trays.
    private static int TraysOf(BatchPlan batch, BatchLedger ledger, int flats)
    {
        var left = Math.Max(0, batch.Trays - ledger.Filled);
        var of = Math.Max(1, batch.Flats - ledger.FlatsUsed);
        return flats >= of ? left : (int)Math.Ceiling((double)left * flats / of);
    }

    private static int To(SeasonPlan plan, BenchLedger ledger, ImmutableArray<int> group, int places, DateOnly on)
    {
        var spaces = SpaceToday.Of(plan, ledger, on);
        return group.FirstOrDefault(space => spaces[space].Free >= places, group.MaxBy(space => spaces[space].Free));
    }
}
