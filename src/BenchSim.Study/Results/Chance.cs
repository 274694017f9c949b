namespace BenchSim.Study.Results;

/// <summary>A chance, counted over the seasons, with its 95 % Wilson score interval (Wilson 1927).</summary>
/// <param name="Hits">Seasons in which it happened.</param>
/// <param name="Seasons">Seasons played, 1 or more.</param>
/// <param name="Low">Lower end of the interval, 0 to 1.</param>
/// <param name="High">Upper end of the interval, 0 to 1.</param>
public readonly record struct Chance(int Hits, int Seasons, double Low, double High)
{
    /// <summary>The share of the seasons, 0 to 1.</summary>
    public double Share => (double)Hits / Seasons;
}
