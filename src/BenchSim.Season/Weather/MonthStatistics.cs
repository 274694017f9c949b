namespace BenchSim.Season.Weather;

/// <summary>What a daily series shows in one calendar month, all years together. Wet means rain above 0.</summary>
public sealed record MonthStatistics
{
    /// <summary>Days counted.</summary>
    public required int Days { get; init; }

    /// <summary>Mean lowest temperature, degrees Celsius.</summary>
    public required double TminMeanC { get; init; }

    /// <summary>Mean highest temperature, degrees Celsius.</summary>
    public required double TmaxMeanC { get; init; }

    /// <summary>Sample standard deviation of the lowest temperature about the month's mean, kelvin.</summary>
    public required double TminSdC { get; init; }

    /// <summary>Sample standard deviation of the highest temperature about the month's mean, kelvin.</summary>
    public required double TmaxSdC { get; init; }

    /// <summary>Wet days.</summary>
    public required int WetDays { get; init; }

    /// <summary>Days whose yesterday is in the series and was dry.</summary>
    public required int AfterDry { get; init; }

    /// <summary>Wet days among <see cref="AfterDry"/>.</summary>
    public required int WetAfterDry { get; init; }

    /// <summary>Days whose yesterday is in the series and was wet.</summary>
    public required int AfterWet { get; init; }

    /// <summary>Wet days among <see cref="AfterWet"/>.</summary>
    public required int WetAfterWet { get; init; }

    /// <summary>Rain of all days together, millimetres.</summary>
    public required double RainMm { get; init; }

    /// <summary>Nights whose lowest temperature is below <see cref="WeatherStatistics.HardeningNightC"/>.</summary>
    public required int ColdNights { get; init; }

    /// <summary>Nights whose lowest temperature is at or below <see cref="WeatherStatistics.FrostC"/>.</summary>
    public required int FrostNights { get; init; }

    /// <summary>Share of wet days, 0 to 1; not a number without days.</summary>
    public double WetShare => (double)WetDays / Days;

    /// <summary>Share of wet days after a dry day (p01); not a number when there is none.</summary>
    public double ChanceAfterDry => (double)WetAfterDry / AfterDry;

    /// <summary>Share of wet days after a wet day (p11); not a number when there is none.</summary>
    public double ChanceAfterWet => (double)WetAfterWet / AfterWet;
}
