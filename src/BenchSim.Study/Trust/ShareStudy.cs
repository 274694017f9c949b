using System.Collections.Immutable;

namespace BenchSim.Study.Trust;

/// <summary>Works out first-order shares over one sample of sets.</summary>
/// <param name="sets">The sets: a chance for each value.</param>
/// <param name="seed">Seed of the resampling.</param>
internal sealed class ShareStudy(double[][] sets, ulong seed)
{
    // Values whose shares are worked out, for each measure: those that move it most. Chance alone gives some of many a large share.
    private const int Most = 12;

    private readonly int _parts = FirstShares.Parts(sets.Length);

    /// <summary>Resampling of the sets.</summary>
    public Bootstrap Resampled { get; } = new(sets.Length, seed);

    /// <summary>The sets.</summary>
    public double[][] Sets => sets;

    /// <summary>The numbers of all sets.</summary>
    public int[] All { get; } = [.. Enumerable.Range(0, sets.Length)];

    /// <summary>Parts that the range of a value is cut into.</summary>
    public int Parts => _parts;

    /// <summary>The part of its range in which each set has a value.</summary>
    /// <param name="value">Number of the value.</param>
    public int[] PartsOf(int value) => FirstShares.PartsOf(sets, value, _parts);

    /// <summary>Shares of a value, one a measure; null for those that others move more.</summary>
    /// <param name="value">The value.</param>
    /// <param name="all">All values.</param>
    /// <param name="means">For each measure what each set brought.</param>
    public ImmutableArray<ShareEstimate?> Of(TrustValue value, ImmutableArray<TrustValue> all, double[][] means)
    {
        var part = PartsOf(value.Number);
        return [.. Enumerable.Range(0, means.Length).Select(Share)];

        ShareEstimate? Share(int measure)
        {
            var isAmongFirst = value.Swing(measure) > 0 && all.Count(other => other.Swing(measure) > value.Swing(measure)) < Most;
            return isAmongFirst ? Resampled.Of(drawn => FirstShares.Of(part, means[measure], _parts, drawn)) : null;
        }
    }
}
