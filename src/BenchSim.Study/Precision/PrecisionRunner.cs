using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Precision;

/// <summary>Plays a plan until its intervals are as narrow as asked.</summary>
public static class PrecisionRunner
{
    /// <summary>
    /// Plays on from look to look until every interval asked for is narrow enough, or the most seasons are played. Where it stops depends
    /// on the plan, the goal and the seed alone, not on the number of threads.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="goal">What is asked for.</param>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="threads">Threads to play on, 1 or more; 0 for one a core.</param>
    /// <param name="progress">Told how many seasons are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <exception cref="ArgumentOutOfRangeException">A goal out of its ranges, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the end.</exception>
    public static PrecisionResult Play(
        SeasonPlan plan,
        PrecisionGoal goal,
        ulong seed,
        int threads,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        SeasonPlayer first = new(plan, seed);
        return Play(plan, goal, seed, threads, () => PlanSeasons.By(first.Another()), progress, cancel);
    }

    /// <summary>The same with another maker of players: one player a thread.</summary>
    internal static PrecisionResult Play(
        SeasonPlan plan,
        PrecisionGoal goal,
        ulong seed,
        int threads,
        Func<PlaySeason> makePlayer,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ThrowIfOutside(goal);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Days, 1, nameof(plan));
        PlanShape shape = new(plan);
        SeasonTally sum = new(shape);
        var looks = ImmutableArray.CreateBuilder<PrecisionLook>();
        foreach (var seasons in goal.Looks())
        {
            var done = sum.Seasons;
            StudyOptions options = new()
            {
                Seasons = seasons - done,
                Seed = seed,
                Threads = threads,
            };
            IProgress<int>? further = progress is null ? null : new Further(progress, done);
            sum.Merge(new PlanSeasons(shape, options, makePlayer, further, cancel, first: done).Run());
            PrecisionLook look = new(sum.Fits(), sum.LatePlantDays());
            looks.Add(look);
            if (goal.IsReached(look.Fits) && goal.IsReached(look.LatePlantDays))
            {
                break;
            }
        }

        return new PrecisionResult(sum.ToResult(seed), goal, looks.DrainToImmutable());
    }

    private static void ThrowIfOutside(PrecisionGoal goal)
    {
        ArgumentNullException.ThrowIfNull(goal);
        var isChanceInside = goal.Chance is null or (> 0 and < 0.5);
        var isLateInside = goal.LatePlantDays is null or (> 0 and < double.PositiveInfinity);
        if (!isChanceInside || !isLateInside || goal is { Chance: null, LatePlantDays: null } || goal.Least < 2 || goal.Most < goal.Least)
        {
            throw new ArgumentOutOfRangeException(
                nameof(goal),
                goal,
                "Half widths above 0, that of a chance below 0.5, one at least, and 2 seasons or more."
            );
        }
    }

    private sealed class Further(IProgress<int> all, int done) : IProgress<int>
    {
        public void Report(int value) => all.Report(done + value);
    }
}
