using System.Globalization;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Folder.Site;

/// <summary>
/// Tells a record of rain that is read in the wrong unit: 8 mm taken for 8 in is a flood, 0.3 in taken for 0.3 mm a drizzle.
/// </summary>
internal static class RainUnit
{
    private const int DaysOfYear = 365;

    // The wettest places on earth have some 12,000 mm in a year, and none of them grows in trays for the field. 400 mm read as inches are
    // 10,160 mm.
    private const double WettestYearMm = 10_000;

    // A year below 80 mm is a desert's, and a desert has no 60 wet days; 0.7 in read as millimetres are 0.7 mm.
    private const double DriestYearMm = 80;
    private const double DriestDayMm = 0.7;
    private const double FewWetDays = 60;

    /// <summary>What is wrong with the unit of a record's rain; null when nothing is, or the record is shorter than a year.</summary>
    /// <param name="days">Days of the record.</param>
    /// <param name="units">Units in which rain was read.</param>
    public static string? Problem(IReadOnlyCollection<DailyWeather> days, UnitSystem units)
    {
        if (days.Count < DaysOfYear)
        {
            return null;
        }

        var years = days.Count / 365.25;
        var rain = days.Sum(day => day.RainMm) / years;
        var wetDays = days.Count(day => day.RainMm > 0) / years;
        var wetDay = wetDays > 0 ? rain / wetDays : 0;
        return units switch
        {
            UnitSystem.Imperial when rain > WettestYearMm =>
                $"read as inches, this record has {Whole(rain / 25.4)} in of rain in a mean year; it looks like millimetres",
            UnitSystem.Metric when rain < DriestYearMm && wetDay < DriestDayMm && wetDays >= FewWetDays =>
                $"read as millimetres, this record has {Whole(rain)} mm of rain in a mean year, on {Whole(wetDays)} days; it looks "
                    + "like inches",
            _ => null,
        };
    }

    private static string Whole(double number) => Math.Round(number).ToString("0", CultureInfo.InvariantCulture);
}
