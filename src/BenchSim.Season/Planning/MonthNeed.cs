namespace BenchSim.Season.Planning;

/// <summary>Fuel a house needs in a calendar month, mean over the years.</summary>
/// <param name="First">First day of the month, or of the season.</param>
/// <param name="Units">Fuel, in the unit it is bought by, 0 or more.</param>
public readonly record struct MonthNeed(DateOnly First, double Units);
