using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>How much outside air leaks into a closed house.</summary>
/// <param name="Id">Id, as written in a scenario.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Low">Fewest changes of the air an hour.</param>
/// <param name="High">Most changes of the air an hour.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record AirTightness(string Id, string Name, double Low, double High, Provenance Source)
{
    /// <summary>Changes of the air an hour used when nothing else is said: the middle of the range.</summary>
    public double AirChanges => (Low + High) / 2;
}
