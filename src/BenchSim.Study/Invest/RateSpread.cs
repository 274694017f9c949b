namespace BenchSim.Study.Invest;

/// <summary>
/// Internal rates of return. Where there is no rate, because the money never comes back, the figure is negative infinity; where there is
/// none because nothing is ever lost, it is positive infinity. Where flows have several, the greatest counts: above it the money never
/// pays.
/// </summary>
/// <param name="OfAverageYear">Rate when every year brings the mean net benefit.</param>
/// <param name="Low">Rate at the lower end of the interval of the mean net benefit; NaN for one season.</param>
/// <param name="High">Rate at its upper end; NaN for one season.</param>
/// <param name="P10">Not exceeded in 10 of 100 lives.</param>
/// <param name="P50">Not exceeded in half the lives.</param>
/// <param name="P90">Not exceeded in 90 of 100 lives.</param>
/// <param name="LivesWithout">Lives that have no rate.</param>
/// <param name="LivesWithSeveral">Lives that have several.</param>
public sealed record RateSpread(
    double OfAverageYear,
    double Low,
    double High,
    double P10,
    double P50,
    double P90,
    int LivesWithout,
    int LivesWithSeveral
);
