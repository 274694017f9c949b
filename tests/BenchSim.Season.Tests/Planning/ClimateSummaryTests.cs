using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>What the weather means for a plan, each figure worked out by hand. The season runs from 1 March to 29 June 2027.</summary>
public class ClimateSummaryTests
{
    // One cubic hall: cover 100 m2 at 5 W/m2K, no leak, 500 W a kelvin. At 20 C under a sky of 10 C: 500 x 10 x 24 h = 120 kWh a day.
    private static readonly HouseHeat Heat = new()
    {
        Shell = new HouseShell(100, 0, 0, 50, 30, 100),
        Covering = "test",
        UValue = 5,
        AirChanges = 0,
        Fuel = Fuels.Electricity,
        Efficiency = 0.8,
        DesignOutdoorC = -5,
    };

    [Fact]
    public void Fuel_is_added_up_by_month_from_the_opening_of_the_season_to_its_closing()
    {
        var need = Assert.Single(ClimateSummary.Of(Plan(house => house with { Heat = Heat })).Houses);

        // 150 kWh a day at 80 %: 31, 30, 31 and 29 days.
        Assert.Equal([new(2027, 3, 1), new(2027, 4, 1), new(2027, 5, 1), new(2027, 6, 1)], need.Months.Select(month => month.First));
        Assert.Equal([4650, 4500, 4650, 4350], need.Months.Select(month => Math.Round(month.Units, 6)));
        Assert.Equal(150 * 121, need.Mean, 1e-6);
        Assert.Equal((need.Mean, need.Mean), (need.Least, need.Most));

        // 500 W a kelvin from -5 C to the warmer set-point.
        Assert.Equal(500 * 25, need.Load!.Value.Watts, 1e-9);
    }

    [Fact]
    public void The_load_is_that_of_the_warmer_set_point()
    {
        var need = Assert.Single(ClimateSummary.Of(Plan(house => house with { Heat = Heat, NightC = 15, DayC = 20 })).Houses);
        Assert.Equal(20, need.Load!.Value.InsideC);
    }

    [Fact]
    public void A_house_is_heated_from_its_opening_date()
    {
        var need = Assert.Single(ClimateSummary.Of(Plan(house => house with { Heat = Heat, Opening = HouseOpening.FromDate, OpensOn = new(2027, 4, 11) })).Houses);
        Assert.Equal(new DateOnly(2027, 4, 1), need.Months[0].First);
        Assert.Equal(20 * 150, need.Months[0].Units, 1e-6);
    }

    [Fact]
    public void A_house_without_a_heater_or_a_set_point_is_left_out()
    {
        Assert.Empty(ClimateSummary.Of(Plan(house => house)).Houses);
        Assert.Empty(ClimateSummary.Of(Plan(house => house with { Heat = Heat, NightC = null, DayC = null })).Houses);
    }

    [Fact]
    public void Fuel_is_the_mean_of_the_years_of_a_record_with_the_mildest_and_the_coldest()
    {
        var summary = ClimateSummary.Of(Plan(house => house with { Heat = Heat }, Record((2021, 10), (2022, 0), (2023, 20))));
        var need = Assert.Single(summary.Houses);

        // 150 kWh a day at 10 C, twice that at 0 C, none at 20 C.
        Assert.Equal(3, summary.Years);
        Assert.Equal(0, need.Least);
        Assert.Equal(300 * 121, need.Most, 1e-6);
        Assert.Equal(150 * 121, need.Mean, 1e-6);
    }

    [Fact]
    public void A_fixed_year_is_the_only_one_counted()
    {
        var summary = ClimateSummary.Of(Plan(house => house with { Heat = Heat }, Record((2021, 10), (2022, 0)) with { FixedYear = 2022 }));
        Assert.Equal(1, summary.Years);
        Assert.Equal(1, summary.Frost!.Years);
        Assert.Equal(1, summary.Frost.FrostAfter[^1].Share);
        Assert.Equal(300 * 121, summary.Houses[0].Mean, 1e-6);
    }

    [Fact]
    public void Thresholds_are_the_distinct_ones_of_the_crops_in_the_plan()
    {
        var thresholds = ClimateSummary.Of(Plan(house => house)).Thresholds;
        Assert.Equal([3, 5], thresholds.Select(threshold => threshold.TemperatureC));
        Assert.Equal("plain", Assert.Single(thresholds[0].ToField));
        Assert.Empty(thresholds[0].ToTable);
        Assert.Equal("plain", Assert.Single(thresholds[1].ToTable));
    }

    [Fact]
    public void Frosts_of_autumn_do_not_count_as_late_ones_of_spring()
    {
        // Ten degrees, a warm week around 1 July, and frost from November on; the season closes at the end of November.
        var record = Record((2021, 10), (2022, 10));
        ImmutableArray<DailyWeather> days =
        [
            .. record.Days.Select(day => (day.Date.Month, day.Date.Day) switch
            {
                (11 or 12, _) => day with { TminC = -5, TmaxC = -5 },
                (6, >= 23) or (7, <= 9) => day with { TminC = 15, TmaxC = 15 },
                _ => day,
            }),
        ];
        var plan = Plan(house => house, record with { Days = days }, closes: new(2027, 11, 30));
        var summary = ClimateSummary.Of(plan);
        Assert.InRange(summary.Frost!.Last, new DateOnly(2027, 6, 23), new DateOnly(2027, 7, 9));
        Assert.Equal(0, summary.Frost.FrostAfter[0].Share);
        Assert.Equal(new DateOnly(2027, 11, 30), summary.Nights!.Last);
        Assert.Equal(1, summary.Nights.FrostAfter[0].Share);
    }

    private static RecordedWeather Record(params (int Year, double C)[] years) => new(
        [
            .. years.SelectMany(year => Enumerable.Range(0, new DateOnly(year.Year, 12, 31).DayOfYear)
                .Select(day => new DailyWeather(new DateOnly(year.Year, 1, 1).AddDays(day), year.C, year.C, 0))),
        ],
        null,
        "record.csv");

    private static SeasonPlan Plan(Func<House, House> change, WeatherInput? weather = null, DateOnly? closes = null)
    {
        var scenario = SmallSite.Scenario([SmallSite.Mat(4), SmallSite.Bench(9), SmallSite.Table(9)], [SmallSite.Batch("a", 100, SmallSite.Monday)], weather: weather);
        var plan = SmallSite.Plan(scenario);
        var window = closes is { } last ? scenario.Window with { Closes = last } : scenario.Window;
        return plan with { Scenario = scenario with { Houses = [.. scenario.Houses.Select(change)], Window = window } };
    }
}
