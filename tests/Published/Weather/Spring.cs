using BenchSim.Season.Weather;

namespace Published.Weather;

/// <summary>What cold did in one spring, 1 January to 30 June.</summary>
internal readonly record struct Spring(int ColdNightsOfApril, int ColdNightsOfMay, int LastFrost)
{
    private const int Days = 181;
    private const int Springs = 12_000;

    public static List<Spring> OfRecord(DailyWeather[] days) =>
        [
            .. days.GroupBy(day => day.Date.Year)
                .OrderBy(year => year.Key)
                .Select(year => Of(year.Key, [.. year.Where(day => day.Date.Month <= 6).Select(day => day.TminC)], 0)),
        ];

    /// <summary>
    /// Generated springs of the model fitted to a place: as they are, and with nights three degrees colder and warmer (to show that the
    /// test can refuse).
    /// </summary>
    public static (List<Spring> True, List<Spring> Colder, List<Spring> Warmer) Drawn(string place)
    {
        var generator = new WeatherGenerator(WeatherFit.FitModel([.. DataFolder.Days(place)]));
        var key = WeatherGenerator.KeyOf(20);
        var (tmin, tmax, rain) = (new double[Days], new double[Days], new double[Days]);
        var springs = (True: new List<Spring>(Springs), Colder: new List<Spring>(Springs), Warmer: new List<Spring>(Springs));
        for (var season = 0; season < Springs; season++)
        {
            generator.Draw(key, season, new DateOnly(2001, 1, 1), tmin, tmax, rain);
            springs.True.Add(Of(2001, tmin, 0));
            springs.Colder.Add(Of(2001, tmin, -3));
            springs.Warmer.Add(Of(2001, tmin, 3));
        }

        return springs;
    }

    private static Spring Of(int year, double[] nights, double shift)
    {
        var april = new DateOnly(year, 4, 1).DayOfYear - 1;
        return new Spring(
            Cold(nights.AsSpan(april, 30), WeatherStatistics.HardeningNightC - shift),
            Cold(nights.AsSpan(april + 30, 31), WeatherStatistics.HardeningNightC - shift),
            Array.FindLastIndex(nights, night => night + shift <= WeatherStatistics.FrostC) + 1
        );
    }

    private static int Cold(ReadOnlySpan<double> nights, double threshold)
    {
        var count = 0;
        foreach (var night in nights)
        {
            count += night < threshold ? 1 : 0;
        }

        return count;
    }
}
