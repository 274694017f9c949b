using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>
/// The weather holds of docs/model.md section 7: what keeps grown trays from the hardening table and hardened ones from the field.
/// </summary>
internal static class WeatherHold
{
    /// <summary>
    /// Whether the weather keeps a crop from a table at the round of a day: some forecast night there, under cover where it is cold, is too
    /// cold.
    /// </summary>
    /// <param name="nightsC">Temperature of the night after the round, by day, where the table stands, degrees Celsius.</param>
    /// <param name="day">Day, 0 the first of the season.</param>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="hardenAboveC">Temperature every forecast night must reach, degrees Celsius.</param>
    public static bool FromTable(double[] nightsC, int day, SiteRules rules, double hardenAboveC)
    {
        for (var night = 0; night < rules.ForecastNights; night++)
        {
            if (UnderCover(nightsC[day + night], rules, hardenAboveC) < hardenAboveC)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Whether the weather keeps a crop from the field at the round of a day: a forecast night's own lowest, or the rain of the two days
    /// before.
    /// </summary>
    /// <param name="weather">Weather outdoors.</param>
    /// <param name="day">Day, 0 the first of the season.</param>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="fieldAboveC">Temperature every forecast night must reach, degrees Celsius.</param>
    public static bool FromField(SeasonWeather weather, int day, SiteRules rules, double fieldAboveC)
    {
        if (IsWet(weather, day, rules))
        {
            return true;
        }

        for (var night = 1; night <= rules.ForecastNights; night++)
        {
            if (weather.TminOf(day + night) < fieldAboveC)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether the field is too wet at the round of a day, whatever the crop.</summary>
    /// <param name="weather">Weather outdoors.</param>
    /// <param name="day">Day, 0 the first of the season.</param>
    /// <param name="rules">Rules of the site.</param>
    public static bool IsWet(SeasonWeather weather, int day, SiteRules rules) =>
        weather.RainOf(day - 2) + weather.RainOf(day - 1) > rules.WetLimitMm;

    /// <summary>A night's temperature on the table, degrees Celsius: the row cover goes on when the night is too cold to count.</summary>
    /// <param name="nightC">Temperature of the night without cover, degrees Celsius.</param>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="hardenAboveC">Temperature below which the cover goes on, degrees Celsius.</param>
    public static double UnderCover(double nightC, SiteRules rules, double hardenAboveC) =>
        nightC < hardenAboveC ? nightC + rules.CoverGainK : nightC;
}
