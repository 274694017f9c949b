using BenchSim.Folder.Faults;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Folder.Site;

/// <summary>Tells degrees Celsius that were read as Fahrenheit.</summary>
internal static class TemperatureUnit
{
    // No place with a plan for the field has a year without a day this warm; a Celsius record read as Fahrenheit stays below it up to 59 C.
    private const double ColdestSummerC = 15;

    private const int DaysOfYear = 365;

    /// <summary>
    /// What is wrong with the unit of a record's temperatures; null when nothing is, or the record is shorter than a year.
    /// </summary>
    /// <param name="days">Days of the record.</param>
    /// <param name="units">Units in which temperatures were read.</param>
    public static string? Problem(IReadOnlyCollection<DailyWeather> days, UnitSystem units)
    {
        if (units != UnitSystem.Imperial || days.Count < DaysOfYear)
        {
            return null;
        }

        var warmest = days.Max(day => day.TmaxC);
        return warmest < ColdestSummerC
            ? $"read as Fahrenheit, the warmest day of this record has {Words.Temperature(warmest, UnitSystem.Imperial)}; it looks "
                + "like Celsius"
            : null;
    }
}
