namespace BenchSim.Season.Heat;

/// <summary>
/// Radiation of the sun on level ground, by FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998). Hours are those of
/// the sun: it stands highest at 12.
/// </summary>
public static class Sun
{
    /// <summary>Share of the radiation above the air that a clear day lets through at sea level, eq. 36.</summary>
    public const double ClearSky = 0.75;

    /// <summary>Coefficient of eq. 50 inland, per square root of a kelvin.</summary>
    public const double Inland = 0.16;

    private const double SolarConstant = 0.0820;

    /// <summary>Declination of the sun, radians, eq. 24.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    public static double Declination(int dayOfYear) => 0.409 * Math.Sin((2 * Math.PI * dayOfYear / 365) - 1.39);

    /// <summary>Distance to the sun as a factor on its radiation, eq. 23.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    public static double InverseDistance(int dayOfYear) => 1 + (0.033 * Math.Cos(2 * Math.PI * dayOfYear / 365));

    /// <summary>Angle between noon and sunset, radians, eq. 25; 0 where the sun does not rise, pi where it does not set.</summary>
    /// <param name="latitude">Latitude, degrees, north positive, -90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    public static double SunsetAngle(double latitude, int dayOfYear) =>
        Math.Acos(Math.Clamp(-Math.Tan(Radians(latitude)) * Math.Tan(Declination(dayOfYear)), -1, 1));

    /// <summary>Sine of the sun's height above the horizon; below 0 at night.</summary>
    /// <param name="latitude">Latitude, degrees, north positive, -90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <param name="hour">Hour of the sun, 0 to 24.</param>
    public static double SineOfHeight(double latitude, int dayOfYear, double hour)
    {
        var (place, tilt) = (Radians(latitude), Declination(dayOfYear));
        return (Math.Sin(place) * Math.Sin(tilt)) + (Math.Cos(place) * Math.Cos(tilt) * Math.Cos(Math.PI * (hour - 12) / 12));
    }

    /// <summary>Radiation above the air in a day, megajoules a square metre, eq. 21.</summary>
    /// <param name="latitude">Latitude, degrees, north positive, -90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    public static double AboveTheAir(double latitude, int dayOfYear)
    {
        var (place, tilt, sunset) = (Radians(latitude), Declination(dayOfYear), SunsetAngle(latitude, dayOfYear));
        return 24
            * 60
            / Math.PI
            * SolarConstant
            * InverseDistance(dayOfYear)
            * ((sunset * Math.Sin(place) * Math.Sin(tilt)) + (Math.Cos(place) * Math.Cos(tilt) * Math.Sin(sunset)));
    }

    /// <summary>
    /// Radiation that reaches the ground in a day, from the range of its temperature (Hargreaves, eq. 50), at most that of a clear day
    /// (eq. 36); megajoules a square metre.
    /// </summary>
    /// <param name="coefficient">Coefficient of eq. 50: 0.16 inland, 0.19 on a coast.</param>
    /// <param name="tminC">Lowest temperature of the day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest temperature of the day, degrees Celsius.</param>
    /// <param name="aboveTheAir">Radiation above the air, megajoules a square metre.</param>
    public static double OnTheGround(double coefficient, double tminC, double tmaxC, double aboveTheAir) =>
        Math.Min(coefficient * Math.Sqrt(Math.Max(0, tmaxC - tminC)), ClearSky) * aboveTheAir;

    private static double Radians(double degrees) => Math.PI * degrees / 180;
}
