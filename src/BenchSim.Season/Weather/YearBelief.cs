namespace BenchSim.Season.Weather;

/// <summary>
/// What the days seen so far say of what the days of their calendar year have in common, y: a normal law of two, of mean m and precision P,
/// index 1 of the highest and 2 of the lowest temperature. Before any day it is the model's own: mean 0, variance 1, its correlation.
/// </summary>
/// <remarks>
/// A day's scores are x = sqrt(s) y + sqrt(1 - s) z, so z = a - b y with a = x / sqrt(1 - s), b = sqrt(s / (1 - s)); and z(d) - A z(d-1) is
/// normal with variance B B', for the first of a run of days z with that of the long run. Each is linear in y, so that precisions add.
/// </remarks>
internal struct YearBelief
{
    // A correlation of 1 has no precision.
    private const double MostCorrelation = 1 - 1e-9;

    private double _p11;
    private double _p12;
    private double _p22;
    private double _h1;
    private double _h2;

    /// <summary>The belief before any day.</summary>
    /// <param name="correlation">Correlation of the two, -1 to 1.</param>
    public YearBelief(double correlation)
    {
        var r = Math.Clamp(correlation, -MostCorrelation, MostCorrelation);
        var d = 1 - (r * r);
        (_p11, _p12, _p22) = (1 / d, -r / d, 1 / d);
    }

    /// <summary>Mean of the two.</summary>
    public readonly (double Max, double Min) Mean
    {
        get
        {
            var d = (_p11 * _p22) - (_p12 * _p12);
            return (((_p22 * _h1) - (_p12 * _h2)) / d, ((_p11 * _h2) - (_p12 * _h1)) / d);
        }
    }

    /// <summary>Variances and covariance of the two.</summary>
    public readonly (double Max, double Both, double Min) Variance
    {
        get
        {
            var d = (_p11 * _p22) - (_p12 * _p12);
            return (_p22 / d, -_p12 / d, _p11 / d);
        }
    }

    /// <summary>Takes in r = H y + e, e normal with a variance: what was seen, less what it would be without y.</summary>
    public void See(
        (double R1, double R2) r,
        (double H11, double H12, double H21, double H22) h,
        (double V11, double V12, double V22) variance
    )
    {
        var d = (variance.V11 * variance.V22) - (variance.V12 * variance.V12);
        var (q11, q12, q22) = (variance.V22 / d, -variance.V12 / d, variance.V11 / d);

        // G = H' Q, then P + G H and h + G r.
        var (g11, g12) = ((h.H11 * q11) + (h.H21 * q12), (h.H11 * q12) + (h.H21 * q22));
        var (g21, g22) = ((h.H12 * q11) + (h.H22 * q12), (h.H12 * q12) + (h.H22 * q22));
        _p11 += (g11 * h.H11) + (g12 * h.H21);
        _p12 += (g11 * h.H12) + (g12 * h.H22);
        _p22 += (g21 * h.H12) + (g22 * h.H22);
        _h1 += (g11 * r.R1) + (g12 * r.R2);
        _h2 += (g21 * r.R1) + (g22 * r.R2);
    }

    /// <summary>A draw of the two from two of the standard normal law.</summary>
    public readonly (double Max, double Min) Draw(double first, double second)
    {
        var (mean, variance) = (Mean, Variance);
        var l11 = Math.Sqrt(variance.Max);
        var l21 = variance.Both / l11;
        var l22 = Math.Sqrt(Math.Max(0, variance.Min - (l21 * l21)));
        return (mean.Max + (l11 * first), mean.Min + (l21 * first) + (l22 * second));
    }
}
