using System.Runtime.Intrinsics;
using MathNet.Numerics;

namespace BenchSim.Season.Stands;

/// <summary>The binomial law: how many of n cells or seeds bring a plant, each with chance p.</summary>
public static class Binomial
{
    private const double Negligible = 1e-20;

    /// <summary>Chance that at least k of n succeed: the regularized incomplete beta function I_p(k, n - k + 1).</summary>
    /// <param name="n">Tries, 0 or more.</param>
    /// <param name="p">Chance of each, 0 to 1.</param>
    /// <param name="k">Successes wanted.</param>
    public static double AtLeast(int n, double p, int k) =>
        k <= 0 ? 1
        : k > n || p <= 0 ? 0
        : p >= 1 ? 1
        : SpecialFunctions.BetaRegularized(k, n - k + 1, p);

    /// <summary>
    /// Writes the cumulative chances of 0, 1, ..., n successes. Numbers less likely than 1e-20 of the likeliest are taken as impossible:
    /// what they add
    /// is lost in rounding, and no uniform of 53 bits tells the difference.
    /// </summary>
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

        // Outward from the likeliest number, by the ratio of neighbours, relative to it; then scaled to a sum of one. The ratios do not
        // wait for one another, only their product does.
        var mode = Math.Min((int)((n + 1) * p), n);
        var (odds, against) = (p / (1 - p), (1 - p) / p);
        into[mode] = 1;
        var (low, likely) = (mode, 1.0);
        while (low > 0 && likely > Negligible)
        {
            likely *= low * against / (n - low + 1);
            into[--low] = likely;
        }

        (var high, likely) = (mode, 1.0);
        while (high < n && likely > Negligible)
        {
            likely *= (n - high) * odds / (high + 1);
            into[++high] = likely;
        }

        var sum = 0.0;
        foreach (ref var value in into[low..(high + 1)])
        {
            sum += value;
            value = sum;
        }

        var scale = 1 / sum;
        foreach (ref var value in into[low..high])
        {
            value *= scale;
        }

        into[..low].Clear();
        into[high..].Fill(1);
    }

    /// <summary>The smallest number whose cumulative chance is at least u.</summary>
    /// <param name="cumulative">Cumulative chances of 0, 1, ..., n.</param>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public static int Quantile(ReadOnlySpan<double> cumulative, double u)
    {
        // How many are below u, several a step: quicker than halving, where every second branch goes as luck has it.
        var (at, below) = (0, Vector512<long>.Zero);
        for (; at <= cumulative.Length - Vector512<long>.Count; at += Vector512<long>.Count)
        {
            below -= Vector512.LessThan(Vector512.Create(cumulative[at..]), Vector512.Create(u)).AsInt64();
        }

        var number = (int)Vector512.Sum(below);
        for (; at < cumulative.Length; at++)
        {
            number += cumulative[at] < u ? 1 : 0;
        }

        return number;
    }
}
