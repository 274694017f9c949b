using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Kept;
using BenchSim.Study.Results;

namespace BenchSim.Study;

/// <summary>Plays a plan over many seasons and counts what happens.</summary>
public static class StudyRunner
{
    /// <summary>
    /// Plays every season with places as given and, where a limit bit, with places without limit, and counts both. The same plan, seasons
    /// and seed give the same result to the last bit, whatever the number of threads and whatever is kept.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">
    /// Told how many seasons are done, in rising order, from whichever thread finished them; null for nobody.
    /// </param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <param name="kept">Keeps climates, and seasons without limits, for plays with other places; null to keep none.</param>
    /// <returns>The answer, with the plan that made it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 season, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static StudyResult Play(
        SeasonPlan plan,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel,
        KeptSeasons? kept = null
    ) => Play(plan, options, Players(plan, options, kept), progress, cancel, kept);

    /// <summary>
    /// The same, but a play that is cancelled gives the answer of the seasons played so far: those of a play of so many seasons, to the
    /// last bit.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told how many seasons are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <param name="kept">Keeps climates, and seasons without limits, for plays with other places; null to keep none.</param>
    /// <returns>The answer; null where it was cancelled before any season was done.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 season, fewer than 0 threads, or a plan of no days.</exception>
    public static StudyResult? PlayUntilCancelled(
        SeasonPlan plan,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel,
        KeptSeasons? kept = null
    ) => PlayUntilCancelled(plan, options, Players(plan, options, kept), progress, cancel, kept);

    /// <summary>The same with another maker of players: one player a thread.</summary>
    internal static StudyResult Play(
        SeasonPlan plan,
        StudyOptions options,
        Func<PlaySeason> makePlayer,
        IProgress<int>? progress,
        CancellationToken cancel,
        KeptSeasons? kept = null
    ) => Seasons(plan, options, makePlayer, progress, kept, cancel).Run().ToResult(options.Seed);

    /// <summary>The same with another maker of players: one player a thread.</summary>
    internal static StudyResult? PlayUntilCancelled(
        SeasonPlan plan,
        StudyOptions options,
        Func<PlaySeason> makePlayer,
        IProgress<int>? progress,
        CancellationToken cancel,
        KeptSeasons? kept = null
    )
    {
        var tally = Seasons(plan, options, makePlayer, progress, kept, cancel).RunUntilCancelled();
        return tally.Seasons == 0 ? null : tally.ToResult(options.Seed);
    }

    private static Func<PlaySeason> Players(SeasonPlan plan, StudyOptions options, KeptSeasons? kept)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        SeasonPlayer first = new(plan, options.Seed, kept?.Climates);
        return () => PlanSeasons.By(first.Another());
    }

    private static PlanSeasons Seasons(
        SeasonPlan plan,
        StudyOptions options,
        Func<PlaySeason> makePlayer,
        IProgress<int>? progress,
        KeptSeasons? kept,
        CancellationToken cancel
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Days, 1, nameof(plan));
        return new PlanSeasons(new PlanShape(plan), options, makePlayer, progress, cancel, kept);
    }
}
