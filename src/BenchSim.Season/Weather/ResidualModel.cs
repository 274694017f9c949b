namespace BenchSim.Season.Weather;

/// <summary>
/// First-order vector autoregression of the standardized residuals (highest, lowest temperature), after Richardson 1981 (Water Resources
/// Research 17, 182-190): z(d) = A z(d-1) + B e(d), e independent standard normal, B lower triangular. Index 1 is the highest temperature
/// and 2 the lowest, as in the literature.
/// </summary>
public sealed record ResidualModel
{
    /// <summary>Effect of yesterday's highest on today's highest temperature.</summary>
    public required double A11 { get; init; }

    /// <summary>Effect of yesterday's lowest on today's highest temperature.</summary>
    public required double A12 { get; init; }

    /// <summary>Effect of yesterday's highest on today's lowest temperature.</summary>
    public required double A21 { get; init; }

    /// <summary>Effect of yesterday's lowest on today's lowest temperature.</summary>
    public required double A22 { get; init; }

    /// <summary>New luck of the highest temperature, 0 or more.</summary>
    public required double B11 { get; init; }

    /// <summary>Share of that luck the lowest temperature has too.</summary>
    public required double B21 { get; init; }

    /// <summary>New luck of the lowest temperature alone, 0 or more.</summary>
    public required double B22 { get; init; }

    /// <summary>
    /// Average over stations of the United States: the temperature part of the matrices of Richardson and Wright 1984 (USDA ARS-8), as
    /// quoted in several later works; the report itself was not read. Leaving out their sunshine term lowers a variance of 1 by less than
    /// 1 %.
    /// </summary>
    public static ResidualModel UnitedStatesAverage { get; } =
        new()
        {
            A11 = 0.567,
            A12 = 0.086,
            A21 = 0.253,
            A22 = 0.504,
            B11 = 0.781,
            B21 = 0.328,
            B22 = 0.637,
        };

    /// <summary>
    /// The model that reproduces given correlations (Matalas 1967, as used by Richardson 1981): A = M1 M0^-1 and B B' = M0 - A M1'.
    /// </summary>
    /// <param name="cross">Correlation of highest and lowest temperature of one day, between -1 and 1.</param>
    /// <param name="lag11">Correlation of today's with yesterday's highest temperature.</param>
    /// <param name="lag12">Correlation of today's highest with yesterday's lowest temperature.</param>
    /// <param name="lag21">Correlation of today's lowest with yesterday's highest temperature.</param>
    /// <param name="lag22">Correlation of today's with yesterday's lowest temperature.</param>
    public static ResidualModel FromCorrelations(double cross, double lag11, double lag12, double lag21, double lag22)
    {
        if (!(Math.Abs(cross) < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(cross), cross, "must lie between -1 and 1");
        }

        var determinant = 1 - (cross * cross);
        var a11 = (lag11 - (lag12 * cross)) / determinant;
        var a12 = (lag12 - (lag11 * cross)) / determinant;
        var a21 = (lag21 - (lag22 * cross)) / determinant;
        var a22 = (lag22 - (lag21 * cross)) / determinant;
        var new11 = 1 - ((a11 * lag11) + (a12 * lag12));
        var new12 = cross - ((a11 * lag21) + (a12 * lag22));
        var new22 = 1 - ((a21 * lag21) + (a22 * lag22));
        var b11 = Math.Sqrt(Math.Max(new11, 1e-6));
        var b21 = new12 / b11;
        var b22 = Math.Sqrt(Math.Max(new22 - (b21 * b21), 1e-6));
        return new ResidualModel
        {
            A11 = a11,
            A12 = a12,
            A21 = a21,
            A22 = a22,
            B11 = b11,
            B21 = b21,
            B22 = b22,
        };
    }

    /// <summary>True when the residuals do not grow without bound: both eigenvalues of A lie inside the unit circle.</summary>
    public bool IsStable
    {
        get
        {
            // Jury's conditions for a 2 x 2 matrix.
            var trace = A11 + A22;
            var determinant = (A11 * A22) - (A12 * A21);
            return Math.Abs(determinant) < 1 && Math.Abs(trace) < 1 + determinant;
        }
    }

    /// <summary>Long-run variances and covariance of the residuals: the solution of M = A M A' + B B'.</summary>
    public (double VarianceMax, double Covariance, double VarianceMin) LongRun()
    {
        if (!IsStable)
        {
            throw new InvalidOperationException("The residuals of the weather model grow without bound; an eigenvalue of A is 1 or more.");
        }

        var (m11, m12, m22) = (1.0, 0.0, 1.0);
        for (var step = 0; step < 10_000; step++)
        {
            var n11 = (A11 * A11 * m11) + (2 * A11 * A12 * m12) + (A12 * A12 * m22) + (B11 * B11);
            var n12 = (A11 * A21 * m11) + (((A11 * A22) + (A12 * A21)) * m12) + (A12 * A22 * m22) + (B11 * B21);
            var n22 = (A21 * A21 * m11) + (2 * A21 * A22 * m12) + (A22 * A22 * m22) + (B21 * B21) + (B22 * B22);
            var change = Math.Abs(n11 - m11) + Math.Abs(n12 - m12) + Math.Abs(n22 - m22);
            (m11, m12, m22) = (n11, n12, n22);
            if (change < 1e-14)
            {
                break;
            }
        }

        return (m11, m12, m22);
    }
}
