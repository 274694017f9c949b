namespace BenchSim.Season.Evidence;

/// <summary>
/// The grid on which luck that was seen is held: the middles of so many parts of a law, each as likely before anything is seen.
/// </summary>
internal static class LuckGrid
{
    /// <summary>Points of the grid.</summary>
    public const int Points = 41;

    /// <summary>The chance of which a point of the grid is the quantile.</summary>
    public static double Chance(int point) => (point + 0.5) / Points;

    /// <summary>The first place at which the running sum of some weights reaches a share of their whole.</summary>
    /// <param name="weights">Weights, not all 0.</param>
    /// <param name="u">The share, strictly between 0 and 1.</param>
    public static int Draw(ReadOnlySpan<double> weights, double u)
    {
        var whole = 0.0;
        foreach (var weight in weights)
        {
            whole += weight;
        }

        var (sum, last) = (0.0, 0);
        for (var place = 0; place < weights.Length; place++)
        {
            if (weights[place] > 0)
            {
                sum += weights[place];
                last = place;
                if (sum >= u * whole)
                {
                    break;
                }
            }
        }

        return last;
    }

    /// <summary>Weights from their logarithms, the largest 1.</summary>
    public static double[] Weights(IReadOnlyCollection<double> logarithms)
    {
        var most = logarithms.Max();
        return [.. logarithms.Select(each => Math.Exp(each - most))];
    }
}
