namespace BenchSim.Study.Trust;

/// <summary>
/// First-order shares: how much of the variance of an outcome a value makes by itself. From one sample of sets, by parts of the value's
/// range that hold as many sets each (Plischke, Borgonovo and Smith 2013, European Journal of Operational Research 226, 536-550): the
/// variance between the means of the parts over the whole, corrected for what chance alone would put between them (omega squared, Hays
/// 1963).
/// </summary>
internal static class FirstShares
{
    /// <summary>The parts that a range is cut into for so many sets: half the square root, at least 4.</summary>
    /// <param name="sets">Number of sets.</param>
    public static int Parts(int sets) => Math.Max(4, (int)Math.Sqrt(sets) / 2);

    /// <summary>The share of the variance of an outcome.</summary>
    /// <param name="part">For each set the part of the range in which its value lies, from 0.</param>
    /// <param name="outcomes">For each set its outcome.</param>
    /// <param name="parts">Number of parts.</param>
    /// <param name="sets">Numbers of the sets to look at, each as often as it counts.</param>
    public static double Of(int[] part, double[] outcomes, int parts, int[] sets)
    {
        Span<double> sums = stackalloc double[parts];
        Span<int> counts = stackalloc int[parts];
        sums.Clear();
        counts.Clear();
        var sum = 0.0;
        foreach (var set in sets)
        {
            sums[part[set]] += outcomes[set];
            counts[part[set]]++;
            sum += outcomes[set];
        }

        var (mean, total, between, filled) = (sum / sets.Length, 0.0, 0.0, 0);
        foreach (var set in sets)
        {
            total += (outcomes[set] - mean) * (outcomes[set] - mean);
        }

        for (var at = 0; at < parts; at++)
        {
            if (counts[at] > 0)
            {
                var off = (sums[at] / counts[at]) - mean;
                between += counts[at] * off * off;
                filled++;
            }
        }

        var within = (total - between) / (sets.Length - filled);
        return total + within > 0 ? (between - ((filled - 1) * within)) / (total + within) : 0;
    }

    /// <summary>The part of its range in which each set has a value.</summary>
    /// <param name="sets">The sets: chances strictly between 0 and 1.</param>
    /// <param name="value">Number of the value.</param>
    /// <param name="parts">Number of parts.</param>
    public static int[] PartsOf(double[][] sets, int value, int parts) => Array.ConvertAll(sets, set => (int)(set[value] * parts));
}
