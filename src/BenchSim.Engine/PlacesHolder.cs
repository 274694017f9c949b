namespace BenchSim.Engine;

/// <summary>A process that holds places.</summary>
/// <param name="Process">Who.</param>
/// <param name="Count">How many.</param>
public sealed record PlacesHolder(string Process, int Count);
