using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Climate;

/// <summary>
/// The climate of a season by hand. Outdoors it is 10 C; the main house is kept at 20 C, the cold one not at all, neither has sun; the
/// medium is 2 K below the air; mats of 25 and 22 C. Two laws of emergence and of growth. The season opens on 31 March.
/// </summary>
public class SeasonClimateTests
{
    private const int Days = 5;
    private const int ForecastNights = 2;

    private static readonly Scenario s_site = Scenario(
        [Mat(4) with { Id = "hot", MatC = 25 }, Mat(4) with { Id = "warm", MatC = 22 }, Bench(9), Bench(9, "cold-bench", "cold"), Table(9)],
        [],
        new SiteRules
        {
            MediumOffsetK = -2.0000001,
            Light = new SiteRules().Light.SetItem(2, 0.5),
            ForecastNights = ForecastNights,
        },
        [Crop("a"), Crop("b") with { EmergeBaseC = 5, EmergeOptimumC = 20, EmergeCeilingC = 35, GrowthBaseC = 12, GrowthCapC = 18 }]
    ) with
    {
        Window = new SeasonWindow(new DateOnly(2027, 3, 31), new DateOnly(2027, 6, 30)),
        Houses =
        [
            new House
            {
                Id = "main",
                Name = "Main",
                NightC = 20,
                DayC = 20,
                VentC = 20,
                DayLiftK = 0,
            },
            new House
            {
                Id = "cold",
                Name = "Cold",
                VentC = 40,
                DayLiftK = 0,
            },
        ],
    };

    private readonly HeatSlots _slots = new();
    private readonly ClimateLayout _layout;

    public SeasonClimateTests() => _layout = new ClimateLayout(s_site, _slots);

    [Fact]
    public void Every_space_has_its_own_air_and_medium()
    {
        Assert.Equal([1, 1, 1, 2, 0], Enumerable.Range(0, 5).Select(_layout.AirOf));
        var climate = Made();

        // Degree-days above -100 C in the first day: the mats at 25 and 22, the media of the benches at 18 and 8, of the table at 8.
        Assert.Equal(
            [125, 122, 118, 108, 108],
            Enumerable.Range(0, 5).Select(space => Math.Round(climate.TemperatureSum(_layout.MediumOf(space)).At(24) / 1e6, 3))
        );
    }

    [Fact]
    public void Each_law_of_emergence_has_its_sum_in_each_medium()
    {
        // Base 10, optimum 30: 15, 12, 8, 0 and 0 a day. Base 5, optimum 20, ceiling 35: 15 (35 - T) / 15 above 20 C is 10 and 13; 13, 3
        // and 3 below.
        var climate = Made();
        Assert.Equal([15, 12, 8, 0, 0], Enumerable.Range(0, 5).Select(space => Sum(_layout.EmergenceOf(0), space)));
        Assert.Equal([10, 13, 13, 3, 3], Enumerable.Range(0, 5).Select(space => Sum(_layout.EmergenceOf(1), space)));

        double Sum(int law, int space) => Math.Round(climate.EmergenceSum(law, _layout.MediumOf(space)).At(24) / 1e6, 3);
    }

    [Fact]
    public void Each_law_of_growth_has_its_sum_in_each_air_by_the_light_of_the_month()
    {
        // 20 C: 10 above the one base; 6 up to the cap of the other. Half of it on 31 March, all of it from 1 April on. 10 C outdoors and
        // in the cold house: nothing.
        var climate = Made();
        Assert.Equal([5, 0, 0], new[] { 1, 2, 0 }.Select(air => climate.GrowthSum(_layout.GrowthOf(0), air).At(24) / 1e6));
        Assert.Equal([3, 0, 0], new[] { 1, 2, 0 }.Select(air => climate.GrowthSum(_layout.GrowthOf(1), air).At(24) / 1e6));
        Assert.Equal(45, climate.GrowthSum(_layout.GrowthOf(0), 1).At(24 * Days) / 1e6, 1e-9);
        Assert.Equal(27, climate.GrowthSum(_layout.GrowthOf(1), 1).At(24 * Days) / 1e6, 1e-9);
    }

    [Fact]
    public void Heat_of_the_day()
    {
        // Always below 20 C: 24 hours times the difference to the day's middle, 10 on the first day, 9 on the second.
        var climate = Made(day => (4 + day, 16 + day));
        Assert.Equal([240, 216], climate.HeatingKelvinHours(0).Take(2).Select(hours => Math.Round(hours, 9)));
        Assert.Equal(Days, climate.HeatingKelvinHours(0).Length);
        Assert.All(climate.HeatingKelvinHours(1), hours => Assert.Equal(0, hours));
    }

    [Fact]
    public void The_night_after_a_day_is_the_next_day_s_lowest_outdoors()
    {
        var nights = Made(day => (day, 20)).NightC(0);
        Assert.Equal(Enumerable.Range(1, Days + ForecastNights).Select(day => (double)day), nights);
    }

    [Fact]
    public void The_night_of_a_house_is_its_lowest_from_18_to_5()
    {
        // Day 1 from 0 to 12 C; it is followed by a day from -4 to 8 C, and that one by days from 10 to 20 C. The lowest is that of 03:00,
        // -4 C; then that of 23:00 before the warm day, 2 + 6 cos 120 = -1 C; then 10 C.
        var climate = Made(day =>
            day switch
            {
                1 => (0, 12),
                2 => (-4, 8),
                > 2 => (10, 20),
                _ => (5, 5),
            }
        );
        Assert.Equal([0, -4, -1, 10, 10], climate.NightC(2).Take(Days).Select(night => Math.Round(night, 9)));
        Assert.All(climate.NightC(1), night => Assert.Equal(20, night));
    }

    [Fact]
    public void The_night_of_a_house_ends_before_the_day_s_set_point_comes()
    {
        // Kept at 15 C by night and 5 C by day under a sky of 0 C: from 18:00 to 05:00 it is 15 C.
        var layout = new ClimateLayout(
            s_site with
            {
                Houses = [s_site.Houses[0] with { NightC = 15, DayC = 5 }, s_site.Houses[1]],
            },
            _slots
        );
        var climate = new SeasonClimate(layout, Heat(_ => (0, 0)));
        Assert.All(climate.NightC(1), night => Assert.Equal(15, night));
    }

    [Fact]
    public void New_weather_makes_every_table_anew()
    {
        var climate = Made(_ => (10, 10));
        _ = Told(climate);
        climate.Heat.Renew(Weather(_ => (13, 13)), null);
        Assert.Equal(Told(Made(_ => (13, 13))), Told(climate));
        Assert.Equal((11 + 100, 6, 1, 13, 7 * 24), Told(climate));

        // Medium, emergence of the second law in it, growth of the second law on the first of April less that of 31 March, night and
        // heating of the house.
        (double, double, double, double, double) Told(SeasonClimate told) =>
            (
                Math.Round(told.TemperatureSum(0).At(24) / 1e6, 3),
                Math.Round(told.EmergenceSum(1, 0).At(24) / 1e6, 3),
                Math.Round(told.GrowthSum(1, 0).At(48) / 1e6, 3) - Math.Round(told.GrowthSum(1, 0).At(24) / 1e6, 3),
                told.NightC(0)[1],
                Math.Round(told.HeatingKelvinHours(0)[1], 9)
            );
    }

    [Fact]
    public void Constant_weather_is_the_same_every_day()
    {
        var climate = new PlanClimates(s_site with { Weather = new ConstantWeather(4, 14, 3) }, Days, 1).Normal();
        Assert.All(Enumerable.Range(-30, 30 + Days + ForecastNights + 1), day =>
            Assert.Equal((4, 14, 3), (climate.Weather.TminOf(day), climate.Weather.TmaxOf(day), climate.Weather.RainOf(day)))
        );
    }

    [Fact]
    public void Generated_weather_falls_on_its_dates()
    {
        var model = new WeatherNormals
        {
            Source = "invented",
            Months = [.. Enumerable.Range(1, 12).Select(month => new MonthNormals(month, month + 10, 10, 60))],
        }.ToModel();
        var generator = new WeatherGenerator(model);
        var climates = new PlanClimates(s_site with { Weather = new GeneratedWeather(model, null) }, Days, 9);
        var (normal, count) = (climates.Normal().Weather, 30 + Days + ForecastNights + 1);
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        generator.Draw(9, 4, new DateOnly(2027, 3, 1), tmin, tmax, rain);
        var drawn = climates.Borrow(4).Climate.Weather;
        for (var day = -30; day < count - 30; day++)
        {
            Assert.Equal((tmin[day + 30], tmax[day + 30], rain[day + 30]), (drawn.TminOf(day), drawn.TmaxOf(day), drawn.RainOf(day)));
            Assert.Equal(generator.MeanOf(new DateOnly(2027, 3, 31).AddDays(day)), (normal.TminOf(day), normal.TmaxOf(day)));
            Assert.Equal(0, normal.RainOf(day));
        }
    }

    // Each of up to 64 distinct weathers is kept for all plays; with more, or with a weather of its own every season, one play keeps none.
    [Theory]
    [InlineData(64, true)]
    [InlineData(65, false)]
    public void Few_weathers_are_kept_and_many_are_not(int years, bool isKept)
    {
        var climates = new PlanClimates(s_site with { Weather = Record(years, Days + ForecastNights + 1) }, Days, 1);
        Assert.Equal(years, climates.Source.Distinct);
        var seen = new Dictionary<int, SeasonWeather>();
        for (var season = 0; season < 200; season++)
        {
            SeasonHeat heat;
            var year = climates.Source.Which(1, season);
            using (var borrowed = climates.Borrow(season))
            {
                var (climate, weather) = (borrowed.Climate, borrowed.Climate.Weather);
                Assert.Equal(year, weather.TminOf(2));
                Assert.Equal(year, climate.NightC(0)[1]);
                Assert.Equal(isKept, weather.IsKept);
                Assert.Same(isKept && seen.TryGetValue(year, out var before) ? before : weather, weather);
                seen[year] = weather;
                heat = climate.Heat;
            }

            // Asked for again, it is still there.
            using var again = climates.Borrow(season);
            Assert.Same(heat, again.Climate.Heat);
            Assert.Equal(year, again.Climate.Weather.TminOf(2));
        }
    }

    // The forecast at the last round looks at the nights past it, so a year must have those days too.
    [Theory]
    [InlineData(Days + ForecastNights + 1, 1)]
    [InlineData(Days + ForecastNights, 0)]
    public void A_year_must_cover_the_forecast_past_the_last_day(int recorded, int years) =>
        Assert.Equal(years, new PlanClimates(s_site with { Weather = Record(1, recorded) }, Days, 1).Source.Distinct);

    // Years whose every day has the year's number from 0 as its temperature, and only the days from 31 March on that are asked for.
    private static RecordedWeather Record(int years, int days) =>
        new(
            [
                .. from year in Enumerable.Range(0, years)
                from day in Enumerable.Range(0, days)
                select new DailyWeather(new DateOnly(1950 + year, 3, 31).AddDays(day), year, year, 0),
            ],
            null,
            "record.csv"
        );

    private SeasonClimate Made(Func<int, (double, double)>? ofDay = null) => new(_layout, Heat(ofDay ?? (_ => (10, 10))));

    private SeasonHeat Heat(Func<int, (double, double)> ofDay)
    {
        double[] light = [.. Enumerable.Range(0, Days).Select(day => day == 0 ? 0.5 : 1)];
        var heat = new SeasonHeat(_slots, light, s_site.Rules.MediumOffsetK);
        heat.Renew(Weather(ofDay), null);
        return heat;
    }

    private static SeasonWeather Weather(Func<int, (double, double)> ofDay)
    {
        var weather = new SeasonWeather(Days + ForecastNights + 1);
        for (var index = 0; index < weather.Tmin.Length; index++)
        {
            (weather.Tmin[index], weather.Tmax[index]) = ofDay(index - SeasonWeather.LeadDays);
        }

        return weather;
    }
}
