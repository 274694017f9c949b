using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;

namespace BenchSim.Study.Review;

/// <summary>A batch, as it was agreed and as the log has it.</summary>
public sealed record ReviewedBatch
{
    /// <summary>The batch as it was agreed; null for one that came to the plan later.</summary>
    public required BatchPlan? Agreed { get; init; }

    /// <summary>The batch as the plan has it; null for one that is no longer in it, of which the log can say nothing.</summary>
    public required BatchPlan? Now { get; init; }

    /// <summary>What the log says became of it; null likewise.</summary>
    public required BatchLedger? Book { get; init; }

    /// <summary>Its jobs, in the order of a tray's way.</summary>
    public required ImmutableArray<ReviewedJob> Jobs { get; init; }

    /// <summary>What its grower asked for, as it was agreed.</summary>
    public BatchOrder Order => (Agreed ?? Now)!.Order;

    /// <summary>Whether anything of it was sown, or counted, by the log.</summary>
    public bool IsBegun => Book?.IsBegun == true;

    /// <summary>The day by which at least half of the trays that went out had gone; null where none went.</summary>
    public DateOnly? OutOn => Jobs[^1].Done;

    /// <summary>The job of a kind; null where it has none.</summary>
    /// <param name="kind">Kind.</param>
    public ReviewedJob? Job(WorkKind kind) => Jobs.FirstOrDefault(job => job.Kind == kind);

    /// <summary>All batches: those of the plan in its order, then those that are no longer in it.</summary>
    /// <param name="agreed">The plan that was agreed.</param>
    /// <param name="now">The plan as it is, with its log.</param>
    internal static ImmutableArray<ReviewedBatch> Of(SeasonPlan agreed, SeasonPlan now)
    {
        var before = agreed.Batches.ToDictionary(batch => batch.Order.Id, StringComparer.Ordinal);
        var ledger = BenchLedger.Of(now.Scenario, now.Scenario.Log);
        var rows = now.Scenario.Log.ToLookup(row => row.BatchId ?? "", StringComparer.Ordinal);
        var kept = now.Batches.Select(batch => batch.Order.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. now.Batches.Select((batch, at) => Make(before.GetValueOrDefault(batch.Order.Id), batch, ledger.Batches[at])),
            .. agreed.Batches.Where(batch => !kept.Contains(batch.Order.Id)).Select(batch => Make(batch, null, null)),
        ];

        ReviewedBatch Make(BatchPlan? was, BatchPlan? planned, BatchLedger? book) =>
            new()
            {
                Agreed = was,
                Now = planned,
                Book = book,
                Jobs = ReviewedJob.Of(now.Scenario, was, planned, [.. rows[(planned ?? was)!.Order.Id]]),
            };
    }
}
