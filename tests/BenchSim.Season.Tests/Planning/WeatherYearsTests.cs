using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Planning;

public class WeatherYearsTests
{
    [Fact]
    public void A_record_gives_one_season_for_each_of_its_years_in_order()
    {
        var record = new RecordedWeather(
            [
                .. from year in Enumerable.Range(2015, 7)
                from day in Enumerable.Range(0, 30)
                select new DailyWeather(new DateOnly(year, 3, 1).AddDays(day), 5, 10, 0),
            ],
            null,
            "record.csv"
        );
        var source = new RecordedWeatherSource(record, new DateOnly(2027, 3, 1), 30);
        Assert.Equal([0, 1, 2, 3, 4, 5, 6], WeatherYears.Of(source, 3).Select(season => source.Which(3, season)));
    }

    [Fact]
    public void The_same_weather_every_day_is_one_year() =>
        Assert.Equal([0], WeatherYears.Of(new ConstantWeatherSource(new ConstantWeather(5, 10, 0), 30), 3));
}
