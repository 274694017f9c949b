using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Climate;

/// <summary>Seasons from the years of a record: which years, which day of them, and what normal weather is.</summary>
public class RecordedWeatherTests
{
    [Fact]
    public void Only_years_that_cover_the_season_from_first_to_last_day_are_played()
    {
        // 1 March to 30 June 2027, 122 days. 2021 lacks 1 March, 2022 is whole, 2023 lacks 15 May, 2024 ends on 30 June, 2025 on 29 June.
        var record = Record(
            Days(new(2021, 3, 2), new(2021, 12, 31)),
            Days(new(2022, 1, 1), new(2022, 12, 31)),
            Days(new(2023, 1, 1), new(2023, 5, 14)),
            Days(new(2023, 5, 16), new(2023, 12, 31)),
            Days(new(2024, 1, 1), new(2024, 6, 30)),
            Days(new(2025, 3, 1), new(2025, 6, 29))
        );
        var source = new RecordedWeatherSource(record, new DateOnly(2027, 3, 1), 122);
        Assert.Equal([2022, 2024], source.Years.ToArray());
        Assert.Equal(2, source.Distinct);
    }

    [Fact]
    public void A_season_over_the_turn_of_the_year_takes_two_years_of_the_record()
    {
        // 1 November 2026 to 31 January 2027: the winters from 2021 and 2022, not the one that begins in 2023.
        var source = new RecordedWeatherSource(Record(Days(new(2021, 1, 1), new(2023, 12, 31))), new DateOnly(2026, 11, 1), 92);
        Assert.Equal([2021, 2022], source.Years.ToArray());
        var weather = Filled(source, 2);
        Assert.Equal(On(new(source.Years[source.Which(1, 2)], 11, 1)), weather.TminOf(0));
        Assert.Equal(On(new(source.Years[source.Which(1, 2)] + 1, 1, 31)), weather.TminOf(91));
    }

    [Fact]
    public void Every_day_of_a_season_is_the_day_of_the_year_drawn()
    {
        // The 30 days before the season come from the same year.
        var source = new RecordedWeatherSource(Record(Days(new(2021, 1, 1), new(2023, 12, 31))), new DateOnly(2027, 3, 1), 100);
        for (var season = 0; season < 20; season++)
        {
            var year = source.Years[source.Which(1, season)];
            var weather = Filled(source, season);
            Assert.Equal(On(new(year, 3, 1)), weather.TminOf(0));
            Assert.Equal(On(new(year, 3, 1)) + 100, weather.TmaxOf(0));
            Assert.Equal(On(new(year, 3, 1)) + 200, weather.RainOf(0));
            Assert.Equal(On(new DateOnly(year, 3, 1).AddDays(99)), weather.TminOf(99));
            Assert.Equal(On(new DateOnly(year, 3, 1).AddDays(-30)), weather.TminOf(-30));
        }
    }

    [Fact]
    public void All_years_are_drawn_alike()
    {
        // 3,000 seasons, three years: 1,000 each, standard deviation 26; five of them: error chance below 1 in 100,000.
        var source = new RecordedWeatherSource(Record(Days(new(2021, 1, 1), new(2023, 12, 31))), new DateOnly(2027, 3, 1), 100);
        var counts = Enumerable.Range(0, 3000).CountBy(season => source.Which(1, season)).OrderBy(count => count.Key).ToArray();
        Assert.Equal([0, 1, 2], counts.Select(count => count.Key));
        Assert.All(counts, count => Assert.InRange(count.Value, 870, 1130));
    }

    [Fact]
    public void A_fixed_year_is_the_only_one()
    {
        var source = new RecordedWeatherSource(
            Record(Days(new(2021, 1, 1), new(2023, 12, 31))) with
            {
                FixedYear = 2022,
            },
            new DateOnly(2027, 3, 1),
            100
        );
        Assert.Equal([2022], source.Years.ToArray());
        Assert.Equal(0, source.Which(1, 5));
        Assert.Equal(On(new(2022, 3, 1)), Filled(source, 5).TminOf(0));
    }

    [Fact]
    public void The_29th_of_February_takes_the_28th_where_the_year_has_none()
    {
        // 27 February to 2 March 2028 in 2023.
        var source = new RecordedWeatherSource(Record(Days(new(2023, 1, 1), new(2023, 12, 31))), new DateOnly(2028, 2, 27), 5);
        var weather = Filled(source, 0);
        Assert.Equal(
            [On(new(2023, 2, 27)), On(new(2023, 2, 28)), On(new(2023, 2, 28)), On(new(2023, 3, 1)), On(new(2023, 3, 2))],
            Enumerable.Range(0, 5).Select(weather.TminOf)
        );
    }

    [Fact]
    public void Days_before_the_record_begins_or_after_it_ends_take_its_nearest()
    {
        // A record of exactly the season: its first day stands for the 30 before, its last for the forecast past the end.
        var source = new RecordedWeatherSource(Record(Days(new(2022, 3, 1), new(2022, 3, 10))), new DateOnly(2027, 3, 1), 10);
        var weather = new SeasonWeather(12);
        source.Fill(1, 0, weather);
        Assert.Equal(On(new(2022, 3, 1)), weather.TminOf(-30));
        Assert.Equal(On(new(2022, 3, 1)), weather.TminOf(-1));
        Assert.Equal(On(new(2022, 3, 10)), weather.TminOf(9));
        Assert.Equal(On(new(2022, 3, 10)), weather.TminOf(11));
    }

    [Fact]
    public void Without_a_whole_year_there_is_none()
    {
        Assert.Equal(0, new RecordedWeatherSource(Record(), new DateOnly(2027, 3, 1), 100).Distinct);
        var source = new RecordedWeatherSource(Record(Days(new(2022, 3, 1), new(2022, 4, 1))), new DateOnly(2027, 3, 1), 100);
        Assert.Equal(0, source.Distinct);
        Assert.Throws<InvalidOperationException>(() => Filled(source, 0));
    }

    [Fact]
    public void Normal_weather_is_the_mean_within_a_week_of_the_date()
    {
        // 2021 and 2022 at 10 C, but 10 May 2021 at 40 C: within a week of it, from the 3rd to the 17th, 30 days average 11 C.
        var days = Days(new(2021, 1, 1), new(2022, 12, 31))
            .Select(day => day with { TminC = 10, TmaxC = 20, RainMm = 1 })
            .Select(day => day.Date == new DateOnly(2021, 5, 10) ? new DailyWeather(day.Date, 40, 50, 31) : day);
        var weather = Normal(Record([.. days]), new DateOnly(2027, 5, 1), 20);
        for (var day = 0; day < 20; day++)
        {
            var isNear = day is >= 2 and <= 16;
            Assert.Equal(
                (isNear ? 11 : 10, isNear ? 21 : 20, isNear ? 2 : 1),
                (Math.Round(weather.TminOf(day), 9), Math.Round(weather.TmaxOf(day), 9), Math.Round(weather.RainOf(day), 9))
            );
        }
    }

    [Fact]
    public void Normal_weather_goes_on_over_the_turn_of_the_year()
    {
        // 0 C but for 30 C on 31 December: the mean of a fortnight and a day on 31 December and 1 January is 2 C, as it is a week on either
        // side.
        var days = Days(new(2021, 1, 1), new(2021, 12, 31)).Select(day => day with { TminC = day.Date.DayOfYear == 365 ? 30 : 0 });
        var weather = Normal(Record([.. days]), new DateOnly(2026, 12, 20), 30);
        Assert.All(Enumerable.Range(4, 15), day => Assert.Equal(2, weather.TminOf(day), 1e-9));
        Assert.Equal((0, 0), (weather.TminOf(3), weather.TminOf(19)));
    }

    [Fact]
    public void Normal_weather_counts_the_days_there_are()
    {
        // A record of ten days from 1 March at 10 C: near its ends fewer days are averaged, and they are all at 10 C. Where there is none
        // it is 0.
        var weather = Normal(
            Record([.. Days(new(2021, 3, 1), new(2021, 3, 10)).Select(day => day with { TminC = 10 })]),
            new DateOnly(2027, 3, 1),
            30
        );
        Assert.Equal([10, 10, 10, 0], new[] { 0, 9, 16, 17 }.Select(weather.TminOf));
    }

    private static SeasonWeather Filled(RecordedWeatherSource source, int season)
    {
        var weather = new SeasonWeather(100);
        source.Fill(1, season, weather);
        return weather;
    }

    private static SeasonWeather Normal(RecordedWeather record, DateOnly opens, int days)
    {
        var weather = new SeasonWeather(days);
        new RecordedWeatherSource(record, opens, days).FillNormal(weather);
        return weather;
    }

    private static RecordedWeather Record(params IEnumerable<DailyWeather>[] parts) =>
        new([.. parts.SelectMany(part => part)], null, "record.csv");

    // A temperature that tells the date: the days since 2020.
    private static double On(DateOnly date) => date.DayNumber - new DateOnly(2020, 1, 1).DayNumber;

    private static IEnumerable<DailyWeather> Days(DateOnly first, DateOnly last)
    {
        for (var date = first; date <= last; date = date.AddDays(1))
        {
            yield return new DailyWeather(date, On(date), On(date) + 100, On(date) + 200);
        }
    }
}
