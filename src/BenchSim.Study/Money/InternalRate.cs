using System.Collections.Immutable;

namespace BenchSim.Study.Money;

/// <summary>
/// Internal rates of return: the rates at which flows have a net present value of 0. Flows that change sign once have just one. Flows that
/// never change sign have none, and flows that change it more often may have none, one or several: all of them are found.
/// </summary>
public static class InternalRate
{
    /// <summary>Least rate looked for, fraction a year.</summary>
    public const double Least = -0.999;

    /// <summary>Greatest rate looked for, fraction a year.</summary>
    public const double Greatest = 1000;

    // Between these ends one step of Newton or halving at a time; 200 halvings are more than the digits of a number.
    private const int MostSteps = 200;

    /// <summary>All internal rates from <see cref="Least"/> to <see cref="Greatest"/>, in rising order; empty when there is none.</summary>
    /// <param name="flows">Money received less money paid, now and at the end of each year.</param>
    /// <exception cref="ArgumentException">A flow is no number.</exception>
    public static ImmutableArray<double> All(ReadOnlySpan<double> flows)
    {
        double size = 0;
        foreach (var flow in flows)
        {
            if (!double.IsFinite(flow))
            {
                throw new ArgumentException("Flows are numbers.", nameof(flows));
            }

            size = Math.Max(size, Math.Abs(flow));
        }

        var changes = SignChanges(flows);
        if (changes == 0)
        {
            return [];
        }

        // In x = 1 / (1 + rate) the value is a polynomial with the flows as coefficients. By Descartes' rule one change of sign is one root
        // above 0.
        var coefficients = new double[flows.Length];
        for (var year = 0; year < flows.Length; year++)
        {
            coefficients[year] = flows[year] / size;
        }

        (var low, var high) = (1 / (1 + Greatest), 1 / (1 + Least));
        var roots = changes == 1 ? OnlyRoot(coefficients, low, high) : Roots(coefficients, low, high);
        return [.. roots.Select(root => (1 / root) - 1).Order()];
    }

    /// <summary>Changes of sign from year to year; years without a flow do not count.</summary>
    /// <param name="flows">Flows.</param>
    public static int SignChanges(ReadOnlySpan<double> flows)
    {
        var changes = 0;
        var last = 0;
        foreach (var flow in flows)
        {
            var sign = Math.Sign(flow);
            changes += sign != 0 && last != 0 && sign != last ? 1 : 0;
            last = sign == 0 ? last : sign;
        }

        return changes;
    }

    private static List<double> OnlyRoot(double[] polynomial, double low, double high)
    {
        (var atLow, var atHigh) = (Value(polynomial, low), Value(polynomial, high));
        return atLow == 0 ? [low]
            : atHigh == 0 ? [high]
            : (atLow < 0) == (atHigh < 0) ? []
            : [Between(polynomial, low, high, atLow)];
    }

    // Between two neighbouring turning points, the roots of the derivative, a polynomial goes one way only and has one root at most.
    private static List<double> Roots(double[] polynomial, double low, double high)
    {
        if (SignChanges(polynomial) == 0)
        {
            return [];
        }

        var derivative = new double[polynomial.Length - 1];
        for (var power = 1; power < polynomial.Length; power++)
        {
            derivative[power - 1] = power * polynomial[power];
        }

        List<double> roots = [];
        var from = low;
        var atFrom = Value(polynomial, from);
        foreach (var to in Roots(derivative, low, high).Append(high))
        {
            var atTo = Value(polynomial, to);
            if (atFrom == 0)
            {
                AddOnce(roots, from);
            }
            else if (atTo != 0 && (atFrom < 0) != (atTo < 0))
            {
                AddOnce(roots, Between(polynomial, from, to, atFrom));
            }

            (from, atFrom) = (to, atTo);
        }

        if (atFrom == 0)
        {
            AddOnce(roots, from);
        }

        return roots;
    }

    private static void AddOnce(List<double> roots, double root)
    {
        if (roots.Count == 0 || roots[^1] < root)
        {
            roots.Add(root);
        }
    }

    // Newton's steps, kept between two ends of different sign; halving where a step would leave them.
    private static double Between(double[] polynomial, double low, double high, double atLow)
    {
        var x = (low + high) / 2;
        for (var step = 0; step < MostSteps; step++)
        {
            (var value, var slope) = ValueAndSlope(polynomial, x);
            if (value == 0)
            {
                return x;
            }

            if ((value < 0) == (atLow < 0))
            {
                low = x;
            }
            else
            {
                high = x;
            }

            var next = x - (value / slope);
            if (!(next > low && next < high) || step % 8 == 7)
            {
                next = (low + high) / 2;
            }

            if (Math.Abs(next - x) <= 1e-15 * Math.Abs(next))
            {
                return next;
            }

            x = next;
        }

        return x;
    }

    private static double Value(double[] polynomial, double x)
    {
        double value = 0;
        for (var power = polynomial.Length - 1; power >= 0; power--)
        {
            value = (value * x) + polynomial[power];
        }

        return value;
    }

    private static (double Value, double Slope) ValueAndSlope(double[] polynomial, double x)
    {
        double value = 0;
        double slope = 0;
        for (var power = polynomial.Length - 1; power >= 0; power--)
        {
            slope = (slope * x) + value;
            value = (value * x) + polynomial[power];
        }

        return (value, slope);
    }
}
