using BenchSim.Engine.Randomness;
using BenchSim.Season.Stands;

namespace BenchSim.Study.Learning;

/// <summary>
/// What counts teach of a share of a crop, such as its losses at potting up. Before anything is counted it has a beta law, worth as many
/// seeds or plants as the deviation of its log odds says. Where each plant is lost by itself, the counted ones are added to that law;
/// whatever else is seen enters by its chance at each share, on a grid.
/// </summary>
public sealed class ShareLesson
{
    private const double Least = 0.0005;
    private const double NearNone = 1e-12;
    private const int Points = 481;
    private const double Reach = 6;

    private readonly double _value;
    private readonly double[] _shares;
    private readonly double[] _logs;
    private int _seen;

    /// <summary>Begins with the value in force.</summary>
    /// <param name="value">The share, 0 to 1; kept off both ends by 0.0005.</param>
    /// <param name="deviation">Standard deviation of the log odds of what it may be, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share outside 0 to 1, or a deviation of 0 or less.</exception>
    public ShareLesson(double value, double deviation)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deviation);
        _value = value;
        var law = LawOf(value, deviation);
        _shares =
        [
            .. Enumerable
                .Range(0, Points)
                .Select(point => Math.Clamp(law.Quantile(Normal.Cumulative(Score(point))), NearNone, 1 - NearNone)),
        ];
        _logs = [.. Enumerable.Range(0, Points).Select(point => -Score(point) * Score(point) / 2)];
    }

    /// <summary>Seeds or plants that a value in force is worth, 1 or more.</summary>
    /// <param name="value">The share, 0 to 1.</param>
    /// <param name="deviation">Standard deviation of its log odds, above 0.</param>
    public static double Worth(double value, double deviation)
    {
        var kept = Kept(value);
        return Math.Max(1, 1 / (kept * (1 - kept) * deviation * deviation));
    }

    /// <summary>Takes a count in of which each one fares by itself.</summary>
    /// <param name="hits">Those counted, 0 or more.</param>
    /// <param name="of">All looked at, as many or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">More counted than looked at, or fewer than none.</exception>
    public void See(int hits, int of)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hits);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hits, of);
        See(share => (hits * Math.Log(share)) + ((of - hits) * Math.Log(1 - share)), of);
    }

    /// <summary>Takes in whatever was seen.</summary>
    /// <param name="logChance">Logarithm of its chance at a share strictly between 0 and 1, but for what is the same at all shares.</param>
    /// <param name="of">Seeds or plants looked at.</param>
    public void See(Func<double, double> logChance, int of)
    {
        ArgumentNullException.ThrowIfNull(logChance);
        _seen += of;
        for (var point = 0; point < Points; point++)
        {
            _logs[point] += logChance(_shares[point]);
        }
    }

    /// <summary>The share that it is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u) => Math.Clamp(Law().Quantile(u), 0, 1);

    /// <summary>What was seen teaches this.</summary>
    public Learned Lesson() => new(_value, _seen == 0 ? _value : Law().Mean, Quantile(0.05), Quantile(0.95), _seen);

    /// <summary>What a share may be before anything is counted.</summary>
    internal static BetaLaw LawOf(double value, double deviation) => BetaLaw.Of(Kept(value), Worth(value, deviation));

    private static double Kept(double value) => Math.Clamp(value, Least, 1 - Least);

    private static double Score(int point) => -Reach + (2 * Reach * point / (Points - 1));

    private GridLaw Law() => GridLaw.OfLogs(_shares, _logs);
}
