using System.Collections.Immutable;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Study.Trust;

/// <summary>What hangs on the values of a plan that may be wrong.</summary>
public sealed record TrustResult
{
    internal const int FitsAt = 0;
    internal const int LateAt = 1;
    internal const int InTimeAt = 2;

    /// <summary>A value that moves the seasons that fit by less than this, wrong alone, is not worth measuring first.</summary>
    private const double LeastSwing = 0.02;

    // Nor one that moves a smaller share of the wanted plants.
    private const double LeastPlants = 0.01;

    /// <summary>The plan.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>How much was played.</summary>
    public required TrustOptions Options { get; init; }

    /// <summary>The seasons that fit at the values given: the figure of <c>run</c>.</summary>
    public required Chance GivenFits { get; init; }

    /// <summary>The values, in the order of <see cref="ValuesInDoubt"/>.</summary>
    public required ImmutableArray<TrustValue> Values { get; init; }

    /// <summary>
    /// What was read off the seasons: those that fit first, then late plant-days, plants in time, the worst day of each space.
    /// </summary>
    public required ImmutableArray<TrustRange> Ranges { get; init; }

    /// <summary>What groups of values do together with all others; empty where no value is in doubt.</summary>
    public required ImmutableArray<TrustGroup> Groups { get; init; }

    /// <summary>What the values do to the choice of a variant; null where none was asked about.</summary>
    public TrustChoice? Choice { get; init; }

    /// <summary>Seasons that were played in all.</summary>
    public required long SeasonsPlayed { get; init; }

    /// <summary>The seasons that fit.</summary>
    public TrustRange Fits => Ranges[FitsAt];

    /// <summary>Late plant-days.</summary>
    public TrustRange LatePlantDays => Ranges[LateAt];

    /// <summary>The values, those first that move most what <see cref="Decides"/> when each is wrong alone.</summary>
    public IEnumerable<TrustValue> InOrder =>
        IsFitStill ? Values.OrderByDescending(value => value.Swing(InTimeAt)).ThenBy(value => value.Number) : Ordered(Values);

    /// <summary>
    /// Whether the plan fits in all seasons or in none whatever the values: then plants in time say what hangs on them.
    /// </summary>
    public bool IsFitStill => Fits.Low.Equals(Fits.High) && Values.All(value => value.FitsSwing < LeastSwing);

    /// <summary>The measure that says what hangs on the values: the seasons that fit, else plants in time.</summary>
    public TrustRange Decides => Ranges[DecidesAt];

    /// <summary>Its number.</summary>
    public int DecidesAt => IsFitStill ? InTimeAt : FitsAt;

    /// <summary>The values that are worth measuring first.</summary>
    public IEnumerable<TrustValue> First => InOrder.Where(value => value.Swing(DecidesAt) >= Least);

    private double Least => IsFitStill ? LeastPlants * Plan.Batches.Sum(batch => (double)batch.Order.Plants) : LeastSwing;

    internal static IEnumerable<TrustValue> Ordered(ImmutableArray<TrustValue> values) =>
        values.OrderByDescending(value => value.FitsSwing).ThenByDescending(value => value.Swing(LateAt)).ThenBy(value => value.Number);
}

/// <summary>A figure over the ranges of the values.</summary>
/// <param name="Measure">What is read.</param>
/// <param name="AsGiven">Its mean at the values given.</param>
/// <param name="Low">Below it lie 5 % of the sets of values.</param>
/// <param name="Middle">Half of them lie below it.</param>
/// <param name="High">Above it lie 5 %.</param>
/// <param name="Widths">What values and luck each add to how seasons differ.</param>
public sealed record TrustRange(TrustMeasure Measure, double AsGiven, double Low, double Middle, double High, TwoWidths Widths)
{
    internal static TrustRange Of(TrustMeasure measure, double asGiven, double[] means, TwoWidths widths)
    {
        double[] sorted = [.. means.Order()];
        return new TrustRange(measure, asGiven, At(0.05), At(0.5), At(0.95), widths);

        // The nearest of the sets.
        double At(double share) => sorted[(int)Math.Round(share * (sorted.Length - 1))];
    }
}

/// <summary>What one value does.</summary>
/// <param name="Number">Its number among the values.</param>
/// <param name="Value">The value.</param>
/// <param name="Given">For each measure its mean at the values given, in the seasons of the screening.</param>
/// <param name="AtLow">For each measure its mean where this value alone is at the 5 % of its range.</param>
/// <param name="AtHigh">The same at the 95 %.</param>
/// <param name="Shares">For each measure the share of the variance that the value makes by itself; null where others move it more.</param>
public sealed record TrustValue(
    int Number,
    DoubtfulValue Value,
    ImmutableArray<double> Given,
    ImmutableArray<double> AtLow,
    ImmutableArray<double> AtHigh,
    ImmutableArray<ShareEstimate?> Shares
)
{
    /// <summary>How far the share of seasons that fit moves over the range of the value.</summary>
    public double FitsSwing => Swing(TrustResult.FitsAt);

    /// <summary>How far a measure moves over the range of the value.</summary>
    /// <param name="measure">Number of the measure.</param>
    public double Swing(int measure)
    {
        var (given, low, high) = (Given[measure], AtLow[measure], AtHigh[measure]);
        return Math.Max(given, Math.Max(low, high)) - Math.Min(given, Math.Min(low, high));
    }
}

/// <summary>What a group of values does together with all others.</summary>
/// <param name="Group">The group.</param>
/// <param name="Values">Number of its values.</param>
/// <param name="Sets">Sets in which it was changed.</param>
/// <param name="Fits">Its total share of the variance of the seasons that fit.</param>
/// <param name="LatePlantDays">Its total share of the variance of late plant-days.</param>
public sealed record TrustGroup(DoubtGroup Group, int Values, int Sets, ShareEstimate Fits, ShareEstimate LatePlantDays);

/// <summary>What values do to a choice between the plan as it is and a variant.</summary>
/// <param name="Variant">Name of the variant.</param>
/// <param name="Plants">In plants more in time.</param>
/// <param name="Money">
/// In money a year, after what the variant costs to build and to run; null where its terms are not given. Where it is there, it decides.
/// </param>
public sealed record TrustChoice(string Variant, ChoiceFigures Plants, ChoiceFigures? Money)
{
    /// <summary>The figures that decide.</summary>
    public ChoiceFigures Decides => Money ?? Plants;
}

/// <summary>What values do to a choice, in one unit.</summary>
/// <param name="GainAsGiven">Gain of the variant at the values given.</param>
/// <param name="Gain">Gain of the variant, mean over the sets of values.</param>
/// <param name="Changes">Share of the sets in which the other choice is the better one.</param>
/// <param name="WorthOfAll">Gain for who knows all values before choosing.</param>
/// <param name="Worth">Values whose knowing is worth something, those worth most first.</param>
public sealed record ChoiceFigures(
    double GainAsGiven,
    double Gain,
    double Changes,
    double WorthOfAll,
    ImmutableArray<(DoubtfulValue Value, ShareEstimate Gain)> Worth
);
