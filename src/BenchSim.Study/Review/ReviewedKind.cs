using System.Collections.Immutable;
using BenchSim.Season.Planning;

namespace BenchSim.Study.Review;

/// <summary>All jobs of a kind on the batches that were begun, as far as they were due by the last row of the log, or have a row.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Jobs">Jobs that were to be done on them.</param>
/// <param name="WithRow">Jobs of which a row of the log says that they were done, in whole or in part.</param>
/// <param name="DaysLate">Days later than planned of those of which both are known, in rising order.</param>
public sealed record ReviewedKind(WorkKind Kind, int Jobs, int WithRow, ImmutableArray<int> DaysLate)
{
    /// <summary>The middle number of days late; null where none is known.</summary>
    public int? Middle => DaysLate.IsEmpty ? null : DaysLate[(DaysLate.Length - 1) / 2];

    /// <summary>The kinds, in the order of a tray's way.</summary>
    /// <param name="batches">Batches.</param>
    /// <param name="last">Day of the last row.</param>
    internal static ImmutableArray<ReviewedKind> Of(ImmutableArray<ReviewedBatch> batches, DateOnly last) =>
        [
            .. batches
                .Where(batch => batch.IsBegun)
                .SelectMany(batch => batch.Jobs)
                .Where(job => job.Due <= last || job.Done is not null)
                .GroupBy(job => job.Kind)
                .OrderBy(group => group.Key)
                .Select(group => new ReviewedKind(
                    group.Key,
                    group.Count(),
                    group.Count(job => job.Done is not null),
                    [.. group.Select(job => job.DaysLate).OfType<int>().Order()]
                )),
        ];
}
