using BenchSim.Season.Stands;

namespace BenchSim.Study.Learning;

/// <summary>
/// What counts teach of a share of a crop, such as its losses at potting up: a beta law, worth as many seeds or plants before anything is
/// counted as the deviation of its log odds says, with those counted added.
/// </summary>
public sealed class ShareLesson
{
    private const double Least = 0.0005;

    private readonly double _value;
    private readonly double _worth;
    private int _hits;
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
        _worth = Math.Max(1, 1 / (Kept * (1 - Kept) * deviation * deviation));
    }

    /// <summary>Seeds or plants that the value in force is worth, 1 or more.</summary>
    public double Worth => _worth;

    private double Kept => Math.Clamp(_value, Least, 1 - Least);

    private double Mean => ((Kept * _worth) + _hits) / (_worth + _seen);

    /// <summary>Takes a count in.</summary>
    /// <param name="hits">Those counted, 0 or more.</param>
    /// <param name="of">All looked at, as many or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">More counted than looked at, or fewer than none.</exception>
    public void See(int hits, int of)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hits);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hits, of);
        (_hits, _seen) = (_hits + hits, _seen + of);
    }

    /// <summary>The share that it is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u) => BetaLaw.Of(Mean, _worth + _seen).Quantile(u);

    /// <summary>What the counts teach.</summary>
    public Learned Lesson() => new(_value, _seen == 0 ? _value : Mean, Quantile(0.05), Quantile(0.95), _seen);
}
