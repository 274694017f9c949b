using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Climate;

/// <summary>Puts together what is known of a season's weather on a day (docs/model.md section 10).</summary>
public static class SeenDays
{
    /// <summary>
    /// The days of the season up to the day before, as observed or else normal, and from the day on as many as are forecast without a gap.
    /// </summary>
    /// <param name="scenario">Scenario, with what was seen of its weather.</param>
    /// <param name="today">The day.</param>
    public static KnownDays Of(Scenario scenario, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var opens = scenario.Window.Opens;
        var past = today.DayNumber - opens.DayNumber;
        var normal = new SeasonWeather(past + 1);
        WeatherSource.Of(scenario with { Known = null }, past + 1).FillNormal(normal);
        var observed = ByDate(scenario.Seen.Observed);
        var days = ImmutableArray.CreateBuilder<DailyWeather>();
        var lacking = ImmutableArray.CreateBuilder<DateOnly>();
        for (var day = 0; day < past; day++)
        {
            var date = opens.AddDays(day);
            if (!observed.TryGetValue(date, out var known))
            {
                known = new DailyWeather(date, normal.TminOf(day), normal.TmaxOf(day), normal.RainOf(day));
                lacking.Add(date);
            }

            days.Add(known);
        }

        var forecast = ByDate(scenario.Seen.Forecast);
        for (var date = today; forecast.TryGetValue(date, out var known); date = date.AddDays(1))
        {
            days.Add(known);
        }

        return new KnownDays(days.ToImmutable(), past) { Lacking = lacking.ToImmutable() };
    }

    private static Dictionary<DateOnly, DailyWeather> ByDate(ImmutableArray<DailyWeather> days) => days.ToDictionary(day => day.Date);
}
