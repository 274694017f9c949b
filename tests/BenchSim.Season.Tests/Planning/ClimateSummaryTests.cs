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

    [Fact]
    public void Hold_days_of_the_table_are_those_with_a_cold_night_in_the_forecast()
    {
        // 10 C but for 4 C on 10 March 2021: below 5 C for the table, not below 3 C for the field. Three forecast nights: held on 7, 8 and 9 March, in one of two years.
        var summary = ClimateSummary.Of(Plan(house => house, With(Record((2021, 10), (2022, 10)), new(2021, 3, 10), day => day with { TminC = 4 })));
        Assert.Equal([HoldKind.Table, HoldKind.WetField, HoldKind.Field], summary.Holds.Select(holds => holds.Kind));
        Assert.Equal([5, null, 3], summary.Holds.Select(holds => holds.AboveC));
        Assert.Equal("", Assert.Single(summary.Holds[0].Under));
        Assert.Equal("plain", Assert.Single(summary.Holds[0].Crops));
        var first = summary.Holds[0].Fortnights[0];

        // Three days and none: mean 1.5, variance 2 x 1.5^2.
        Assert.Equal((new DateOnly(2027, 3, 1), 14, 1.5, 2), (first.First, first.Days, first.Mean, first.Years));
        Assert.Equal(Math.Sqrt(4.5), first.StandardDeviation, 1e-12);
        Assert.All(summary.Holds[0].Fortnights.Skip(1), fortnight => Assert.Equal(0, fortnight.Mean));
        Assert.All(summary.Holds[2].Fortnights, fortnight => Assert.Equal(0, fortnight.Mean));

        // 121 days: eight fortnights and nine days.
        Assert.Equal(9, summary.Holds[0].Fortnights.Length);
        Assert.Equal(9, summary.Holds[0].Fortnights[^1].Days);
    }

    [Fact]
    public void A_row_cover_spares_the_hold_it_is_warm_enough_for()
    {
        // One degree of cover makes 5 C of 4 C.
        var plan = Plan(house => house, With(Record((2021, 10), (2022, 10)), new(2021, 3, 10), day => day with { TminC = 4 }));
        var covered = plan with { Scenario = plan.Scenario with { Rules = plan.Scenario.Rules with { CoverGainK = 1 } } };
        Assert.Equal(0, ClimateSummary.Of(covered).Holds[0].Fortnights[0].Mean);
    }

    [Fact]
    public void Rain_holds_the_field_for_two_days()
    {
        // 30 mm on 10 March against a limit of 25 mm: the field is held on 11 and 12 March for every crop, in one year of two, and the table is not.
        var summary = ClimateSummary.Of(Plan(house => house, With(Record((2021, 10), (2022, 10)), new(2021, 3, 10), day => day with { RainMm = 30 })));
        Assert.Equal([0, 1, 1], summary.Holds.Select(holds => holds.Fortnights[0].Mean));
    }

    [Fact]
    public void A_table_in_a_house_is_held_by_the_house_s_own_nights()
    {
        // The house is kept at 20 C: frost outdoors holds the field, never the table.
        var plan = Plan(house => house, Record((2021, -2), (2022, -2)));
        var table = plan.Scenario.Spaces[2] with { HouseId = "main" };
        var summary = ClimateSummary.Of(plan with { Scenario = plan.Scenario with { Spaces = plan.Scenario.Spaces.SetItem(2, table) } });
        Assert.Equal("main", Assert.Single(summary.Holds[0].Under));
        Assert.Equal([0, 0, 14], summary.Holds.Select(holds => holds.Fortnights[0].Mean));
    }

    private static RecordedWeather With(RecordedWeather record, DateOnly date, Func<DailyWeather, DailyWeather> change) =>
        record with { Days = [.. record.Days.Select(day => day.Date == date ? change(day) : day)] };

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
