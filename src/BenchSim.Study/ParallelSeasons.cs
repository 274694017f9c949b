using System.Runtime.ExceptionServices;

namespace BenchSim.Study;

/// <summary>
/// Hands seasons to threads, one after another, each thread with a worker of its own, and adds up what the workers counted. As counts are
/// whole numbers, it does not matter which thread played which season. Use one once.
/// </summary>
/// <typeparam name="TTally">What a worker counts in.</typeparam>
/// <param name="options">Seasons and threads.</param>
/// <param name="progress">Told how many seasons are done, in rising order, from whichever thread finished them; null for nobody.</param>
/// <param name="cancel">Stops the play: each thread ends the season it is in.</param>
public sealed class ParallelSeasons<TTally>(StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    where TTally : class
{
    // Enough for a bar to move, and few enough that telling costs nothing.
    private const int MostTold = 200;

    private readonly Lock _gate = new();
    private int _next = -1;
    private int _done;
    private int _failedAt = int.MaxValue;
    private ExceptionDispatchInfo? _failure;

    /// <summary>Plays all seasons; throws what the earliest failing season threw.</summary>
    /// <param name="makeTally">Makes an empty count.</param>
    /// <param name="makeWorker">Makes, on its thread, what plays one season into a count.</param>
    /// <param name="merge">Adds the second count to the first.</param>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public TTally Run(Func<TTally> makeTally, Func<Action<int, TTally>> makeWorker, Action<TTally, TTally> merge)
    {
        var tally = RunUntilCancelled(makeTally, makeWorker, merge);
        return _done < options.Seasons ? throw new OperationCanceledException(cancel) : tally;
    }

    /// <summary>The same, but a cancelled play gives what it has counted: that of the first seasons, however many were begun.</summary>
    /// <param name="makeTally">Makes an empty count.</param>
    /// <param name="makeWorker">Makes, on its thread, what plays one season into a count.</param>
    /// <param name="merge">Adds the second count to the first.</param>
    public TTally RunUntilCancelled(Func<TTally> makeTally, Func<Action<int, TTally>> makeWorker, Action<TTally, TTally> merge)
    {
        ArgumentNullException.ThrowIfNull(makeTally);
        ArgumentNullException.ThrowIfNull(makeWorker);
        ArgumentNullException.ThrowIfNull(merge);
        var threads = Math.Min(options.Threads > 0 ? options.Threads : Environment.ProcessorCount, options.Seasons);
        TTally[] tallies = [.. Enumerable.Range(0, threads).Select(_ => makeTally())];
        Thread[] others = [.. tallies.Skip(1).Select(tally => new Thread(() => Work(tally, makeWorker)) { IsBackground = true })];
        foreach (var other in others)
        {
            other.Start();
        }

        Work(tallies[0], makeWorker);
        foreach (var other in others)
        {
            other.Join();
        }

        _failure?.Throw();
        foreach (var tally in tallies.Skip(1))
        {
            merge(tallies[0], tally);
        }

        return tallies[0];
    }

    private void Work(TTally tally, Func<Action<int, TTally>> makeWorker)
    {
        var season = -1;
        try
        {
            var play = makeWorker();
            while (!cancel.IsCancellationRequested)
            {
                // Seasons before a failing one are still played, so that the same failure surfaces each time.
                season = Interlocked.Increment(ref _next);
                if (season >= options.Seasons || season >= Volatile.Read(ref _failedAt))
                {
                    return;
                }

                play(season, tally);
                Report();
            }
        }
        catch (Exception failure)
        {
            // Any failure of a thread has to reach the caller's thread; it is thrown again there, as it was.
            Fail(season, failure);
        }
    }

    private void Report()
    {
        lock (_gate)
        {
            _done++;
            if (_done == options.Seasons || _done % Math.Max(1, options.Seasons / MostTold) == 0)
            {
                progress?.Report(_done);
            }
        }
    }

    private void Fail(int season, Exception failure)
    {
        lock (_gate)
        {
            if (season >= _failedAt)
            {
                return;
            }

            _failure = ExceptionDispatchInfo.Capture(failure);
            Volatile.Write(ref _failedAt, season);
        }
    }
}
