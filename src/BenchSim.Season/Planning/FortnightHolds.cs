namespace BenchSim.Season.Planning;

/// <summary>Days of a fortnight on which the weather holds trays back.</summary>
/// <param name="First">First day of the fortnight.</param>
/// <param name="Days">Days of it: 14, fewer for the last.</param>
/// <param name="Mean">Mean number of such days a year.</param>
/// <param name="StandardDeviation">Standard deviation between years, days; 0 for one year.</param>
/// <param name="Years">Years counted.</param>
public readonly record struct FortnightHolds(DateOnly First, int Days, double Mean, double StandardDeviation, int Years);
