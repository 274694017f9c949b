namespace BenchSim.Study.Statistics;

/// <summary>
/// Interval of the difference of two shares counted on the same trials: Newcombe's method 10 (Newcombe 1998, Statistics in Medicine 17,
/// 2635-2650), which joins the Wilson intervals of the two shares by their correlation.
/// </summary>
public static class PairedShares
{
    /// <summary>The interval of second share less first share.</summary>
    /// <param name="both">Trials in which both happened.</param>
    /// <param name="onlyFirst">Trials in which only the first happened.</param>
    /// <param name="onlySecond">Trials in which only the second happened.</param>
    /// <param name="neither">Trials in which neither happened.</param>
    /// <param name="confidence">Between 0 and 1, both excluded.</param>
    /// <returns>Lower and upper end, -1 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative count, no trials, or a confidence outside its range.</exception>
    public static (double Low, double High) Interval(
        int both,
        int onlyFirst,
        int onlySecond,
        int neither,
        double confidence = Confidence.Usual
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegative(both);
        ArgumentOutOfRangeException.ThrowIfNegative(onlyFirst);
        ArgumentOutOfRangeException.ThrowIfNegative(onlySecond);
        ArgumentOutOfRangeException.ThrowIfNegative(neither);
        var trials = both + onlyFirst + onlySecond + neither;
        (var firstLow, var firstHigh) = Wilson.Interval(both + onlyFirst, trials, confidence);
        (var secondLow, var secondHigh) = Wilson.Interval(both + onlySecond, trials, confidence);
        var first = (double)(both + onlyFirst) / trials;
        var second = (double)(both + onlySecond) / trials;
        var correlation = Correlation(both, onlyFirst, onlySecond, neither);
        var difference = (double)(onlySecond - onlyFirst) / trials;
        return (
            Math.Max(-1, difference - Reach(second - secondLow, firstHigh - first, correlation)),
            Math.Min(1, difference + Reach(secondHigh - second, first - firstLow, correlation))
        );
    }

    private static double Reach(double one, double other, double correlation) =>
        Math.Sqrt(Math.Max(0, (one * one) - (2 * correlation * one * other) + (other * other)));

    // The phi coefficient; a positive one is drawn towards 0 by half the trials.
    private static double Correlation(double both, double onlyFirst, double onlySecond, double neither)
    {
        var margins = (both + onlyFirst) * (onlySecond + neither) * (both + onlySecond) * (onlyFirst + neither);
        if (margins == 0)
        {
            return 0;
        }

        var cross = (both * neither) - (onlyFirst * onlySecond);
        var half = (both + onlyFirst + onlySecond + neither) / 2;
        return (cross > 0 ? Math.Max(0, cross - half) : cross) / Math.Sqrt(margins);
    }
}
