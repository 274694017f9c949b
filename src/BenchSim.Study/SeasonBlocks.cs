using System.Runtime.ExceptionServices;

namespace BenchSim.Study;

/// <summary>
/// Hands blocks of seasons to threads, each with a worker of its own, and adds up what the workers counted. As counts are whole numbers,
/// it does not matter which thread played which season.
/// </summary>
/// <typeparam name="TTally">What a worker counts in.</typeparam>
internal sealed class SeasonBlocks<TTally>(StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    where TTally : class
{
    // Small enough that the threads end together and a bar moves, large enough that handing out costs nothing.
    private const int LargestBlock = 16;

    private readonly Lock _gate = new();
    private int _block;
    private long _next;
    private int _done;
    private int _failedAt = int.MaxValue;
    private ExceptionDispatchInfo? _failure;

    /// <summary>Plays all seasons; throws what the earliest failing season threw.</summary>
    /// <param name="makeTally">Makes an empty count.</param>
    /// <param name="makeWorker">Makes, on its thread, what plays one season into a count.</param>
    /// <param name="merge">Adds the second count to the first.</param>
    public TTally Run(Func<TTally> makeTally, Func<Action<int, TTally>> makeWorker, Action<TTally, TTally> merge)
    {
        int threads = options.Threads > 0 ? options.Threads : Environment.ProcessorCount;
        _block = Math.Clamp(options.Seasons / (threads * 8), 1, LargestBlock);
        threads = Math.Min(threads, (options.Seasons + _block - 1) / _block);
        TTally[] tallies = [.. Enumerable.Range(0, threads).Select(_ => makeTally())];
        Thread[] others = new Thread[threads - 1];
        for (int i = 0; i < others.Length; i++)
        {
            TTally tally = tallies[i + 1];
            others[i] = new Thread(() => Work(tally, makeWorker)) { IsBackground = true };
            others[i].Start();
        }

        Work(tallies[0], makeWorker);
        foreach (Thread other in others)
            other.Join();
        _failure?.Throw();
        if (_done < options.Seasons)
            throw new OperationCanceledException(cancel);
        for (int i = 1; i < threads; i++)
            merge(tallies[0], tallies[i]);
        return tallies[0];
    }

    private void Work(TTally tally, Func<Action<int, TTally>> makeWorker)
    {
        int season = -1;
        try
        {
            Action<int, TTally> play = makeWorker();
            while (true)
            {
                long from = Interlocked.Add(ref _next, _block) - _block;
                int to = (int)Math.Min(from + _block, options.Seasons);
                if (from >= to)
                    return;
                for (season = (int)from; season < to; season++)
                {
                    // Seasons before a failing one are still played, so that the same failure surfaces each time.
                    if (cancel.IsCancellationRequested || season >= Volatile.Read(ref _failedAt))
                        return;
                    play(season, tally);
                }

                Report(to - (int)from);
            }
        }
        catch (Exception failure)
        {
            // Any failure of a thread has to reach the caller's thread; it is thrown again there, as it was.
            Fail(season, failure);
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
                return;
            _failure = ExceptionDispatchInfo.Capture(failure);
            Volatile.Write(ref _failedAt, season);
        }
    }
}
