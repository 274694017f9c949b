namespace BenchSim.Season.Weather;

/// <summary>Nights below a threshold in a fortnight.</summary>
/// <param name="First">First day of the fortnight.</param>
/// <param name="Days">Days of it: 14, fewer for the last.</param>
/// <param name="ThresholdC">Threshold, degrees Celsius; a night counts when its lowest temperature is below it.</param>
/// <param name="Mean">Mean number of such nights a year.</param>
/// <param name="StandardDeviation">Standard deviation between years, nights; 0 for one year.</param>
/// <param name="Years">Years counted.</param>
public readonly record struct FortnightNights(
    DateOnly First,
    int Days,
    double ThresholdC,
    double Mean,
    double StandardDeviation,
    int Years
);
