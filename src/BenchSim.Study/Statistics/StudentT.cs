using BenchSim.Engine.Randomness;
using MathNet.Numerics;

namespace BenchSim.Study.Statistics;

/// <summary>Student's t distribution.</summary>
public static class StudentT
{
    /// <summary>The value that t does not exceed with the given chance.</summary>
    /// <param name="chance">Between 0 and 1, both excluded.</param>
    /// <param name="degreesOfFreedom">Above 0; need not be whole.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Quantile(double chance, double degreesOfFreedom)
    {
        Confidence.ThrowIfOutside(chance);
        if (!(degreesOfFreedom > 0 && double.IsFinite(degreesOfFreedom)))
        {
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Above 0.");
        }

        if (chance == 0.5)
        {
            return 0;
        }

        return chance < 0.5 ? -UpperQuantile(chance, degreesOfFreedom) : UpperQuantile(1 - chance, degreesOfFreedom);
    }

    // P(T > t) = I(n / (n + t^2); n/2, 1/2) / 2, the regularised incomplete beta function (Abramowitz and Stegun 26.7.1, 26.5.27).
    private static double Tail(double t, double n) => SpecialFunctions.BetaRegularized(n / 2, 0.5, n / (n + (t * t))) / 2;

    // Bisection, then Newton steps kept inside the bracket: slower than an expansion, but right for any degrees of freedom.
    private static double UpperQuantile(double tail, double n)
    {
        double low = 0;
        var high = Math.Max(1, -Normal.Quantile(tail));
        while (Tail(high, n) > tail)
        {
            low = high;
            high *= 2;
        }

        var logScale = SpecialFunctions.GammaLn((n + 1) / 2) - SpecialFunctions.GammaLn(n / 2) - (0.5 * Math.Log(n * Math.PI));
        var t = (low + high) / 2;
        for (var step = 0; step < 200; step++)
        {
            var excess = Tail(t, n) - tail;
            if (excess > 0)
            {
                low = t;
            }
            else
            {
                high = t;
            }

            var density = Math.Exp(logScale - ((n + 1) / 2 * Math.Log(1 + (t * t / n))));
            var next = t + (excess / density);
            if (!(next > low && next < high))
            {
                next = (low + high) / 2;
            }

            if (Math.Abs(next - t) <= 1e-14 * next)
            {
                return next;
            }

            t = next;
        }

        return t;
    }
}
