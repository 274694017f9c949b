using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study;

/// <summary>Plays a plan over many seasons and counts what happens.</summary>
public static class StudyRunner
{
    /// <summary>
    /// Plays every season twice, with places as given and with places without limit, and counts both. The same plan, seasons and seed give
    /// the same result to the last bit, whatever the number of threads.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">
    /// Told how many seasons are done, in rising order, from whichever thread finished them; null for nobody.
    /// </param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <returns>The answer, with the plan that made it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 season, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static StudyResult Play(SeasonPlan plan, StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        SeasonPlayer first = new(plan, options.Seed);
        return Play(plan, options, () => first.Another().Play, progress, cancel);
    }

    /// <summary>The same with another maker of players: one player a thread.</summary>
    internal static StudyResult Play(
        SeasonPlan plan,
        StudyOptions options,
        Func<PlaySeason> makePlayer,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Days, 1, nameof(plan));
        var tally = new ParallelPlay(new PlanShape(plan), options, makePlayer, progress, cancel).Run();
        return tally.ToResult(options.Seed);
    }
}
