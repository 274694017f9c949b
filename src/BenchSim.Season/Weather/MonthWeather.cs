namespace BenchSim.Season.Weather;

/// <summary>What the weather generator knows of one calendar month.</summary>
public sealed record MonthWeather
{
    /// <summary>Chance of rain on a day after a dry day, 0 to 1.</summary>
    public required double WetAfterDry { get; init; }

    /// <summary>Chance of rain on a day after a wet day, 0 to 1.</summary>
    public required double WetAfterWet { get; init; }

    /// <summary>Shape of the gamma distribution of rain on a wet day, above 0.</summary>
    public required double RainShape { get; init; }

    /// <summary>Scale of the gamma distribution of rain on a wet day, millimetres, above 0. Mean rain of a wet day is shape times
    /// scale.</summary>
    public required double RainScaleMm { get; init; }

    /// <summary>Mean lowest temperature of wet days, degrees Celsius.</summary>
    public required double TminWetC { get; init; }

    /// <summary>Mean lowest temperature of dry days, degrees Celsius.</summary>
    public required double TminDryC { get; init; }

    /// <summary>Mean highest temperature of wet days, degrees Celsius.</summary>
    public required double TmaxWetC { get; init; }

    /// <summary>Mean highest temperature of dry days, degrees Celsius.</summary>
    public required double TmaxDryC { get; init; }

    /// <summary>Standard deviation of the lowest temperature about the seasonal curve, kelvin, above 0.</summary>
    public required double TminSdC { get; init; }

    /// <summary>Standard deviation of the highest temperature about the seasonal curve, kelvin, above 0.</summary>
    public required double TmaxSdC { get; init; }

    /// <summary>Law of the residual of the lowest temperature; the normal law where nothing else is known.</summary>
    public ResidualShape TminShape { get; init; } = ResidualShape.Normal;

    /// <summary>Law of the residual of the highest temperature; the normal law where nothing else is known.</summary>
    public ResidualShape TmaxShape { get; init; } = ResidualShape.Normal;

    /// <summary>Share of the variance of the lowest temperature's scores that the days of a calendar year have in common, 0 to below
    /// 1.</summary>
    public double TminYearShare { get; init; }

    /// <summary>Share of the variance of the highest temperature's scores that the days of a calendar year have in common, 0 to below
    /// 1.</summary>
    public double TmaxYearShare { get; init; }

    /// <summary>Share of wet days in the long run of this month's chances: p01 / (1 + p01 - p11).</summary>
    public double WetShare
    {
        get
        {
            var leave = 1 + WetAfterDry - WetAfterWet;
            return leave > 0 ? WetAfterDry / leave : 0.5;
        }
    }
}
