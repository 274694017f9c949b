using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// Nights on the table, counted by hand. A and B (6 trays) stand there on the evenings of Thursday 18 to Sunday 21 March 2027; nights count
/// above 5 C, damage begins below 0 C; the night after an evening is the next day's lowest.
/// </summary>
public class TableNightsTests
{
    [Fact]
    public void Cold_and_damaging_nights_are_counted_over_the_years_of_the_record()
    {
        // 2021: 4 C on the 19th (evening of the 18th) and -1 C on the 20th. 2022: 4 C on the 22nd (evening of the 21st). 2023 and 2024: no
        // cold night.
        var plan = With(Record((2021, 19, 4), (2021, 20, -1), (2022, 22, 4)));
        var week = Assert.Single(TableNights.Of(plan));
        Assert.Equal((new DateOnly(2027, 3, 15), "plain", 4, 6), (week.Monday, week.Crop.Id, week.Years, week.MostTrays));
        Assert.Equal(
            [(18, 6, 1, 0), (19, 6, 1, 1), (20, 6, 0, 0), (21, 6, 1, 0)],
            week.Nights.Select(night => (night.On.Day, night.Trays, night.ColdYears, night.DamagingYears))
        );

        // Two years of four have a cold night, one a damaging one; three cold nights in four years.
        Assert.Equal((2, 1), (week.YearsWithCold, week.YearsWithDamaging));
        Assert.Equal(0.75, week.ColdNights);
    }

    // Ten years of which one is cold that night: its 1-in-10 low goes under the limit. One of eleven is too rare.
    [Theory]
    [InlineData(10, 1)]
    [InlineData(11, 0)]
    public void A_night_is_worth_watching_from_one_year_in_ten_on(int years, int watched)
    {
        var week = Assert.Single(TableNights.Of(With(Record((2021, 19, 4))))) with { Years = years };
        Assert.Equal(watched, week.Watched.Length);
        Assert.All(week.Watched, night => Assert.Equal(18, night.On.Day));
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
            [SmallSite.Batch("A", 100, SmallSite.Monday) with { SetOut = new DateOnly(2027, 3, 24) }]
        );
        var weeks = TableNights.Of(SmallSite.Plan(scenario));
        Assert.Equal(
            [(15, "18 19 20 21"), (22, "22 23")],
            weeks.Select(week => (week.Monday.Day, string.Join(' ', week.Nights.Select(night => night.On.Day))))
        );
    }

    // A night at 5 C counts and one at 0 C does no damage; a hair colder and they do not, and it does.
    [Theory]
    [InlineData(5, 0, 0)]
    [InlineData(4.99, 1, 0)]
    [InlineData(0, 1, 0)]
    [InlineData(-0.01, 1, 1)]
    public void Nights_at_the_edge(double celsius, int cold, int damaging)
    {
        var week = Assert.Single(TableNights.Of(With(Record((2021, 19, celsius)))));
        Assert.Equal((cold, damaging), (week.YearsWithCold, week.YearsWithDamaging));
    }

    [Fact]
    public void An_unheated_house_is_as_cold_as_its_coldest_hour_of_the_night()
    {
        // -1 C day and night on the 19th, 10 C else: the night of the 18th ends in it, and that of the 19th begins in it.
        var plan = With(Record((2021, 19, -1)), table: SmallSite.Table(9) with { HouseId = "main" });
        var cold = plan with
        {
            Scenario = plan.Scenario with { Houses = [plan.Scenario.Houses[0] with { NightC = null, DayC = null, VentC = 40 }] },
        };
        Assert.Equal(
            [(18, 1), (19, 1), (20, 0), (21, 0)],
            Assert.Single(TableNights.Of(cold)).Nights.Select(night => (night.On.Day, night.ColdYears))
        );
    }

    [Fact]
    public void A_house_s_day_set_point_is_no_part_of_its_night()
    {
        // 10 C by night and 1 C by day, in the frost of the 19th and 20th.
        var plan = With(Record((2021, 19, -5), (2021, 20, -5)), table: SmallSite.Table(9) with { HouseId = "main" });
        var kept = plan with { Scenario = plan.Scenario with { Houses = [plan.Scenario.Houses[0] with { NightC = 10, DayC = 1 }] } };
        Assert.All(Assert.Single(TableNights.Of(kept)).Nights, night => Assert.Equal(0, night.ColdYears));
    }

    [Fact]
    public void Weeks_come_in_order_of_week_and_crop()
    {
        // "b" on the table from 18 to 21 March, "a" from Thursday 25 to Sunday 28; "c" beside "b".
        var plan = SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9)],
                [
                    SmallSite.Batch("1", 50, SmallSite.Monday.AddDays(7), "a"),
                    SmallSite.Batch("2", 50, SmallSite.Monday, "c"),
                    SmallSite.Batch("3", 50, SmallSite.Monday, "b"),
                ],
                crops: [SmallSite.Crop("a"), SmallSite.Crop("b"), SmallSite.Crop("c")]
            )
        );
        Assert.Equal([(15, "b"), (15, "c"), (22, "a")], TableNights.Of(plan).Select(week => (week.Monday.Day, week.Crop.Id)));
    }

    [Theory]
    [InlineData(14, 8)]
    [InlineData(15, 15)]
    [InlineData(21, 15)]
    [InlineData(22, 22)]
    public void The_Monday_of_a_week(int march, int monday) =>
        Assert.Equal(new DateOnly(2027, 3, monday), TableNights.MondayOf(new DateOnly(2027, 3, march)));

    [Fact]
    public void Cold_nights_before_the_trays_come_to_the_table_do_not_count()
    {
        // Frost on the 17th, the night after the 16th; they come on the 18th of the same week.
        var week = Assert.Single(TableNights.Of(With(Record((2021, 17, -5)))));
        Assert.Equal((15, 0, 0), (week.Monday.Day, week.YearsWithCold, week.YearsWithDamaging));
    }

    [Fact]
    public void The_most_trays_of_a_week_are_those_of_its_fullest_night()
    {
        var week = Assert.Single(TableNights.Of(With(Record((2021, 19, 4)))));
        Assert.Equal(
            9,
            (week with { Nights = [week.Nights[0] with { Trays = 3 }, week.Nights[1] with { Trays = 9 }, week.Nights[2]] }).MostTrays
        );
    }

    [Fact]
    public void Without_a_table_there_is_no_night()
    {
        var plan = With(Record((2021, 19, -5)));
        Assert.Empty(TableNights.Of(plan with { Batches = [.. plan.Batches.Select(batch => batch with { Tables = [] })] }));
    }

    private static SeasonPlan With(WeatherInput weather, double coverGain = 0, Space? table = null)
    {
        var plan = SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(9), SmallSite.Bench(9), table ?? SmallSite.Table(9)],
                [SmallSite.Batch("A", 200, SmallSite.Monday), SmallSite.Batch("B", 100, SmallSite.Monday)]
            )
        );
        return plan with
        {
            Scenario = plan.Scenario with { Weather = weather, Rules = plan.Scenario.Rules with { CoverGainK = coverGain } },
        };
    }

    // 10 C day and night in every year, but for some days of March.
    private static RecordedWeather Record(params (int Year, int Day, double C)[] cold)
    {
        var days = ImmutableArray.CreateBuilder<DailyWeather>();
        for (var date = new DateOnly(2021, 1, 1); date.Year < 2025; date = date.AddDays(1))
        {
            var low =
                date.Month == 3 && cold.Any(day => day.Year == date.Year && day.Day == date.Day)
                    ? cold.First(day => day.Year == date.Year && day.Day == date.Day).C
                    : 10;
            days.Add(new DailyWeather(date, low, Math.Max(low, 10), 0));
        }

        return new RecordedWeather(days.ToImmutable(), null, "record.csv");
    }
}
