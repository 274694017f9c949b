using System.Numerics;
using System.Runtime.Intrinsics;

namespace BenchSim.Engine.Randomness;

/// <summary>
/// The standard normal law: its cumulative probability and its quantile (probit), both to near the last digit of a double.
/// </summary>
public static class Normal
{
    private const double InverseSquareRootOfTwoPi = 0.39894228040143267794;

    // The middle branch of the probit reaches so far either way of one half.
    private const double CentralReach = 0.425;

    /// <summary>
    /// Chance that a standard normal value is at most <paramref name="z"/>. Small chances in the lower tail keep their relative accuracy;
    /// for the upper tail ask for Cumulative(-z). Rational approximations of W. J. Cody (1969), "Rational Chebyshev approximations
    /// for the error function", Mathematics of Computation 23, in the form of Algorithm 715 (1993), routine ANORM.
    /// </summary>
    /// <param name="z">Any number; infinities give 0 and 1; not-a-number gives not-a-number.</param>
    /// <returns>A chance from 0 to 1.</returns>
    public static double Cumulative(double z)
    {
        if (double.IsNaN(z))
        {
            return z;
        }

        var size = Math.Abs(z);
        if (size <= 0.67448975)
        {
            return 0.5 + Centre(z);
        }

        var tail = size <= 5.656854249492380195 ? Shoulder(size) : FarTail(size);
        return z < 0 ? tail : 1 - tail;
    }

    /// <summary>
    /// The value that a standard normal draw is below with chance <paramref name="u"/>: the probit. Algorithm AS 241, routine PPND16, of
    /// M. J. Wichura (1988), "The percentage points of the normal distribution", Applied Statistics 37: about 1 part in 10^16.
    /// </summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="u"/> is not strictly between 0 and 1.</exception>
    public static double Quantile(double u)
    {
        if (!(u > 0 && u < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(u), u, "The chance must lie strictly between 0 and 1.");
        }

        var centred = u - 0.5;
        if (Math.Abs(centred) <= CentralReach)
        {
            return CentralQuantile(centred);
        }

        var r = Math.Sqrt(-Math.Log(Math.Min(u, 1 - u)));
        var size = r <= 5 ? ShoulderQuantile(r - 1.6) : FarQuantile(r - 5);
        return centred < 0 ? -size : size;
    }

    /// <summary>The probit of a row of chances, several a step: each to the bits of <see cref="Quantile"/>.</summary>
    /// <param name="chances">Chances strictly between 0 and 1.</param>
    /// <param name="values">Filled; as long as <paramref name="chances"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not strictly between 0 and 1.</exception>
    public static void Quantiles(ReadOnlySpan<double> chances, Span<double> values)
    {
        var at = 0;
        for (; at <= chances.Length - Vector512<double>.Count; at += Vector512<double>.Count)
        {
            var centred = Vector512.Create(chances[at..]) - Vector512.Create(0.5);
            CentralQuantiles(centred).CopyTo(values[at..]);

            // One in seven lies further out, and is worked out by itself. A number that is none is not in the middle either.
            var isCentral = Vector512.LessThanOrEqual(Vector512.Abs(centred), Vector512.Create(CentralReach));
            for (var others = ~isCentral.ExtractMostSignificantBits() & byte.MaxValue; others != 0; others &= others - 1)
            {
                var other = at + BitOperations.TrailingZeroCount(others);
                values[other] = Quantile(chances[other]);
            }
        }

        for (; at < chances.Length; at++)
        {
            values[at] = Quantile(chances[at]);
        }
    }

    private static double Centre(double z)
    {
        var s = z * z;
        var top =
            (((((((0.065682337918207449113 * s) + 2.2352520354606839287) * s) + 161.02823106855587881) * s) + 1067.6894854603709582) * s)
            + 18154.981253343561249;
        var bottom =
            ((((((s + 47.20258190468824187) * s) + 976.09855173777669322) * s) + 10260.932208618978205) * s) + 45507.789335026729956;
        return z * top / bottom;
    }

    private static double Shoulder(double y)
    {
        var top = 1.0765576773720192317e-8 * y;
        top = (top + 0.39894151208813466764) * y;
        top = (top + 8.8831497943883759412) * y;
        top = (top + 93.506656132177855979) * y;
        top = (top + 597.27027639480026226) * y;
        top = (top + 2494.5375852903726711) * y;
        top = (top + 6848.1904505362823326) * y;
        top = (top + 11602.651437647350124) * y;
        top += 9842.7148383839780218;
        var bottom = y;
        bottom = (bottom + 22.266688044328115691) * y;
        bottom = (bottom + 235.38790178262499861) * y;
        bottom = (bottom + 1519.377599407554805) * y;
        bottom = (bottom + 6485.558298266760755) * y;
        bottom = (bottom + 18615.571640885098091) * y;
        bottom = (bottom + 34900.952721145977266) * y;
        bottom = (bottom + 38912.003286093271411) * y;
        bottom += 19685.429676859990727;
        return BellOf(y) * top / bottom;
    }

    private static double FarTail(double y)
    {
        var s = 1 / (y * y);
        var top = 0.02307344176494017303 * s;
        top = (top + 0.21589853405795699) * s;
        top = (top + 0.1274011611602473639) * s;
        top = (top + 0.022235277870649807) * s;
        top = (top + 0.001421619193227893466) * s;
        top += 2.9112874951168792e-5;
        var bottom = s;
        bottom = (bottom + 1.28426009614491121) * s;
        bottom = (bottom + 0.468238212480865118) * s;
        bottom = (bottom + 0.0659881378689285515) * s;
        bottom = (bottom + 0.00378239633202758244) * s;
        bottom += 7.29751555083966205e-5;
        return BellOf(y) * (InverseSquareRootOfTwoPi - (s * top / bottom)) / y;
    }

    // exp(-y^2/2) with y split at sixteenths: y^2 alone would lose the last digits of a large exponent.
    private static double BellOf(double y)
    {
        if (y > 38.6)
        {
            return 0;
        }

        var coarse = Math.Truncate(y * 16) / 16;
        var rest = (y - coarse) * (y + coarse);
        return Math.Exp(-coarse * coarse * 0.5) * Math.Exp(-rest * 0.5);
    }

    private static double CentralQuantile(double centred)
    {
        var r = 0.180625 - (centred * centred);
        return centred * Polynomial(s_centralTop, r) / Polynomial(s_centralBottom, r);
    }

    private static Vector512<double> CentralQuantiles(Vector512<double> centred)
    {
        var r = Vector512.Create(0.180625) - (centred * centred);
        return centred * Polynomial(s_centralTop, r) / Polynomial(s_centralBottom, r);
    }

    private static double ShoulderQuantile(double r) => Polynomial(s_shoulderTop, r) / Polynomial(s_shoulderBottom, r);

    private static double FarQuantile(double r) => Polynomial(s_farTop, r) / Polynomial(s_farBottom, r);

    private static double Polynomial(ReadOnlySpan<double> coefficients, double r)
    {
        var value = coefficients[0];
        foreach (var coefficient in coefficients[1..])
        {
            value = (value * r) + coefficient;
        }

        return value;
    }

    private static Vector512<double> Polynomial(ReadOnlySpan<double> coefficients, Vector512<double> r)
    {
        var value = Vector512.Create(coefficients[0]);
        foreach (var coefficient in coefficients[1..])
        {
            value = (value * r) + Vector512.Create(coefficient);
        }

        return value;
    }

    // Coefficients of AS 241, the highest power first. In arrays: a span over constants takes memory while the runtime has not yet compiled
    // the code to the end, and a season takes none.
    private static readonly double[] s_centralTop =
    [
        2509.0809287301226727,
        33430.575583588128105,
        67265.770927008700853,
        45921.953931549871457,
        13731.693765509461125,
        1971.5909503065514427,
        133.14166789178437745,
        3.3871328727963666080,
    ];

    private static readonly double[] s_centralBottom =
    [
        5226.4952788528545610,
        28729.085735721942674,
        39307.895800092710610,
        21213.794301586595867,
        5394.1960214247511077,
        687.18700749205790830,
        42.313330701600911252,
        1,
    ];

    private static readonly double[] s_shoulderTop =
    [
        7.74545014278341407640e-4,
        2.27238449892691845833e-2,
        2.41780725177450611770e-1,
        1.27045825245236838258,
        3.64784832476320460504,
        5.76949722146069140550,
        4.63033784615654529590,
        1.42343711074968357734,
    ];

    private static readonly double[] s_shoulderBottom =
    [
        1.05075007164441684324e-9,
        5.47593808499534494600e-4,
        1.51986665636164571966e-2,
        1.48103976427480074590e-1,
        6.89767334985100004550e-1,
        1.67638483018380384940,
        2.05319162663775882187,
        1,
    ];

    private static readonly double[] s_farTop =
    [
        2.01033439929228813265e-7,
        2.71155556874348757815e-5,
        1.24266094738807843860e-3,
        2.65321895265761230930e-2,
        2.96560571828504891230e-1,
        1.78482653991729133580,
        5.46378491116411436990,
        6.65790464350110377720,
    ];

    private static readonly double[] s_farBottom =
    [
        2.04426310338993978564e-15,
        1.42151175831644588870e-7,
        1.84631831751005468180e-5,
        7.86869131145613259100e-4,
        1.48753612908506148525e-2,
        1.36929880922735805310e-1,
        5.99832206555887937690e-1,
        1,
    ];
}
