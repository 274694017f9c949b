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

    private static readonly double[] SwingOfHour = [.. Enumerable.Range(0, Hours).Select(hour => Math.Cos(2 * Math.PI * (hour - 15) / 24))];
    private static readonly double[] Sun = [.. Enumerable.Range(0, Hours).Select(hour => Math.Max(0, Math.Sin(Math.PI * (hour - 6) / 12)))];

    /// <summary>Share of the day's half range by which an hour is above its middle: cos(2 pi (h - 15) / 24).</summary>
    internal static ReadOnlySpan<double> Swing => SwingOfHour;

    /// <summary>True in the hours of the day set-point.</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    public static bool IsDay(int hour) => hour is >= DayStarts and < NightStarts;

    /// <summary>Outdoor air, degrees Celsius: the day's middle plus half its range times cos(2 pi (h - 15) / 24).</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    /// <param name="tminC">Lowest temperature of the day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest temperature of the day, degrees Celsius.</param>
    public static double OutdoorC(int hour, double tminC, double tmaxC) => ((tmaxC + tminC) / 2) + ((tmaxC - tminC) / 2 * Swing[hour]);

    /// <summary>Lift of the sun under cover, kelvin: the greatest lift times max(0, sin(pi (h - 6) / 12)).</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    /// <param name="dayLiftK">Greatest lift, at noon, kelvin, 0 or more.</param>
    public static double LiftK(int hour, double dayLiftK) => dayLiftK * Sun[hour];

    /// <summary>Air of a house, degrees Celsius: max(S, min(T + L, max(V, T))).</summary>
    /// <param name="outdoorC">Outdoor air T, degrees Celsius.</param>
    /// <param name="liftK">Lift of the sun L, kelvin.</param>
    /// <param name="heatingC">Heating set-point S, degrees Celsius; null in an unheated house.</param>
    /// <param name="ventC">Vent set-point V, degrees Celsius.</param>
    public static double InsideC(double outdoorC, double liftK, double? heatingC, double ventC)
    {
        var vented = Math.Min(outdoorC + liftK, Math.Max(ventC, outdoorC));
        return heatingC is { } heating ? Math.Max(heating, vented) : vented;
    }

    /// <summary>Air of a house at an hour, degrees Celsius.</summary>
    /// <param name="house">What makes its air.</param>
    /// <param name="hour">Hour, 0 to 23.</param>
    /// <param name="tminC">Lowest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest outdoor temperature of the day, degrees Celsius.</param>
    public static double InsideC(HouseAir house, int hour, double tminC, double tmaxC)
    {
        return InsideC(OutdoorC(hour, tminC, tmaxC), LiftK(hour, house.DayLiftK), SetPointC(house, hour), house.VentC);
    }

    /// <summary>Heating set-point of a house at an hour, degrees Celsius; null in an unheated house.</summary>
    /// <param name="house">What makes its air.</param>
    /// <param name="hour">Hour, 0 to 23.</param>
    public static double? SetPointC(HouseAir house, int hour) => IsDay(hour) ? house.DayC ?? house.NightC : house.NightC;

    /// <summary>The lowest air of a house in the night after a day's round, from 18:00 to 05:00, degrees Celsius.</summary>
    /// <param name="house">What makes its air.</param>
    /// <param name="evening">Lowest and highest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="morning">The same of the next day.</param>
    public static double LowestOfNightC(HouseAir house, (double TminC, double TmaxC) evening, (double TminC, double TmaxC) morning)
    {
        var lowest = double.PositiveInfinity;
        for (var hour = NightStarts; hour < Hours + DayStarts; hour++)
        {
            var (tmin, tmax) = hour < Hours ? evening : morning;
            lowest = Math.Min(lowest, InsideC(house, hour % Hours, tmin, tmax));
        }

        return lowest;
    }

    /// <summary>Kelvin-hours a heater must make up in a day: sum over h = 0..23 of max(0, S - T - L). A vent does not change
    /// them.</summary>
    /// <param name="tminC">Lowest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="dayLiftK">Greatest lift of the sun, kelvin, 0 or more.</param>
    /// <param name="nightC">Heating set-point of the night, degrees Celsius.</param>
    /// <param name="dayC">Heating set-point of the day, degrees Celsius.</param>
    public static double HeatingKelvinHours(double tminC, double tmaxC, double dayLiftK, double nightC, double dayC)
    {
        var (middle, half) = ((tmaxC + tminC) / 2, (tmaxC - tminC) / 2);
        var sum = 0.0;
        for (var hour = 0; hour < Hours; hour++)
        {
            sum += Math.Max(0, (IsDay(hour) ? dayC : nightC) - middle - (half * Swing[hour]) - (dayLiftK * Sun[hour]));
        }

        return sum;
    }

    /// <summary>Kelvin-hours a house's heater must make up in a day; 0 for an unheated house.</summary>
    /// <param name="house">What makes its air.</param>
    /// <param name="tminC">Lowest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest outdoor temperature of the day, degrees Celsius.</param>
    public static double HeatingKelvinHours(HouseAir house, double tminC, double tmaxC)
    {
        return house.NightC is { } night ? HeatingKelvinHours(tminC, tmaxC, house.DayLiftK, night, house.DayC ?? night) : 0;
    }
}
