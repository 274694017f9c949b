using MathNet.Numerics;

namespace BenchSim.Season.Planning;

/// <summary>The binomial law: how many of n cells or seeds bring a plant, each with chance p.</summary>
public static class Binomial
{
    /// <summary>Chance that at least k of n succeed: the regularized incomplete beta function I_p(k, n - k + 1).</summary>
    /// <param name="n">Tries, 0 or more.</param>
    /// <param name="p">Chance of each, 0 to 1.</param>
    /// <param name="k">Successes wanted.</param>
    public static double AtLeast(int n, double p, int k) =>
        k <= 0 ? 1 : k > n || p <= 0 ? 0 : p >= 1 ? 1 : SpecialFunctions.BetaRegularized(k, n - k + 1, p);

    /// <summary>Writes the cumulative chances of 0, 1, ..., n successes.</summary>
    /// <param name="n">Tries, 0 or more.</param>
    /// <param name="p">Chance of each, 0 to 1.</param>
    /// <param name="into">Room for n + 1 values; the last is exactly 1.</param>
    public static void Cumulative(int n, double p, Span<double> into)
    {
        into = into[..(n + 1)];
        if (p <= 0 || p >= 1)
        {
            into.Fill(p <= 0 ? 1 : 0);
            into[n] = 1;
            return;
        }

        // Outward from the likeliest number, by the ratio of neighbours, relative to it; then scaled to a sum of one.
        var mode = Math.Min((int)((n + 1) * p), n);
        var odds = p / (1 - p);
        into[mode] = 1;
        for (var k = mode; k > 0; k--)
        {
            into[k - 1] = into[k] * k / ((n - k + 1) * odds);
        }

        for (var k = mode; k < n; k++)
        {
            into[k + 1] = into[k] * (n - k) * odds / (k + 1);
        }

        var sum = 0.0;
        for (var k = 0; k <= n; k++)
        {
            sum += into[k];
            into[k] = sum;
        }

        for (var k = 0; k <= n; k++)
        {
            into[k] /= sum;
        }
    }

    /// <summary>The smallest number whose cumulative chance is at least u.</summary>
    /// <param name="cumulative">Cumulative chances of 0, 1, ..., n.</param>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public static int Quantile(ReadOnlySpan<double> cumulative, double u)
    {
        var (low, high) = (0, cumulative.Length - 1);
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (cumulative[middle] >= u)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }
}
