namespace BenchSim.Study.Trust;

/// <summary>
/// Total shares: how much of the variance of an outcome would stay if all values but those of a group were known, what they do together
/// with others included. M. J. W. Jansen (1999), "Analysis of variance designs for model output", Computer Physics Communications 117,
/// 35-43, eq. 13: half the mean square of what changing the group alone changes, over the variance.
/// </summary>
internal static class TotalShares
{
    /// <summary>The sets of the first sample with the values of a group from the second.</summary>
    /// <param name="first">First sample.</param>
    /// <param name="second">Second sample, of as many sets.</param>
    /// <param name="isInGroup">Whether a value is of the group.</param>
    public static double[][] Mixed(double[][] first, double[][] second, bool[] isInGroup) =>
        [.. first.Select((set, at) => set.Select((chance, value) => isInGroup[value] ? second[at][value] : chance).ToArray())];

    /// <summary>The share.</summary>
    /// <param name="first">Outcomes of the first sample.</param>
    /// <param name="mixed">Outcomes of the mixed sets.</param>
    /// <param name="variance">Variance of the outcome.</param>
    /// <param name="sets">Numbers of the sets to look at.</param>
    public static double Of(double[] first, double[] mixed, double variance, int[] sets)
    {
        var sum = 0.0;
        foreach (var set in sets)
        {
            sum += (first[set] - mixed[set]) * (first[set] - mixed[set]);
        }

        return variance > 0 ? sum / (2 * sets.Length * variance) : 0;
    }
}
