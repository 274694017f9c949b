using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// Nights on the table, counted by hand. A and B (6 trays) stand there on the evenings of Thursday 18 to Sunday 21 March 2027; nights count above 5 C, damage
/// begins below 0 C; the night after an evening is the next day's lowest.
/// </summary>
public class TableNightsTests
{
    [Fact]
    public void Cold_and_damaging_nights_are_counted_over_the_years_of_the_record()
    {
        // 2021: 4 C on the 19th (evening of the 18th) and -1 C on the 20th. 2022: 4 C on the 22nd (evening of the 21st). 2023 and 2024: no cold night.
        var plan = With(Record((2021, 19, 4), (2021, 20, -1), (2022, 22, 4)));
        var week = Assert.Single(TableNights.Of(plan));
        Assert.Equal((new DateOnly(2027, 3, 15), "plain", 4, 6), (week.Monday, week.Crop.Id, week.Years, week.MostTrays));
        Assert.Equal([(18, 6, 1, 0), (19, 6, 1, 1), (20, 6, 0, 0), (21, 6, 1, 0)], week.Nights.Select(night => (night.On.Day, night.Trays, night.ColdYears, night.DamagingYears)));

        // Two years of four have a cold night, one a damaging one; three cold nights in four years.
        Assert.Equal((2, 1), (week.YearsWithCold, week.YearsWithDamaging));
        Assert.Equal(0.75, week.ColdNights);
    }

    [Fact]
    public void A_cover_keeps_trays_from_being_carried_in_but_does_not_make_the_night_warm()
    {
        var plan = With(Record((2021, 19, 4), (2021, 20, -1), (2022, 22, 4)), coverGain: 1);
        var week = Assert.Single(TableNights.Of(plan));
        Assert.Equal((2, 0), (week.YearsWithCold, week.YearsWithDamaging));
    }

    [Fact]
    public void A_table_in_a_house_is_as_cold_as_its_house()
    {
        // The house is heated to 20 C.
        var plan = With(Record((2021, 19, -20)), table: SmallSite.Table(9) with { HouseId = "main" });
        Assert.Equal(0, Assert.Single(TableNights.Of(plan)).YearsWithCold);
    }

    [Fact]
    public void A_stay_over_a_weekend_is_told_in_two_weeks()
    {
        // On the table from the 18th as above, and wanted in the field on Wednesday the 24th.
        var scenario = SmallSite.Scenario(
            [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9)],
            [SmallSite.Batch("A", 100, SmallSite.Monday) with { SetOut = new DateOnly(2027, 3, 24) }]);
        var weeks = TableNights.Of(SmallSite.Plan(scenario));
        Assert.Equal([(15, "18 19 20 21"), (22, "22 23")], weeks.Select(week => (week.Monday.Day, string.Join(' ', week.Nights.Select(night => night.On.Day)))));
    }

    private static SeasonPlan With(WeatherInput weather, double coverGain = 0, Space? table = null)
    {
        var plan = SmallSite.Plan(SmallSite.Scenario(
            [SmallSite.Mat(9), SmallSite.Bench(9), table ?? SmallSite.Table(9)],
            [SmallSite.Batch("A", 200, SmallSite.Monday), SmallSite.Batch("B", 100, SmallSite.Monday)]));
        return plan with { Scenario = plan.Scenario with { Weather = weather, Rules = plan.Scenario.Rules with { CoverGainK = coverGain } } };
    }

    // 10 C day and night in every year, but for some days of March.
    private static RecordedWeather Record(params (int Year, int Day, double C)[] cold)
    {
        var days = ImmutableArray.CreateBuilder<DailyWeather>();
        for (var date = new DateOnly(2021, 1, 1); date.Year < 2025; date = date.AddDays(1))
        {
            var low = date.Month == 3 && cold.Any(day => day.Year == date.Year && day.Day == date.Day)
                ? cold.First(day => day.Year == date.Year && day.Day == date.Day).C
                : 10;
            days.Add(new DailyWeather(date, low, Math.Max(low, 10), 0));
        }

        return new RecordedWeather(days.ToImmutable(), null, "record.csv");
    }
}
