namespace BenchSim.Study.Results;

/// <summary>Fuel of one calendar month.</summary>
/// <param name="Month">First day of the month, or of the play.</param>
/// <param name="Fuel">Fuel over the seasons, in the unit the house's fuel is bought by.</param>
public readonly record struct MonthFuel(DateOnly Month, Estimate Fuel);
