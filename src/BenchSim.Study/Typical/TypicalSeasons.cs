using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Typical;

/// <summary>
/// Two seasons of those played that stand for the rest in one respect, numbered from 0: the middling one, which half of them do not exceed,
/// and a bad one, which nine of ten do not exceed.
/// </summary>
/// <param name="Middling">The middling one.</param>
/// <param name="Bad">The bad one.</param>
public sealed record TypicalSeasons(int Middling, int Bad)
{
    /// <summary>By how late a batch is; of seasons in which it is as late, by how long it waits for places.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="batch">Position of the batch in it.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="climates">Keeps climates; null to keep none.</param>
    /// <param name="cancel">Stops the play.</param>
    public static TypicalSeasons OfBatch(
        SeasonPlan plan,
        int batch,
        StudyOptions options,
        ClimateStore? climates,
        CancellationToken cancel
    ) => By(plan, season => (season.Batches[batch].LatePlantDays, season.Batches[batch].BlockedTrayDays.Sum()), options, climates, cancel);

    /// <summary>By how many place-days are refused in a space on some days.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="space">Position of the space in the scenario.</param>
    /// <param name="first">First day.</param>
    /// <param name="last">Last day.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="climates">Keeps climates; null to keep none.</param>
    /// <param name="cancel">Stops the play.</param>
    public static TypicalSeasons OfDays(
        SeasonPlan plan,
        int space,
        int first,
        int last,
        StudyOptions options,
        ClimateStore? climates,
        CancellationToken cancel
    ) =>
        By(
            plan,
            season => (season.Waiting[space][first..(last + 1)].Sum(places => (long)places), season.Held[space][first..(last + 1)].Max()),
            options,
            climates,
            cancel
        );

    private static TypicalSeasons By(
        SeasonPlan plan,
        Func<SeasonResult, (long First, long Second)> bad,
        StudyOptions options,
        ClimateStore? climates,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var first = new SeasonPlayer(plan, options.Seed, climates);
        var seasons = new ParallelSeasons<(long First, long Second)[]>(options, null, cancel).Run(
            () => new (long, long)[options.Seasons],
            () =>
            {
                var (player, result) = (first.Another(), new SeasonResult());
                return (season, counted) =>
                {
                    player.Play(season, PlaceLimits.AsGiven, result);
                    counted[season] = bad(result);
                };
            },
            Merge
        );
        int[] order = [.. Enumerable.Range(0, options.Seasons).OrderBy(season => seasons[season]).ThenBy(season => season)];
        return new TypicalSeasons(order[At(0.5)], order[At(0.9)]);

        // The smallest that so large a share of the seasons do not exceed.
        int At(double share) => (int)Math.Ceiling(share * options.Seasons) - 1;
    }

    // A season is played by one thread; in the counts of the others it is 0.
    private static void Merge((long First, long Second)[] sum, (long First, long Second)[] other)
    {
        for (var season = 0; season < sum.Length; season++)
        {
            sum[season] = (sum[season].First + other[season].First, sum[season].Second + other[season].Second);
        }
    }
}
