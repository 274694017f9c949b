namespace BenchSim.Study.Results;

/// <summary>A whole number on one day, over the seasons.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="P10">Tenth percentile.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">Ninetieth percentile.</param>
/// <param name="P95">Ninety-fifth percentile.</param>
/// <param name="Most">Largest.</param>
public readonly record struct DaySpread(double Mean, int P10, int P50, int P90, int P95, int Most);
