namespace BenchSim.Season.Inputs;

/// <summary>Least and greatest value of an input that is thought possible.</summary>
/// <param name="Low">Least.</param>
/// <param name="High">Greatest; at least <paramref name="Low"/>.</param>
public readonly record struct InvestRange(double Low, double High);
