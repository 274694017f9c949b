namespace BenchSim.Season.Heat;

/// <summary>
/// A day hour by hour (docs/model.md section 6): outdoors a cosine with its highest at 15:00 and lowest at 03:00; under cover the lift of
/// the sun, the heater and the vents. Hours are 0 to 23, each for the instant it names. Day is 06:00 to 18:00 (hours 6 to 17), night the
/// rest.
/// </summary>
public static class HourlyClimate
{
    /// <summary>Hours of a day.</summary>
    public const int Hours = 24;

    /// <summary>First hour of the day set-point.</summary>
    public const int DayStarts = 6;

    /// <summary>First hour of the night set-point.</summary>
    public const int NightStarts = 18;

    private static readonly double[] s_swingOfHour =
    [
        .. Enumerable.Range(0, Hours).Select(hour => Math.Cos(2 * Math.PI * (hour - 15) / 24)),
    ];
    private static readonly double[] s_sun =
    [
        .. Enumerable.Range(0, Hours).Select(hour => Math.Max(0, Math.Sin(Math.PI * (hour - 6) / 12))),
    ];

    /// <summary>Share of the day's half range by which an hour is above its middle: cos(2 pi (h - 15) / 24).</summary>
    internal static ReadOnlySpan<double> Swing => s_swingOfHour;

    /// <summary>True in the hours of the day set-point.</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    public static bool IsDay(int hour) => hour is >= DayStarts and < NightStarts;

    /// <summary>Lift of the sun under cover, kelvin: the greatest lift times max(0, sin(pi (h - 6) / 12)).</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    /// <param name="dayLiftK">Greatest lift, at noon, kelvin, 0 or more.</param>
    public static double LiftK(int hour, double dayLiftK) => dayLiftK * s_sun[hour];
}
