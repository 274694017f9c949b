namespace BenchSim.Season.Evidence;

/// <summary>The chance of counts.</summary>
internal static class Counts
{
    /// <summary>
    /// Logarithm of the chance of a multinomial count, but for the number of its orders: some by the first look, more by each later one,
    /// and the rest never. A few are counted wrong.
    /// </summary>
    /// <param name="counts">How many by the first look, how many more by each later one, and the rest.</param>
    /// <param name="by">Chance to be there by each look, none less than the one before.</param>
    public static double Log(ReadOnlySpan<int> counts, ReadOnlySpan<double> by)
    {
        var (log, before) = (0.0, 0.0);
        for (var part = 0; part < counts.Length; part++)
        {
            var until = part < by.Length ? Math.Max(before, by[part]) : 1;
            log += counts[part] * Math.Log(((1 - CountLook.Wrong) * (until - before)) + (CountLook.Wrong / counts.Length));
            before = until;
        }

        return log;
    }
}
