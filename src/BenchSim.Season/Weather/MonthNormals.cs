namespace BenchSim.Season.Weather;

/// <summary>Climate normals of one calendar month.</summary>
/// <param name="TminC">Mean lowest temperature of a day, degrees Celsius.</param>
/// <param name="TmaxC">Mean highest temperature of a day, degrees Celsius; at least <paramref name="TminC"/>.</param>
/// <param name="RainDays">Mean number of days with rain, 0 to the days of the month.</param>
/// <param name="RainMm">Mean rain of the month, millimetres; above 0 exactly when there are rain days.</param>
public readonly record struct MonthNormals(double TminC, double TmaxC, double RainDays, double RainMm)
{
    /// <summary>Standard deviation of the lowest temperature of a day about the month's mean, kelvin; null for the default.</summary>
    public double? TminSdC { get; init; }

    /// <summary>Standard deviation of the highest temperature of a day about the month's mean, kelvin; null for the default.</summary>
    public double? TmaxSdC { get; init; }
}
