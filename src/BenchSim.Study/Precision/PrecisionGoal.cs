using System.Collections.Immutable;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Precision;

/// <summary>
/// How narrow the 95 % intervals are to be, and between how many seasons the answer is to be found (docs/precision.md). The play is looked
/// at after a few numbers of seasons that are fixed before the first is played, each twice the one before, and ends at the first where
/// every interval asked for is narrow enough: the fixed-width rule of Chow and Robbins (1965, Annals of Mathematical Statistics 36,
/// 457-462) with few looks instead of one a season.
/// </summary>
public sealed record PrecisionGoal
{
    /// <summary>Fewest seasons where nothing else is asked for.</summary>
    public const int UsualLeast = 200;

    /// <summary>Most seasons where nothing else is asked for.</summary>
    public const int UsualMost = 100_000;

    // The last digits of a half width are rounding.
    private const double Slack = 1e-12;

    /// <summary>
    /// Half the width of Wilson's interval of the chance that a season fits, above 0 and below 0.5; null when not asked for.
    /// </summary>
    public double? Chance { get; init; }

    /// <summary>Half the width of Student's interval of the mean late plant-days, above 0; null when not asked for.</summary>
    public double? LatePlantDays { get; init; }

    /// <summary>Fewest seasons, 2 or more.</summary>
    public int Least { get; init; } = UsualLeast;

    /// <summary>Most seasons, at least as many as the fewest.</summary>
    public int Most { get; init; } = UsualMost;

    /// <summary>
    /// The numbers of seasons after which the play is looked at, rising. Where the chance alone is asked for, the last is the smallest
    /// number at which its interval is narrow enough whatever share fits, or <see cref="Most"/> where that is smaller.
    /// </summary>
    public ImmutableArray<int> Looks()
    {
        var anchor = Chance is { } half ? Math.Max(Least, EnoughForAnyShare(half)) : Least;
        var looks = new SortedSet<int>();
        for (var size = anchor; size >= Least; size /= 2)
        {
            Add(size);
        }

        for (var size = anchor * 2; LatePlantDays is not null && size < Most; size *= 2)
        {
            Add(size);
        }

        if (LatePlantDays is not null || anchor > Most)
        {
            looks.Add(Most);
        }

        return [.. looks];

        void Add(double size)
        {
            if (Math.Ceiling(size) <= Most)
            {
                looks.Add((int)Math.Ceiling(size));
            }
        }
    }

    /// <summary>
    /// Smallest number of trials at which Wilson's 95 % interval is narrow enough for any share. It is widest at one half, where half its
    /// width is z / (2 sqrt(n + z^2)) with z = 1.96.
    /// </summary>
    /// <param name="halfWidth">Half the width, above 0 and below 0.5.</param>
    internal static double EnoughForAnyShare(double halfWidth)
    {
        var z = Confidence.NormalReach(Confidence.Usual);
        return Math.Max(1, Math.Ceiling((z * z * ((1 / (4 * halfWidth * halfWidth)) - 1)) - Slack));
    }

    /// <summary>True when the interval of the chance is as narrow as asked, or not asked for.</summary>
    public bool IsReached(Chance fits) => Chance is not { } half || (fits.High - fits.Low) / 2 <= half + Slack;

    /// <summary>True when the interval of late plant-days is as narrow as asked, or not asked for.</summary>
    public bool IsReached(Estimate latePlantDays) => LatePlantDays is not { } half || latePlantDays.HalfWidth <= half;
}
