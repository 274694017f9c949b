using MathNet.Numerics;

namespace BenchSim.Study.Statistics;

/// <summary>
/// Equal-tailed interval of a quantile between two order statistics, free of any assumed distribution (David and Nagaraja, Order
/// Statistics, 3rd edition 2003, section 7.1).
/// </summary>
/// <param name="Lower">Rank of the lower end among the sorted values, from 1; 0 when the sample is too small for a lower end.</param>
/// <param name="Upper">Rank of the upper end, up to n; n + 1 when the sample is too small for an upper end.</param>
/// <param name="Coverage">
/// Chance that the interval covers the quantile of a continuous distribution; at least the confidence asked for.
/// </param>
public readonly record struct QuantileInterval(int Lower, int Upper, double Coverage)
{
    /// <summary>The ranks for a sample of a given size.</summary>
    /// <param name="sample">Number of values, 1 or more.</param>
    /// <param name="share">Which quantile, between 0 and 1, both excluded.</param>
    /// <param name="confidence">Between 0 and 1, both excluded.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static QuantileInterval Of(int sample, double share, double confidence = Confidence.Usual)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sample, 1);
        Confidence.ThrowIfOutside(share);
        Confidence.ThrowIfOutside(confidence);
        var tail = (1 - confidence) / 2;

        // The number of values at or below the quantile is binomial. Each tail is summed from its own end, so that small chances keep their
        // digits.
        var lower = 0;
        double below = 0;
        while (lower < sample && below + Chance(sample, lower, share) <= tail)
        {
            below += Chance(sample, lower++, share);
        }

        var upper = sample + 1;
        double above = 0;
        while (upper > 0 && above + Chance(sample, upper - 1, share) <= tail)
        {
            above += Chance(sample, --upper, share);
        }

        return new QuantileInterval(lower, upper, 1 - below - above);
    }

    private static double Chance(int n, int k, double p) =>
        Math.Exp(
            SpecialFunctions.FactorialLn(n)
                - SpecialFunctions.FactorialLn(k)
                - SpecialFunctions.FactorialLn(n - k)
                + (k * Math.Log(p))
                + ((n - k) * Math.Log(1 - p))
        );
}
