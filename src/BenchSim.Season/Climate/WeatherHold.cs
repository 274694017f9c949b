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
    /// <param name="tableAboveC">Temperature every forecast night must reach, degrees Celsius.</param>
    public static bool FromTable(double[] nightsC, int day, SiteRules rules, double tableAboveC)
    {
        for (var night = 0; night < rules.ForecastNights; night++)
        {
            if (UnderCover(nightsC[day + night], rules, tableAboveC) < tableAboveC)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Whether the weather keeps a crop from the field at the round of a day: a forecast night under the cover of the field, or the rain of
    /// the two days before where the cover lets it in.
    /// </summary>
    /// <param name="weather">Weather outdoors.</param>
    /// <param name="day">Day, 0 the first of the season.</param>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="fieldAboveC">Temperature every forecast night must reach under the cover, degrees Celsius.</param>
    /// <param name="cover">What stands over the row in the field.</param>
    public static bool FromField(SeasonWeather weather, int day, SiteRules rules, double fieldAboveC, FieldCover cover)
    {
        if (IsWet(weather, day, rules) && !cover.KeepsRainOff())
        {
            return true;
        }

        var gainK = rules.FieldGainK(cover);
        for (var night = 1; night <= rules.ForecastNights; night++)
        {
            if (weather.TminOf(day + night) + gainK < fieldAboveC)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether the field is too wet at the round of a day, whatever the crop; not under a cover that keeps rain off.</summary>
    /// <param name="weather">Weather outdoors.</param>
    /// <param name="day">Day, 0 the first of the season.</param>
    /// <param name="rules">Rules of the site.</param>
    public static bool IsWet(SeasonWeather weather, int day, SiteRules rules) =>
        weather.RainOf(day - 2) + weather.RainOf(day - 1) > rules.WetLimitMm;

    /// <summary>
    /// A night's temperature on the table, degrees Celsius: the row cover goes on when the night is too cold to go out without.
    /// </summary>
    /// <param name="nightC">Temperature of the night without cover, degrees Celsius.</param>
    /// <param name="rules">Rules of the site.</param>
    /// <param name="tableAboveC">Temperature below which the cover goes on, degrees Celsius.</param>
    public static double UnderCover(double nightC, SiteRules rules, double tableAboveC) =>
        nightC < tableAboveC ? nightC + rules.CoverGainK : nightC;
}
