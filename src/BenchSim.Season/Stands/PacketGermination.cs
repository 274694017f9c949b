using System.Collections.Concurrent;
using BenchSim.Engine.Randomness;
using MathNet.Numerics;

namespace BenchSim.Season.Stands;

/// <summary>
/// The germination of a seed packet: a beta law whose mean is the packet's value and whose spread is that of a test of n seeds,
/// Beta(v n, (1 - v) n). Its quantile is tabulated once over the probit of the chance and read by cubic interpolation with the
/// exact slope; within 1e-7 of the true quantile, 2e-6 for a test of fewer than ten seeds (PacketGerminationTests).
/// </summary>
public sealed class PacketGermination
{
    private const double Reach = 8.5;
    private const int Steps = 136;
    private const double Step = 2 * Reach / Steps;

    // Laws that were asked for before. A plan has as many as it has different seed, and each player of it wants them again.
    private const int MostKept = 1000;
    private static readonly ConcurrentDictionary<(double Germination, int Sample), PacketGermination> s_kept = new();

    private readonly double fixedValue = double.NaN;
    private readonly double[] values = [];
    private readonly double[] slopes = [];

    /// <summary>Makes the law of a packet.</summary>
    /// <param name="germination">Packet germination v, 0 to 1; at 0 or 1 there is no spread.</param>
    /// <param name="sample">Seeds in the test n, 1 or more.</param>
    public PacketGermination(double germination, int sample)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sample, 1);
        if (germination is <= 0 or >= 1)
        {
            fixedValue = Math.Clamp(germination, 0, 1);
            return;
        }

        values = new double[Steps + 1];
        slopes = new double[Steps + 1];
        Tabulate(germination * sample, (1 - germination) * sample);
    }

    /// <summary>The law of a packet, from those made before if it is among them. Safe for use by several threads.</summary>
    /// <param name="germination">Packet germination v, 0 to 1; at 0 or 1 there is no spread.</param>
    /// <param name="sample">Seeds in the test n, 1 or more.</param>
    public static PacketGermination Of(double germination, int sample)
    {
        if (s_kept.Count >= MostKept)
        {
            s_kept.Clear();
        }

        return s_kept.GetOrAdd((germination, sample), static key => new PacketGermination(key.Germination, key.Sample));
    }

    /// <summary>The germination that a packet is below with a given chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u)
    {
        if (!double.IsNaN(fixedValue))
        {
            return fixedValue;
        }

        var place = (Normal.Quantile(u) + Reach) / Step;
        var index = Math.Clamp((int)place, 0, Steps - 1);
        var t = Math.Clamp(place - index, 0, 1);
        var (low, high) = (values[index], values[index + 1]);
        var (rise0, rise1) = (slopes[index] * Step, slopes[index + 1] * Step);
        var bend = rise0 + rise1 - (2 * (high - low));
        var lean = (3 * (high - low)) - (2 * rise0) - rise1;
        return Math.Clamp(low + (t * (rise0 + (t * (lean + (t * bend))))), 0, 1);
    }

    // Walks outward from the median, each quantile found by Newton's steps from the last one's slope, kept inside by halving.
    private void Tabulate(double a, double b)
    {
        var logScale = SpecialFunctions.GammaLn(a + b) - SpecialFunctions.GammaLn(a) - SpecialFunctions.GammaLn(b);
        var middle = Steps / 2;
        var start = a / (a + b);
        for (var direction = -1; direction <= 1; direction += 2)
        {
            var guess = start;
            for (var index = middle; index >= 0 && index <= Steps; index += direction)
            {
                var z = -Reach + (index * Step);
                values[index] = Solve(z, guess, a, b, logScale);
                slopes[index] = Math.Exp(LogNormalDensity(z) - LogDensity(values[index], a, b, logScale));
                guess = Math.Clamp(values[index] + (direction * Step * slopes[index]), 1e-300, 1 - 1e-16);
            }

            start = values[middle];
        }
    }

    private static double Solve(double z, double guess, double a, double b, double logScale)
    {
        var (low, high) = (0.0, 1.0);
        var x = guess;
        for (var round = 0; round < 60; round++)
        {
            // In the lower half compare chances, in the upper half their complements, so that neither tail loses its digits.
            var gap =
                z <= 0
                    ? SpecialFunctions.BetaRegularized(a, b, x) - Normal.Cumulative(z)
                    : Normal.Cumulative(-z) - SpecialFunctions.BetaRegularized(b, a, 1 - x);
            (low, high) = gap > 0 ? (low, x) : (x, high);
            var next = x - (gap / Math.Exp(LogDensity(x, a, b, logScale)));
            next = next > low && next < high ? next : (low + high) / 2;
            // Each of Newton's steps leaves about the square of its own length: after one this short, the rest is lost in rounding.
            if (Math.Abs(next - x) <= 1e-8 * x)
            {
                return next;
            }

            x = next;
        }

        return x;
    }

    private static double LogDensity(double x, double a, double b, double logScale) =>
        logScale + ((a - 1) * Math.Log(x)) + ((b - 1) * Math.Log(1 - x));

    private static double LogNormalDensity(double z) => (-z * z / 2) - (0.5 * Math.Log(2 * Math.PI));
}
