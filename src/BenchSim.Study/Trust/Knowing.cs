namespace BenchSim.Study.Trust;

/// <summary>
/// What knowing a value would be worth to a choice between leaving the plan as it is and a change: who knows it chooses by it (expected
/// value of partial perfect information, Raiffa and Schlaifer 1961).
/// </summary>
internal static class Knowing
{
    /// <summary>The gain of choosing for each part of a value's range by itself over choosing once for all, 0 or more.</summary>
    /// <param name="part">For each set the part of the range in which its value lies.</param>
    /// <param name="gains">For each set what the change brings more than no change.</param>
    /// <param name="parts">Number of parts.</param>
    /// <param name="sets">Numbers of the sets to look at.</param>
    public static double OfOne(int[] part, double[] gains, int parts, int[] sets)
    {
        Span<double> sums = stackalloc double[parts];
        sums.Clear();
        foreach (var set in sets)
        {
            sums[part[set]] += gains[set];
        }

        var (all, apart) = (0.0, 0.0);
        foreach (var sum in sums)
        {
            all += sum;
            apart += Math.Max(0, sum);
        }

        return (apart - Math.Max(0, all)) / sets.Length;
    }

    /// <summary>The gain of knowing all values.</summary>
    /// <param name="gains">For each set what the change brings more than no change.</param>
    public static double OfAll(double[] gains) => gains.Average(gain => Math.Max(0, gain)) - Math.Max(0, gains.Average());

    /// <summary>Share of the sets in which the other choice is the better one.</summary>
    /// <param name="gains">For each set what the change brings more than no change.</param>
    public static double Changes(double[] gains)
    {
        var isChosen = gains.Average() > 0;
        return gains.Count(gain => isChosen ? gain < 0 : gain > 0) / (double)gains.Length;
    }
}
