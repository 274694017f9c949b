using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Logbook;

/// <summary>A job that is due by the plan and has no row that says it was done.</summary>
/// <param name="Kind">Job.</param>
/// <param name="Batch">Position of the batch.</param>
/// <param name="Count">Trays, or flats.</param>
/// <param name="AreFlats">Whether they are flats.</param>
/// <param name="Space">Position of the space in which they stand; null for a sowing.</param>
/// <param name="On">The day on which it was due.</param>
public sealed record DueJob(WorkKind Kind, int Batch, int Count, bool AreFlats, int? Space, DateOnly On);

/// <summary>
/// What is due by the planned dates, and has no row. Trays that were sown or potted up later than planned are due so much later; each is
/// asked for its next job alone.
/// </summary>
public static class DueWork
{
    /// <summary>The jobs that are due on a day, in order of the day on which they were due, of job and of batch.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    /// <param name="today">The day.</param>
    public static ImmutableArray<DueJob> Of(SeasonPlan plan, BenchLedger ledger, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        return
        [
            .. plan
                .Batches.SelectMany((batch, index) => Of(plan.Scenario, batch, ledger.Batches[index], index))
                .Where(job => job.On <= today)
                .GroupBy(job => (job.Kind, job.Batch, job.AreFlats, job.Space, job.On))
                .Select(group => group.First() with { Count = group.Sum(job => job.Count) })
                .OrderBy(job => job.On)
                .ThenBy(job => job.Kind)
                .ThenBy(job => job.Batch),
        ];
    }

    /// <summary>Trays, or flats where it is to be potted up, that are planned to be sown.</summary>
    public static int Planned(BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return batch.Flat is null ? batch.Trays : batch.Flats;
    }

    /// <summary>
    /// Trays or flats of it that are still to be sown: none of a batch that the log begins with a count, and none where its trays are
    /// filled already.
    /// </summary>
    public static int Unsown(BatchPlan batch, BatchLedger ledger)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(ledger);
        return ledger.BegunOn is not null || (batch.Flat is not null && ledger.Filled >= batch.Trays)
            ? 0
            : Math.Max(0, Planned(batch) - ledger.Sown);
    }

    private static IEnumerable<DueJob> Of(Scenario scenario, BatchPlan batch, BatchLedger ledger, int index)
    {
        var inFlats = batch.Flat is not null;
        if (Unsown(batch, ledger) is > 0 and var unsown)
        {
            yield return new(WorkKind.Sow, index, unsown, inFlats, null, batch.SowOn);
        }

        foreach (var pile in ledger.Piles)
        {
            var (kind, on) = Next(scenario.Spaces[pile.Space], batch, pile);
            yield return new(kind, index, pile.Count, pile.AreFlats, pile.Space, on);
        }
    }

    private static (WorkKind Kind, DateOnly On) Next(Space space, BatchPlan batch, Pile pile)
    {
        var later = Math.Max(Days(pile.SownOn, batch.SowOn), Days(pile.PottedOn, batch.PotUpOn));
        if (space.Kind == SpaceKind.Mat && pile.PottedOn is null)
        {
            return (WorkKind.OffMat, (batch.OffMatOn ?? batch.EmergeOn).AddDays(later));
        }

        if (pile.AreFlats)
        {
            return (WorkKind.PotUp, (batch.PotUpOn ?? batch.EmergeOn).AddDays(later));
        }

        var ready = batch.ReadyOn.AddDays(later);
        if (space.Kind == SpaceKind.Table)
        {
            return (WorkKind.SetOut, ready > batch.SetOutOn ? ready : batch.SetOutOn);
        }

        var table = batch.TableOn.AddDays(later);
        return batch.FinishOn?.AddDays(later) is { } finish && finish < table && !batch.Finish.Contains(pile.Space)
            ? (WorkKind.Finish, finish)
            : (WorkKind.ToTable, table);
    }

    private static int Days(DateOnly? done, DateOnly? planned) =>
        done is { } one && planned is { } other ? Math.Max(0, one.DayNumber - other.DayNumber) : 0;
}
