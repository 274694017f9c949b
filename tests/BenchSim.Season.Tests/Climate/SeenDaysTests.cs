using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Climate;

/// <summary>What is known of a season's weather on a day.</summary>
public class SeenDaysTests
{
    // The season opens on Monday 1 March; every day is from 10 to 10 C unless it is known otherwise.
    private static readonly Scenario s_scenario = SmallSite.Scenario([SmallSite.Bench(9), SmallSite.Table(9)], []) with
    {
        Seen = new SeenWeather([Day(-1, 5), Day(0, 1), Day(2, 3), Day(4, 9)], [Day(2, 50), Day(3, 4), Day(4, 5), Day(6, 7)]),
    };

    // Of the three days before the fourth two were observed; the second is taken as normal. Then two days of forecast, and a gap.
    [Fact]
    public void Observed_days_then_the_forecast_up_to_a_gap()
    {
        var known = SeenDays.Of(s_scenario, SmallSite.Monday.AddDays(3));
        Assert.Equal([1, 10, 3, 4, 5], known.Days.Select(day => day.TminC));
        Assert.Equal(3, known.Observed);
        Assert.Equal([SmallSite.Monday.AddDays(1)], known.Lacking.ToArray());
    }

    [Fact]
    public void On_the_opening_day_nothing_is_over()
    {
        var known = SeenDays.Of(s_scenario with { Seen = SeenWeather.None }, SmallSite.Monday);
        Assert.Empty(known.Days);
        Assert.Empty(known.Lacking);
    }

    [Fact]
    public void Every_season_has_the_days_that_are_known_and_its_own_after_them()
    {
        var scenario = s_scenario with
        {
            Weather = new RecordedWeather(
                [.. Enumerable.Range(0, 730).Select(day => new DailyWeather(new DateOnly(2015, 1, 1).AddDays(day), day / 365, 20, 0))],
                null,
                "record"
            ),
            Known = SeenDays.Of(s_scenario, SmallSite.Monday.AddDays(3)),
        };
        var source = WeatherSource.Of(scenario, 120);
        var after = new HashSet<double>();
        for (var season = 0; season < 20; season++)
        {
            var weather = new SeasonWeather(120);
            source.Fill(7, season, weather);
            Assert.Equal([1, 10, 3, 4, 5], Enumerable.Range(0, 5).Select(weather.TminOf));
            after.Add(weather.TminOf(5));
        }

        Assert.Equal([0, 1], after.Order());
    }

    // The weather of the season is drawn on from what was seen: from a day of 40 C no season is at its usual the day after.
    [Fact]
    public void Generated_weather_goes_on_from_the_last_day_that_is_known()
    {
        var month = new MonthWeather
        {
            WetAfterDry = 0.3,
            WetAfterWet = 0.5,
            RainShape = 1,
            RainScaleMm = 5,
            TminWetC = 5,
            TminDryC = 5,
            TmaxWetC = 15,
            TmaxDryC = 15,
            TminSdC = 3,
            TmaxSdC = 3,
        };
        var model = new WeatherModel
        {
            Months = [.. Enumerable.Repeat(month, 12)],
            Residuals = ResidualModel.UnitedStatesAverage,
            LeastRangeC = 0.5,
            Source = "test",
        };
        var scenario = s_scenario with
        {
            Weather = new GeneratedWeather(model, null),
            Seen = new SeenWeather([new DailyWeather(SmallSite.Monday, 30, 40, 0)], []),
        };
        var today = SmallSite.Monday.AddDays(1);
        var weather = new SeasonWeather(120);
        var next = Enumerable
            .Range(0, 400)
            .Select(season =>
            {
                WeatherSource.Of(scenario with { Known = SeenDays.Of(scenario, today) }, 120).Fill(7, season, weather);
                Assert.Equal(40, weather.TmaxOf(0));
                return weather.TmaxOf(1);
            })
            .Average();

        // Scores of 25 / 3 each: 15 + 3 (0.567 + 0.086) 25 / 3 = 31.3. The mean of 400 is off by 3 x 0.781 / 20 = 0.12; the bounds lie five
        // times that away: an error chance below 1e-6.
        Assert.InRange(next, 30.6, 32);
    }

    private static DailyWeather Day(int day, double low) => new(SmallSite.Monday.AddDays(day), low, low + 10, 0);
}
