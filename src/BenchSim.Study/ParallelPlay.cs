using System.Runtime.ExceptionServices;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;

namespace BenchSim.Study;

/// <summary>Plays one season into a result.</summary>
internal delegate void PlaySeason(int season, PlaceLimits limits, SeasonResult result);

/// <summary>
/// Hands blocks of seasons to threads, each with its own player and its own tally, and adds the tallies up. As tallies are whole numbers,
/// it does not matter which thread played which season.
/// </summary>
internal sealed class ParallelPlay(
    PlanShape shape, StudyOptions options, Func<PlaySeason> makePlayer, IProgress<int>? progress, CancellationToken cancel)
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
    public SeasonTally Run()
    {
        int threads = options.Threads > 0 ? options.Threads : Environment.ProcessorCount;
        _block = Math.Clamp(options.Seasons / (threads * 8), 1, LargestBlock);
        threads = Math.Min(threads, (options.Seasons + _block - 1) / _block);
        SeasonTally[] tallies = new SeasonTally[threads];
        Thread[] others = new Thread[threads - 1];
        for (int i = 0; i < threads; i++)
            tallies[i] = new SeasonTally(shape);
        for (int i = 0; i < others.Length; i++)
        {
            SeasonTally tally = tallies[i + 1];
            others[i] = new Thread(() => Work(tally)) { IsBackground = true };
            others[i].Start();
        }

        Work(tallies[0]);
        foreach (Thread other in others)
            other.Join();
        _failure?.Throw();
        if (_done < options.Seasons)
            throw new OperationCanceledException(cancel);
        for (int i = 1; i < threads; i++)
            tallies[0].Merge(tallies[i]);
        return tallies[0];
    }

    private void Work(SeasonTally tally)
    {
        int season = -1;
        try
        {
            PlaySeason play = makePlayer();
            SeasonResult asGiven = new();
            SeasonResult unlimited = new();
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
                    play(season, PlaceLimits.AsGiven, asGiven);
                    play(season, PlaceLimits.None, unlimited);
                    tally.Add(asGiven, unlimited);
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
