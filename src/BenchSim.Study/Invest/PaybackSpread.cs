namespace BenchSim.Study.Invest;

/// <summary>
/// Years until the capital has come back, its worth at the end not counted; positive infinity where its life is too short.
/// </summary>
/// <param name="OfAverageYear">Years when every year brings the mean net benefit.</param>
/// <param name="Low">Years at the upper end of the interval of the mean net benefit; NaN for one season.</param>
/// <param name="High">Years at its lower end; NaN for one season.</param>
/// <param name="P10">Not exceeded in 10 of 100 lives.</param>
/// <param name="P50">Not exceeded in half the lives.</param>
/// <param name="P90">Not exceeded in 90 of 100 lives.</param>
public sealed record PaybackSpread(double OfAverageYear, double Low, double High, double P10, double P50, double P90);
