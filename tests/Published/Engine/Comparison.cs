using System.Globalization;
using BenchSim.Engine.Randomness;

namespace Published.Engine;

/// <summary>
/// Simulated figures beside exact ones. Each figure is the mean of independent replications; it must lie within Student's interval around
/// the exact value. The chance that a right engine fails any comparison of the set is at most <see cref="FamilyError"/>, shared out evenly
/// (Bonferroni). The seeds are fixed, so a set either passes always or fails always.
/// </summary>
internal sealed class Comparison
{
    public const double FamilyError = 0.001;
    private readonly List<(string What, double Exact, double[] Values)> _rows = [];

    public int Count => _rows.Count;

    public void Add(string what, double exact, IEnumerable<double> values) => _rows.Add((what, exact, [.. values]));

    /// <summary>All figures lie in their intervals, and no interval is so wide that it proves nothing.</summary>
    /// <param name="widest">Widest half interval allowed, as a share of the exact value.</param>
    /// <param name="widestSmall">The same for small values, as it stands.</param>
    public void AssertAll(double widest, double widestSmall)
    {
        Assert.NotEmpty(_rows);
        var faults = new List<string>();
        foreach (var (what, exact, values) in _rows)
        {
            var mean = values.Average();
            var variance = values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1);
            var half = Student(1 - (FamilyError / (2 * _rows.Count)), values.Length - 1) * Math.Sqrt(variance / values.Length);
            var line = string.Create(CultureInfo.InvariantCulture, $"{what}: {mean:0.######} ± {half:0.######}, exactly {exact:0.######}");
            // The exact values are given to eight places or more.
            if (Math.Abs(mean - exact) > half + 1e-8)
            {
                faults.Add("off: " + line);
            }

            if (half > Math.Max(widest * Math.Abs(exact), widestSmall))
            {
                faults.Add("too wide: " + line);
            }
        }

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    /// <summary>
    /// Student's quantile from the normal one, by the Cornish-Fisher expansion (Abramowitz and Stegun 26.7.5). Good to 0.1 % from 30
    /// degrees of freedom on, which <see cref="StudentTests"/> checks.
    /// </summary>
    public static double Student(double u, double degrees)
    {
        var z = Normal.Quantile(u);
        var z3 = z * z * z;
        var z5 = z3 * z * z;
        var z7 = z5 * z * z;
        return z
            + ((z3 + z) / (4 * degrees))
            + (((5 * z5) + (16 * z3) + (3 * z)) / (96 * degrees * degrees))
            + (((3 * z7) + (19 * z5) + (17 * z3) - (15 * z)) / (384 * degrees * degrees * degrees));
    }
}
