using BenchSim.Season.Values;

namespace BenchSim.Season.Air;

/// <summary>A rule of thumb of the trade, as a range.</summary>
/// <param name="Range">From the lowest figure to the highest.</param>
/// <param name="Source">Where they come from.</param>
public sealed record AirRule(AirRange Range, Provenance Source);
