using System.Runtime.ExceptionServices;

namespace BenchSim.Study;

/// <summary>
/// Hands blocks of seasons to threads, each with a worker of its own, and adds up what the workers counted. As counts are whole numbers, it
/// does not matter which thread played which season.
/// </summary>
/// <typeparam name="TTally">What a worker counts in.</typeparam>
internal sealed class SeasonBlocks<TTally>(StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    where TTally : class
{
    // Small enough that a bar moves, large enough that handing out costs nothing.
    private const int LargestBlock = 16;

    // Blocks grow smaller towards the end, to a part of what is left for each thread, so that the threads end together.
    private const int PartsEach = 8;

    private readonly Lock _gate = new();
    private int _threads;
    private int _next;
    private int _done;
    private int _failedAt = int.MaxValue;
    private ExceptionDispatchInfo? _failure;

    /// <summary>Plays all seasons; throws what the earliest failing season threw.</summary>
    /// <param name="makeTally">Makes an empty count.</param>
    /// <param name="makeWorker">Makes, on its thread, what plays one season into a count.</param>
    /// <param name="merge">Adds the second count to the first.</param>
    public TTally Run(Func<TTally> makeTally, Func<Action<int, TTally>> makeWorker, Action<TTally, TTally> merge)
    {
        _threads = Math.Min(options.Threads > 0 ? options.Threads : Environment.ProcessorCount, options.Seasons);
        TTally[] tallies = [.. Enumerable.Range(0, _threads).Select(_ => makeTally())];
        var others = new Thread[_threads - 1];
        for (var i = 0; i < others.Length; i++)
        {
            var tally = tallies[i + 1];
            others[i] = new Thread(() => Work(tally, makeWorker)) { IsBackground = true };
            others[i].Start();
        }

        Work(tallies[0], makeWorker);
        foreach (var other in others)
        {
            other.Join();
        }

        _failure?.Throw();
        if (_done < options.Seasons)
        {
            throw new OperationCanceledException(cancel);
        }

        for (var i = 1; i < _threads; i++)
        {
            merge(tallies[0], tallies[i]);
        }

        return tallies[0];
    }

    private void Work(TTally tally, Func<Action<int, TTally>> makeWorker)
    {
        var season = -1;
        try
        {
            var play = makeWorker();
            while (true)
            {
                (var from, var to) = NextBlock();
                if (from == to)
                {
                    return;
                }

                for (season = from; season < to; season++)
                {
                    // Seasons before a failing one are still played, so that the same failure surfaces each time.
                    if (cancel.IsCancellationRequested || season >= Volatile.Read(ref _failedAt))
                    {
                        return;
                    }

                    play(season, tally);
                }

                Report(to - from);
            }
        }
        catch (Exception failure)
        {
            // Any failure of a thread has to reach the caller's thread; it is thrown again there, as it was.
            Fail(season, failure);
        }
    }

    private (int From, int To) NextBlock()
    {
        lock (_gate)
        {
            var from = _next;
            var left = options.Seasons - from;
            _next += Math.Min(Math.Clamp(left / (_threads * PartsEach), 1, LargestBlock), left);
            return (from, _next);
        }
    }

    private void Report(int seasons)
    {
        lock (_gate)
        {
            _done += seasons;
            progress?.Report(_done);
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
