using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Coming;

/// <summary>Plays a season under way on, many times, and sums up what the next days bring.</summary>
public static class ComingRunner
{
    /// <summary>Plays.</summary>
    /// <param name="plan">The plan, with its past where the season is under way.</param>
    /// <param name="today">The day from which on is asked, one of the season.</param>
    /// <param name="options">Seasons, seed and threads. The answer does not depend on the threads.</param>
    /// <param name="progress">Told how many seasons are done; null for nobody.</param>
    /// <param name="cancel">Stops the play.</param>
    /// <exception cref="ArgumentOutOfRangeException">The day is not of the season.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static ComingDays Play(SeasonPlan plan, DateOnly today, StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var day = today.DayNumber - plan.FirstDay.DayNumber;
        ArgumentOutOfRangeException.ThrowIfNegative(day, nameof(today));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(day, plan.Days, nameof(today));
        var first = new SeasonPlayer(plan, options.Seed);
        var seasons = new ParallelSeasons<ComingSeason?[]>(options, progress, cancel).Run(
            () => new ComingSeason?[options.Seasons],
            () =>
            {
                var (player, result, witness) = (first.Another(), new SeasonResult(), new ComingWitness(plan, day));
                return (season, seen) =>
                {
                    player.Play(season, PlaceLimits.AsGiven, result, witness);
                    seen[season] = ComingSeason.Of(plan, day, witness.Take(), result);
                };
            },
            Merge
        );
        ImmutableArray<ComingSeason> all = [.. seasons.Select(season => season!)];
        return new ComingDays
        {
            Today = today,
            Seasons = all.Length,
            Jobs = ComingJobs.Of(plan, today, all),
            Free = Free(plan, today, all),
            Late = ComingDelays.Of(plan, all),
        };
    }

    // A season is played by one thread.
    private static void Merge(ComingSeason?[] seen, ComingSeason?[] other)
    {
        for (var season = 0; season < seen.Length; season++)
        {
            seen[season] ??= other[season];
        }
    }

    private static ImmutableArray<ImmutableArray<int>> Free(SeasonPlan plan, DateOnly today, ImmutableArray<ComingSeason> all) =>
        [
            .. plan.Scenario.Spaces.Select(
                (_, space) =>
                    Enumerable
                        .Range(0, all[0].Held[space].Length)
                        .Select(day =>
                            SpacePlaces.On(plan.Scenario, space, today.AddDays(day)) - Most(all.Select(each => each.Held[space][day]))
                        )
                        .ToImmutableArray()
            ),
        ];

    // What at least 9 seasons of 10 do not exceed.
    private static int Most(IEnumerable<int> held)
    {
        int[] sorted = [.. held.Order()];
        return sorted[(((sorted.Length * Likelihoods.SureOfTen) + 9) / 10) - 1];
    }
}
