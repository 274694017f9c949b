namespace BenchSim.Season.Weather;

/// <summary>A weather model fitted to a record, and how well it does.</summary>
/// <param name="Model">The model.</param>
/// <param name="Report">How well the model reproduces the record.</param>
public sealed record FittedWeather(WeatherModel Model, WeatherFitReport Report);
