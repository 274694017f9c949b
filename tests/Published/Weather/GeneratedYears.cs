using BenchSim.Season.Weather;

namespace Published.Weather;

/// <summary>A long run of generated days from 1 January 2001, seed 20, one run for all tests of a city.</summary>
internal static class GeneratedYears
{
    private static readonly Dictionary<string, Lazy<DailyWeather[]>> s_runs = new(StringComparer.Ordinal)
    {
        ["Seattle"] = new(() => Draw("Seattle", 1000)),
        ["New York"] = new(() => Draw("New York", 1000)),
    };

    private static readonly Dictionary<string, Lazy<WeatherStatistics>> s_figures = new(StringComparer.Ordinal)
    {
        ["Seattle"] = new(() => WeatherStatistics.Of(Of("Seattle"))),
        ["New York"] = new(() => WeatherStatistics.Of(Of("New York"))),
    };

    public static DailyWeather[] Of(string place) => s_runs[place].Value;

    public static WeatherStatistics StatisticsOf(string place) => s_figures[place].Value;

    private static DailyWeather[] Draw(string place, int years)
    {
        var model = WeatherFit.FitModel([.. DataFolder.Days(place)]);
        var first = new DateOnly(2001, 1, 1);
        var count = first.AddYears(years).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        new WeatherGenerator(model).Draw(20, 0, first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }
}
