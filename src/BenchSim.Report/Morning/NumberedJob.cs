using System.Collections.Immutable;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Study.Coming;

namespace BenchSim.Report.Morning;

/// <summary>A job with the number by which it is answered.</summary>
/// <param name="Number">Number, from 1.</param>
/// <param name="Coming">The job as the seasons have it; null where none of them does it on these days.</param>
/// <param name="Due">What is due of it without a row; empty for none.</param>
public sealed record NumberedJob(int Number, ComingJob? Coming, ImmutableArray<DueJob> Due)
{
    /// <summary>Job.</summary>
    public WorkKind Kind => Coming?.Kind ?? Due[0].Kind;

    /// <summary>Position of the batch.</summary>
    public int Batch => Coming?.Batch ?? Due[0].Batch;

    /// <summary>Whether the pieces are flats.</summary>
    public bool AreFlats => Coming?.AreFlats ?? Due[0].AreFlats;

    /// <summary>Numbers the jobs that come, then what is due and is not among them.</summary>
    /// <param name="coming">Jobs that come, in the order in which they are to be done.</param>
    /// <param name="due">What is due and has no row, in order.</param>
    public static ImmutableArray<NumberedJob> Of(ImmutableArray<ComingJob> coming, ImmutableArray<DueJob> due)
    {
        var listed = coming.Select(job => KeyOf(job.Kind, job.Batch)).ToHashSet();
        var jobs = coming
            .Select(job => (Coming: (ComingJob?)job, Due: due.Where(each => KeyOf(each.Kind, each.Batch) == KeyOf(job.Kind, job.Batch))))
            .Concat(
                due.Where(each => !listed.Contains(KeyOf(each.Kind, each.Batch)))
                    .GroupBy(each => KeyOf(each.Kind, each.Batch))
                    .Select(group => (Coming: (ComingJob?)null, Due: (IEnumerable<DueJob>)group))
            );
        return [.. jobs.Select((job, index) => new NumberedJob(index + 1, job.Coming, [.. job.Due]))];
    }

    // A flat to be potted up is due as a flat, and comes as the trays that it fills.
    private static (WorkKind, int) KeyOf(WorkKind kind, int batch) => (kind, batch);
}
