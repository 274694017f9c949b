using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>Hourly temperatures outdoors and in a house (docs/model.md section 6). Hours of the day are 0 to 23.</summary>
public static class HouseAir
{
    private static readonly double[] DayShape = Shape(hour => Math.Cos(2 * Math.PI * (hour - 15) / 24));
    private static readonly double[] SunShape = Shape(hour => Math.Max(0, Math.Sin(Math.PI * (hour - 6) / 12)));

    /// <summary>Outdoor temperature at an hour, degrees Celsius: a cosine with its lowest point at 03:00 and its highest at 15:00.</summary>
    /// <param name="tminC">Lowest temperature of the day.</param>
    /// <param name="tmaxC">Highest temperature of the day.</param>
    /// <param name="hour">Hour of the day, 0 to 23.</param>
    public static double OutdoorC(double tminC, double tmaxC, int hour) => ((tmaxC + tminC) / 2) + ((tmaxC - tminC) / 2 * DayShape[hour]);

    /// <summary>Lift of the sun in a house at an hour, kelvin.</summary>
    /// <param name="dayLiftK">Greatest lift, at noon.</param>
    /// <param name="hour">Hour of the day, 0 to 23.</param>
    public static double SunLiftK(double dayLiftK, int hour) => dayLiftK * SunShape[hour];

    /// <summary>Air temperature in a house, degrees Celsius: not below the heating set-point, vented down to the vent set-point or the outdoors.</summary>
    /// <param name="house">The house.</param>
    /// <param name="outdoorC">Outdoor temperature.</param>
    /// <param name="hour">Hour of the day, 0 to 23.</param>
    public static double IndoorC(House house, double outdoorC, int hour)
    {
        ArgumentNullException.ThrowIfNull(house);
        var free = Math.Min(outdoorC + SunLiftK(house.DayLiftK, hour), Math.Max(house.VentC, outdoorC));
        return SetPointC(house, hour) is { } setPoint ? Math.Max(setPoint, free) : free;
    }

    /// <summary>Heating set-point at an hour, degrees Celsius: the day's from 06:00 to 18:00, else the night's; null in an unheated house.</summary>
    /// <param name="house">The house.</param>
    /// <param name="hour">Hour of the day, 0 to 23.</param>
    public static double? SetPointC(House house, int hour)
    {
        ArgumentNullException.ThrowIfNull(house);
        return hour is >= 6 and < 18 ? house.DayC ?? house.NightC : house.NightC;
    }

    private static double[] Shape(Func<int, double> at) => [.. Enumerable.Range(0, 24).Select(at)];
}
