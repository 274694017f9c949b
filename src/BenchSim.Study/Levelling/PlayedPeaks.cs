using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Compare;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Levelling;

/// <summary>Plays two plans without limits of place on the same luck and counts the peaks of each group.</summary>
internal static class PlayedPeaks
{
    /// <summary>The peaks by group.</summary>
    /// <param name="planned">The plan.</param>
    /// <param name="levelled">The levelled plan, played to the same last day.</param>
    /// <param name="groups">Groups of both.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told the seasons played of each.</param>
    /// <param name="cancel">Stops the play.</param>
    public static ImmutableArray<PlayedPeak> Count(
        SeasonPlan planned,
        SeasonPlan levelled,
        LevelGroups groups,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        SeasonPlayer before = new(planned, options.Seed);
        SeasonPlayer after = new(levelled, options.Seed);
        var sums = new ParallelSeasons<PairedSums[]>(options, progress, cancel).Run(
            () => [.. groups.All.Select(_ => new PairedSums())],
            () => Worker(new WantedPlaces(before.Another()), new WantedPlaces(after.Another()), groups),
            Merge
        );
        var each = Confidence.OfEach(sums.Length);
        var factor = options.Seasons < 2 ? double.NaN : StudentT.Quantile((1 + each) / 2, options.Seasons - 1);
        return
        [
            .. sums.Select(sum => new PlayedPeak(
                sum.LeftMean,
                sum.RightMean,
                sum.MeanDifference,
                factor * Math.Sqrt(sum.DifferenceVariance / options.Seasons),
                sum.Differing
            )),
        ];
    }

    private static Action<int, PairedSums[]> Worker(WantedPlaces before, WantedPlaces after, LevelGroups groups) =>
        (season, sums) =>
        {
            before.Play(season);
            after.Play(season);
            var left = Peaks(before, groups);
            var right = Peaks(after, groups);
            for (var group = 0; group < sums.Length; group++)
            {
                sums[group].Add(left[group], right[group]);
            }
        };

    private static long[] Peaks(WantedPlaces wanted, LevelGroups groups)
    {
        long[][] loads = [.. groups.All.Select(group => new long[group.Places.Length])];
        for (var batch = 0; batch < wanted.ByBatch.Length; batch++)
        {
            groups.Add(batch, wanted.ByBatch[batch], loads);
        }

        return [.. loads.Select(load => load.Max())];
    }

    private static void Merge(PairedSums[] sum, PairedSums[] other)
    {
        for (var at = 0; at < sum.Length; at++)
        {
            sum[at].Merge(other[at]);
        }
    }
}
