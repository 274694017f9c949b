namespace BenchSim.Season.Air;

/// <summary>From the lowest figure that sources give to the highest.</summary>
/// <param name="Low">Lowest.</param>
/// <param name="High">Highest; the lowest again where the sources agree.</param>
public readonly record struct AirRange(double Low, double High)
{
    /// <summary>Both ends multiplied.</summary>
    /// <param name="factor">By what, 0 or more.</param>
    public AirRange Times(double factor) => new(Low * factor, High * factor);
}
