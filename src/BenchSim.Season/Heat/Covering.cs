using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>What a face of a house is made of.</summary>
/// <param name="Id">Id, as written in a scenario.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="UValue">Heat let through, watts a square metre and kelvin.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Light">Share of the light that the clean new sheet lets through, 0 to 1.</param>
/// <param name="LightSource">Where that comes from.</param>
public sealed record Covering(string Id, string Name, double UValue, Provenance Source, double Light, Provenance LightSource);
