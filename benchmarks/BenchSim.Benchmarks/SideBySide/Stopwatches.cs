using System.Diagnostics;

namespace BenchSim.Benchmarks.SideBySide;

/// <summary>The shortest time of several contestants, who take turns so that a busy moment of the machine hits all of them.</summary>
internal static class Stopwatches
{
    private const int Rounds = 40;
    private const double WarmSeconds = 1;

    /// <summary>Seconds of the fastest call of each.</summary>
    public static double[] Best(params Action[] contestants)
    {
        foreach (var contestant in contestants)
        {
            var start = Stopwatch.GetTimestamp();
            while (Stopwatch.GetElapsedTime(start).TotalSeconds < WarmSeconds)
            {
                contestant();
            }
        }

        var best = Array.ConvertAll(contestants, _ => double.MaxValue);
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < contestants.Length; i++)
            {
                var start = Stopwatch.GetTimestamp();
                contestants[i]();
                best[i] = Math.Min(best[i], Stopwatch.GetElapsedTime(start).TotalSeconds);
            }
        }

        return best;
    }

    /// <summary>Bytes that a warm call allocates.</summary>
    public static long Bytes(Action call)
    {
        const int Calls = 10;
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < Calls; i++)
        {
            call();
        }

        return (GC.GetAllocatedBytesForCurrentThread() - before) / Calls;
    }
}
