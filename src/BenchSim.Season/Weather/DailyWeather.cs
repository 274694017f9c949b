namespace BenchSim.Season.Weather;

/// <summary>One day of outdoor weather.</summary>
/// <param name="Date">The day.</param>
/// <param name="TminC">Lowest temperature, degrees Celsius (taken to fall at 03:00).</param>
/// <param name="TmaxC">Highest temperature, degrees Celsius (taken to fall at 15:00).</param>
/// <param name="RainMm">Rain of the day, millimetres.</param>
public readonly record struct DailyWeather(DateOnly Date, double TminC, double TmaxC, double RainMm);
