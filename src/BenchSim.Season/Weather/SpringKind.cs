namespace BenchSim.Season.Weather;

/// <summary>What a spring, January to June, is compared by.</summary>
public enum SpringKind
{
    /// <summary>Day of the year of the last night at or below <see cref="WeatherStatistics.FrostC"/>.</summary>
    LastFrost,

    /// <summary>Day of the year of the last night at or below <see cref="WeatherStatistics.HardFrostC"/>.</summary>
    LastHardFrost,

    /// <summary>Nights of April below <see cref="WeatherStatistics.HardeningNightC"/>.</summary>
    ColdNightsOfApril,

    /// <summary>Nights of May below <see cref="WeatherStatistics.HardeningNightC"/>.</summary>
    ColdNightsOfMay,

    /// <summary>Mean temperature of March to May (of lowest and highest), degrees Celsius.</summary>
    MeanTemperature,
}
