namespace BenchSim.Study.Statistics;

/// <summary>
/// Score interval of a chance (Wilson 1927, Journal of the American Statistical Association 22, 209-212), no continuity correction.
/// </summary>
public static class Wilson
{
    /// <summary>The interval.</summary>
    /// <param name="hits">Times it happened, 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">Times it could have, 1 or more.</param>
    /// <param name="confidence">Between 0 and 1, both excluded.</param>
    /// <returns>Lower and upper end, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static (double Low, double High) Interval(int hits, int trials, double confidence = Confidence.Usual)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(hits);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hits, trials);
        Confidence.ThrowIfOutside(confidence);
        var z = Confidence.NormalReach(confidence);
        double n = trials;
        var share = hits / n;
        var middle = share + (z * z / (2 * n));
        var reach = z * Math.Sqrt((share * (1 - share) / n) + (z * z / (4 * n * n)));
        var scale = 1 + (z * z / n);

        // At the ends the formula is exactly 0 and 1; rounding must not say otherwise.
        var low = hits == 0 ? 0 : (middle - reach) / scale;
        var high = hits == trials ? 1 : (middle + reach) / scale;
        return (low, high);
    }
}
