namespace BenchSim.Study.Trust;

/// <summary>A share of a variance, with its interval.</summary>
/// <param name="Share">The share; 0 to 1 where nothing is left to chance, and a little outside where it is.</param>
/// <param name="Low">Low end of the 90 % interval by the bootstrap.</param>
/// <param name="High">High end.</param>
public readonly record struct ShareEstimate(double Share, double Low, double High)
{
    // An interval that is wider than this says nothing that one could act on.
    private const double Widest = 0.25;

    /// <summary>Whether it is above nothing.</summary>
    public bool IsAboveNothing => Low > 0;

    /// <summary>Whether it is clear: above nothing, and in an interval that is not too wide.</summary>
    public bool IsClear => IsAboveNothing && High - Low <= Widest;
}
