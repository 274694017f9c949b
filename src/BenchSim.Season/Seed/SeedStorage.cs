namespace BenchSim.Season.Seed;

/// <summary>How seed is kept.</summary>
/// <param name="MoisturePercent">Moisture of the seed, percent of its fresh weight, above 0 and below 30. The constants were measured in
/// sealed packets of about 5 to 15 %.</param>
/// <param name="TemperatureC">Temperature, degrees Celsius, -20 to 50.</param>
public readonly record struct SeedStorage(double MoisturePercent, double TemperatureC);
