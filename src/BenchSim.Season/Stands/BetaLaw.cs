using System.Collections.Concurrent;
using BenchSim.Engine.Randomness;
using MathNet.Numerics;

namespace BenchSim.Season.Stands;

/// <summary>
/// The beta law of a share with a mean v and a sample size n, Beta(v n, (1 - v) n): the germination of a seed packet, with the spread of a
/// test of n seeds, or the losses of a batch. The logit of its quantile is tabulated once over the probit of the chance and read by
/// cubic interpolation with the exact slope; within 1e-7 of the true quantile, 1e-5 for a sample below ten
/// (BetaLawTests, StandLossTests).
/// </summary>
public sealed class BetaLaw
{
    private const double Reach = 8.5;
    private const int Steps = 136;
    private const double Step = 2 * Reach / Steps;

    // Logarithm of the smallest share that is looked for.
    private const double LogLeast = -690;

    // Laws that were asked for before. A plan has as many as it has different seed and losses, and each player of it wants them again.
    private const int MostKept = 1000;
    private static readonly ConcurrentDictionary<(double Mean, double Sample), BetaLaw> s_kept = new();

    private readonly double _fixedValue = double.NaN;
    private readonly double[] _values = [];
    private readonly double[] _slopes = [];

    /// <summary>Makes a law.</summary>
    /// <param name="mean">Mean v, 0 to 1; at 0 or 1 there is no spread.</param>
    /// <param name="sample">Sample size n, 1 or more: the seeds of a test, or what stands for them.</param>
    public BetaLaw(double mean, double sample)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sample, 1);
        if (mean is <= 0 or >= 1)
        {
            _fixedValue = Math.Clamp(mean, 0, 1);
            return;
        }

        _values = new double[Steps + 1];
        _slopes = new double[Steps + 1];
        Tabulate(mean * sample, (1 - mean) * sample);
    }

    /// <summary>A law, from those made before if it is among them. Safe for use by several threads.</summary>
    /// <param name="mean">Mean v, 0 to 1; at 0 or 1 there is no spread.</param>
    /// <param name="sample">Sample size n, 1 or more.</param>
    public static BetaLaw Of(double mean, double sample)
    {
        if (s_kept.Count >= MostKept)
        {
            s_kept.Clear();
        }

        return s_kept.GetOrAdd((mean, sample), static key => new BetaLaw(key.Mean, key.Sample));
    }

    /// <summary>The share that it is below with a given chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u)
    {
        if (!double.IsNaN(_fixedValue))
        {
            return _fixedValue;
        }

        var place = (Normal.Quantile(u) + Reach) / Step;
        var index = Math.Clamp((int)place, 0, Steps - 1);
        var t = Math.Clamp(place - index, 0, 1);
        var (low, high) = (_values[index], _values[index + 1]);
        var (rise0, rise1) = (_slopes[index] * Step, _slopes[index + 1] * Step);
        var bend = rise0 + rise1 - (2 * (high - low));
        var lean = (3 * (high - low)) - (2 * rise0) - rise1;
        return 1 / (1 + Math.Exp(-(low + (t * (rise0 + (t * (lean + (t * bend))))))));
    }

    // Walks outward from the median, each quantile found by Newton's steps from where the last one's slope points.
    private void Tabulate(double a, double b)
    {
        var logScale = -SpecialFunctions.BetaLn(a, b);
        var inLowerHalf = SpecialFunctions.BetaRegularized(a, b, 0.5);
        var middle = Steps / 2;
        var start = Math.Log(a / b);
        for (var direction = -1; direction <= 1; direction += 2)
        {
            var guess = start;
            for (var index = middle; index >= 0 && index <= Steps; index += direction)
            {
                var z = -Reach + (index * Step);
                var isUpper = Normal.Cumulative(z) > inLowerHalf;
                var (near, density) = isUpper ? NearEnd(-z, -guess, b, a, logScale) : NearEnd(z, guess, a, b, logScale);
                var logit = near - Math.Log(1 - Math.Exp(near));
                _values[index] = isUpper ? -logit : logit;
                _slopes[index] = near > LogLeast + 1 ? Math.Exp(LogNormalDensity(z) - density) : 0;
                guess = _values[index] + (direction * Step * _slopes[index]);
            }

            start = _values[middle];
        }
    }

    // The logarithm of the quantile at a score z where it is not above one half, and that of the density of its logit there: by the
    // logarithm, in which the foot of a beta law is a straight line; kept inside by halving. Up to the median the chance itself is compared
    // and beyond it its complement, so that neither tail loses its digits.
    private static (double Log, double LogDensity) NearEnd(double z, double logit, double a, double b, double logScale)
    {
        var (low, high) = (LogLeast, Math.Log(0.5));
        var log = Math.Clamp(-Math.Log(1 + Math.Exp(-logit)), low, high);
        var (below, above) = (Normal.Cumulative(z), Normal.Cumulative(-z));
        for (var round = 0; round < 100; round++)
        {
            var x = Math.Exp(log);
            var chance =
                z <= 0 ? SpecialFunctions.BetaRegularized(a, b, x)
                : x < 1e-8 ? 1 - SpecialFunctions.BetaRegularized(a, b, x)
                : SpecialFunctions.BetaRegularized(b, a, 1 - x);
            var gap = z <= 0 ? Math.Log(chance / below) : Math.Log(above / chance);
            (low, high) = gap > 0 ? (low, log) : (log, high);
            var next = log - (gap * chance / Math.Exp(logScale + (a * log) + ((b - 1) * Math.Log(1 - x))));
            next = next > low && next < high ? next : (low + high) / 2;

            // Each of Newton's steps leaves about the square of its own length: after one this short, the rest is lost in rounding.
            var isFound = Math.Abs(next - log) <= 1e-8;
            log = next;
            if (isFound)
            {
                break;
            }
        }

        return (log, logScale + (a * log) + (b * Math.Log(1 - Math.Exp(log))));
    }

    private static double LogNormalDensity(double z) => (-z * z / 2) - (0.5 * Math.Log(2 * Math.PI));
}
