using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// Planned dates, and what is said where there are none. At the small site a tray comes up 3 days after sowing, is grown 14 days later,
/// hardens 3 nights and goes out on the next work day: sown on Monday 1 or Tuesday 2 March 2027 it is ready on Monday 22 March, sown from
/// Wednesday 3 to Friday 5 on Thursday 25.
/// </summary>
public class PlannedDatesTests
{
    [Theory]
    [InlineData(22, 2)] // the latest work day from which it is ready
    [InlineData(23, 2)]
    [InlineData(24, 2)]
    [InlineData(25, 5)]
    [InlineData(28, 5)] // a Sunday: wanted on Friday the 26th
    public void The_sow_date_is_the_latest_from_which_the_wanted_date_is_met(int wanted, int sow)
    {
        var batch = Planned(Batch("a", 50, null) with { SetOut = March(wanted) });
        Assert.Equal(March(sow), batch.SowOn);
        Assert.Equal(March(wanted == 28 ? 26 : wanted), batch.SetOutOn);
    }

    [Theory]
    [InlineData(0, 22, 2)]
    [InlineData(2, 24, 2)]
    [InlineData(3, 25, 2)]
    [InlineData(3, 24, 0)] // ready by the 21st: the season is not open in time
    [InlineData(7, 31, 2)]
    public void Slack_is_left_before_the_wanted_date(int slack, int wanted, int sow)
    {
        var made = Make(Batch("a", 50, null) with { SetOut = March(wanted) }, new SiteRules { SlackDays = slack });
        Assert.Equal(sow == 0 ? null : March(sow), made.Plan?.Batches[0].SowOn);
        Assert.Equal(sow == 0 ? 1 : 0, made.Faults.Length);
    }

    [Theory]
    [InlineData(0, 22)]
    [InlineData(1, 23)]
    [InlineData(5, 29)] // 27 March is a Saturday
    public void Slack_is_left_after_the_first_ready_day(int slack, int setOut)
    {
        var batch = Make(Batch("a", 50, March(1)), new SiteRules { SlackDays = slack }).Plan!.Batches[0];
        Assert.Equal((March(22), March(setOut)), (batch.ReadyOn, batch.SetOutOn));
    }

    [Fact]
    public void A_sow_date_on_a_day_off_goes_to_the_next_work_day()
    {
        Assert.Equal(March(8), Planned(Batch("a", 50, March(6))).SowOn);
        Assert.Equal(March(8), Planned(Batch("a", 50, March(7))).SowOn);
    }

    [Fact]
    public void The_steps_of_a_batch_sown_on_a_bench_fall_on_these_days()
    {
        // On the bench from the 1st, up on the 4th, on the table on the 18th; no mat and no potting up.
        var scenario = Scenario([Bench(9), Table(9)], [Batch("a", 50, Monday)], crops: [Crop() with { BottomHeat = false }]);
        var batch = Plan(scenario).Batches[0];
        Assert.Equal(
            (March(4), (DateOnly?)null, (DateOnly?)null, March(18), March(22)),
            (batch.EmergeOn, batch.OffMatOn, batch.PotUpOn, batch.TableOn, batch.ReadyOn)
        );
    }

    // Three nights and three days' lead before Friday, 2 April: 27 March is a Saturday, so its trays stay on the bench, grown since the
    // 22nd, until Monday.
    [Fact]
    public void Trays_that_are_grown_early_go_to_the_table_when_its_date_comes()
    {
        var batch = Planned(Batch("a", 50, March(5)) with { SetOut = March(33) });
        Assert.Equal((March(25), March(29), March(33)), (batch.ReadyOn, batch.TableOn, batch.SetOutOn));
    }

    // The house of the first bench opens on 1 April at 20 C; the other stands at 12 C, where a tray takes 15 days to come up and 70 to
    // grow. Sown in March it goes there and is late; in April three weeks are enough. A batch wanted on Monday, 10 May, is sown on Tuesday,
    // 20 April.
    [Fact]
    public void A_later_sowing_may_come_into_a_house_that_opens_on_a_date()
    {
        var site = Scenario(
            [Bench(9, "warm", "late"), Bench(9), Table(9)],
            [Batch("a", 50, null) with { SetOut = new(2027, 5, 10) }],
            crops: [Crop() with { BottomHeat = false, Benches = ["warm", "bench"] }]
        ) with
        {
            Houses =
            [
                new House
                {
                    Id = "main",
                    Name = "Main",
                    NightC = 12,
                    DayC = 12,
                    VentC = 12,
                    DayLiftK = 0,
                },
                new House
                {
                    Id = "late",
                    Name = "Late",
                    NightC = 20,
                    DayC = 20,
                    VentC = 20,
                    DayLiftK = 0,
                    Opening = HouseOpening.FromDate,
                    OpensOn = new(2027, 4, 1),
                },
            ],
        };
        Assert.Equal(new DateOnly(2027, 4, 20), Plan(site).Batches[0].SowOn);

        // Wanted on 5 April nothing is ready in time, and nothing grows at 10 C.
        Assert.Contains("before the season opens", Wanted(site, new(2027, 4, 5)), StringComparison.Ordinal);
        Assert.Contains(
            "never ready for the field",
            Wanted(site with { Crops = [site.Crops[0] with { EmergeBaseC = 25 }] }, new(2027, 5, 10)),
            StringComparison.Ordinal
        );

        static string Wanted(Scenario site, DateOnly on) =>
            Assert.Single(SeasonPlanner.Make(site with { Batches = [site.Batches[0] with { SetOut = on }] }).Faults).What;
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_date_before_the_first_work_day_is_a_fault(int wanted)
    {
        var fault = Assert.Single(Make(Batch("a", 50, null) with { SetOut = March(wanted) }).Faults);
        Assert.Contains("before the first work day", fault.What, StringComparison.Ordinal);
    }

    // Ready on the 22nd when sown on the first day.
    [Theory]
    [InlineData(1, "2027-03-01")]
    [InlineData(19, "2027-03-19")]
    public void A_date_that_the_season_opens_too_late_for_is_a_fault(int wanted, string date)
    {
        var fault = Assert.Single(Make(Batch("a", 50, null) with { SetOut = March(wanted) }).Faults);
        Assert.EndsWith(
            $"before the season opens on 2027-03-01 to be ready by {date}; sown on the first work day it is ready on 2027-03-22",
            fault.What,
            StringComparison.Ordinal
        );
    }

    // Wanted on Wednesday the 24th with three days of slack, it must be ready by the 21st.
    [Fact]
    public void The_slack_is_named_where_the_season_opens_too_late()
    {
        var plan = SeasonPlanner.Make(
            Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 50, null) with { SetOut = March(24) }], new SiteRules { SlackDays = 3 })
        );
        Assert.EndsWith(
            "to be ready by 2027-03-21, 3 days of slack (slack_days) before it is wanted; sown on the first work day it is ready "
                + "on 2027-03-22",
            Assert.Single(plan.Faults).What,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_season_that_opens_on_a_day_off_has_no_work_day_then()
    {
        var site = Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 50, null) with { SetOut = new(2027, 2, 28) }]);
        var fault = Assert.Single(SeasonPlanner.Make(site with { Window = new SeasonWindow(new(2027, 2, 28), new(2027, 6, 29)) }).Faults);
        Assert.Contains("before the first work day", fault.What, StringComparison.Ordinal);
    }

    // The house is at 20 C, and this crop comes up from 25 C on. An earlier season would not help it, whichever date is given.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_batch_that_is_never_warm_enough_is_said_to_be_never_ready(bool bySowDate)
    {
        var order = bySowDate ? Batch("a", 50, Monday) : Batch("a", 50, null) with { SetOut = Monday.AddDays(60) };
        var site = Scenario([Bench(9), Table(9)], [order], crops: [Crop() with { EmergeBaseC = 25, BottomHeat = false }]);
        var fault = Assert.Single(SeasonPlanner.Make(site).Faults);
        Assert.Contains("never ready for the field", fault.What, StringComparison.Ordinal);
        Assert.Contains("warmer", fault.Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_come_in_one_pass()
    {
        BatchOrder[] orders =
        [
            Batch("a", 50, null) with
            {
                SetOut = March(3),
            },
            Batch("b", 50, March(1)),
            Batch("c", 50, null) with
            {
                SetOut = March(4),
            },
        ];
        Assert.Equal(2, SeasonPlanner.Make(Scenario([Mat(9), Bench(9), Table(9)], orders)).Faults.Length);
    }

    // Sown on the 5th it is ready on the 25th. It holds 7 days on the table.
    [Theory]
    [InlineData(24, 1, "ready on 2027-03-25 at the earliest, after the wanted 2027-03-24")]
    [InlineData(25, 0, "")]
    [InlineData(32, 0, "")]
    [InlineData(33, 1, "8 days before the wanted 2027-04-02")]
    public void A_sow_date_too_late_or_too_early_for_the_wanted_date_is_warned_of(int wanted, int warnings, string words)
    {
        var plan = Make(Batch("a", 50, March(5)) with { SetOut = March(wanted) }, new SiteRules { Light = s_darkDecember }).Plan!;
        Assert.Equal(warnings, plan.Warnings.Length);
        Assert.All(plan.Warnings, warning => Assert.Contains(words, warning.What, StringComparison.Ordinal));
        Assert.Equal((March(5), March(25), March(wanted)), (plan.Batches[0].SowOn, plan.Batches[0].ReadyOn, plan.Batches[0].SetOutOn));
    }

    // No worry of that kind where the plan itself set the sow date by the wanted one.
    [Fact]
    public void A_sow_date_worked_out_is_never_too_early() =>
        Assert.Empty(Make(Batch("a", 50, null) with { SetOut = March(60) }, new SiteRules { Light = s_darkDecember }).Plan!.Warnings);

    [Fact]
    public void The_season_is_played_on_past_the_last_that_could_be_thrown_out()
    {
        // Set out on day 21 and day 28, thrown out at most 21 days later, 14 more: the last day is 63, so 64 days.
        var site = Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 50, Monday), Batch("b", 50, Monday.AddDays(7))]);
        Assert.Equal(64, Plan(site).Days);

        // One crop that may stand for 30 days keeps the season going for all.
        Crop[] crops = [Crop("short"), Crop("long") with { DiscardAfterDays = 30 }];
        var two = Scenario(
            [Mat(9), Bench(9), Table(9)],
            [Batch("a", 50, Monday, "long"), Batch("b", 50, Monday.AddDays(7), "short")],
            crops: crops
        );
        Assert.Equal(28 + 30 + 14 + 1, Plan(two).Days);
    }

    // The window has 121 days from 1 March to 29 June, the play 57 days; three nights of forecast and the day after them come on top of the
    // longer one: up to 3 July.
    [Theory]
    [InlineData("2021-03-01", "2021-07-03", true)]
    [InlineData("2021-03-01", "2021-07-02", false)]
    [InlineData("2021-03-02", "2021-12-31", false)]
    [InlineData("2021-01-01", "2021-12-31", true)]
    public void One_year_of_a_record_must_cover_the_season(string first, string last, bool isCovered)
    {
        var made = SeasonPlanner.Make(
            Scenario(
                [Mat(9), Bench(9), Table(9)],
                [Batch("a", 50, Monday)],
                new SiteRules { ForecastNights = 3 },
                weather: Record(first, last)
            )
        );
        Assert.Equal(isCovered, made.Plan is not null);
        Assert.Equal(
            isCovered
                ? ""
                : "record.csv:0:0: no year of this record covers the whole season: 125 days from 03-01 on; give a record with "
                    + "every day of at least one such year",
            string.Join(' ', made.Faults)
        );
    }

    // A season from 1 October on, over New Year: the year 2021 of a record that ends with it does not cover it; the year before does.
    [Theory]
    [InlineData(2021, false)]
    [InlineData(2020, true)]
    public void A_fixed_year_must_cover_the_season_too(int year, bool isCovered)
    {
        var october = new DateOnly(2026, 10, 1);
        var site = Scenario(
            [Mat(9), Bench(9), Table(9)],
            [Batch("a", 50, october.AddDays(4))],
            weather: Record("2020-01-01", "2021-12-31") with
            {
                FixedYear = year,
            }
        ) with
        {
            Window = new SeasonWindow(october, october.AddDays(120)),
        };
        var made = SeasonPlanner.Make(site);
        Assert.Equal(isCovered, made.Plan is not null);
        Assert.Equal(
            isCovered
                ? ""
                : "record.csv:0:0: the season that begins in 2021 is not covered by this record: 125 days from 10-01 on; give a "
                    + "record with every day of at least one such year",
            string.Join(' ', made.Faults)
        );
    }

    // Sown on Monday 7 June it goes out on the 28th, day 119; thrown out 21 days later at most, 14 more: 155 days are played, and four more
    // of weather: to 6 August.
    [Theory]
    [InlineData("2021-08-06", true)]
    [InlineData("2021-08-05", false)]
    public void It_must_cover_the_days_played_past_the_closing_of_the_season(string last, bool isCovered)
    {
        var made = SeasonPlanner.Make(
            Scenario(
                [Mat(9), Bench(9), Table(9)],
                [Batch("a", 50, new DateOnly(2027, 6, 7))],
                new SiteRules { ForecastNights = 3 },
                weather: Record("2021-03-01", last)
            )
        );
        Assert.Equal(isCovered, made.Plan is not null);
        Assert.Equal(isCovered ? 0 : 1, made.Faults.Length);
    }

    // One seed in 200 at the house's temperature: a hundred times the obvious number of trays or flats is not enough for 199 plants.
    [Theory]
    [InlineData(Method.Direct)]
    [InlineData(Method.PotUp)]
    public void Seed_that_hardly_comes_up_is_a_fault(Method method)
    {
        var crop = Crop() with { GerminationCurve = [new(20, 0.5), new(25, 100)] };
        var order = method == Method.Direct ? Batch("a", 199, Monday) : PotUpBatch("a", 199, Monday);
        var fault = Assert.Single(SeasonPlanner.Make(Scenario([Mat(9), Bench(9), Table(9)], [order], crops: [crop])).Faults);
        Assert.Contains("would hardly come up: 100", fault.What, StringComparison.Ordinal);
        Assert.Contains("at 20 C", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_of_a_direct_batch_by_hand()
    {
        // 50 cells of two seeds, all of them coming: 120 plants are 3 trays, 300 seeds. With the trays given the chance is that of those
        // trays.
        var worked = Planned(Batch("a", 120, Monday) with { SeedsPerCell = 2 });
        Assert.Equal((3, 0, 300, 1.0), (worked.Trays, worked.Flats, worked.Seeds, worked.StandChance));
        var given = Planned(Batch("a", 120, Monday) with { Trays = 2 });
        Assert.Equal((2, 0, 100, 0.0), (given.Trays, given.Flats, given.Seeds, given.StandChance));

        // Half of the cells lose their plant: 25 of 50 with the chance of at least 25 heads, (1 + C(50, 25) / 2^50) / 2 = 0.5561376.
        var lossy = Scenario(
            [Mat(9), Bench(9), Table(9)],
            [Batch("a", 25, Monday) with { Trays = 1 }],
            crops: [Crop() with { StandLoss = 0.5 }]
        );
        Assert.Equal(0.5561376, Plan(lossy).Batches[0].StandChance, 1e-6);
    }

    [Fact]
    public void Numbers_of_a_batch_potted_up_by_hand()
    {
        // 120 plants, none lost: 3 trays of 50, from 200 seeds a flat one flat. 250 plants take 5 trays and two flats.
        var one = Planned(PotUpBatch("a", 120, Monday));
        Assert.Equal((3, 1, 200, 1.0), (one.Trays, one.Flats, one.Seeds, one.StandChance));
        var two = Planned(PotUpBatch("a", 250, Monday));
        Assert.Equal((5, 2, 400, 1.0), (two.Trays, two.Flats, two.Seeds, two.StandChance));
        var given = Planned(PotUpBatch("a", 120, Monday) with { Trays = 4, Flats = 3 });
        Assert.Equal((4, 3, 600, 1.0), (given.Trays, given.Flats, given.Seeds, given.StandChance));

        // As many as a plan may ask for: 100,000 flats of 100,000 seeds.
        Assert.Equal(
            10_000_000_000,
            Planned(PotUpBatch("a", 120, Monday, seedsPerFlat: 100_000) with { Trays = 4, Flats = 100_000 }).Seeds
        );
    }

    [Fact]
    public void Flats_make_good_the_losses_before_and_after_potting_up()
    {
        // Half is lost after potting up: of 217 coins at least 100 are heads with 0.889, of 218 with 0.901 (StandTests). So 250 cells, 5
        // trays; of 200 seeds 100 stay with only 0.53, so two flats.
        var site = Scenario([Mat(9), Bench(9), Table(9)], [PotUpBatch("a", 100, Monday)], crops: [Crop() with { StandLoss = 0.5 }]);
        Assert.Equal((5, 2, 400), (Plan(site).Batches[0].Trays, Plan(site).Batches[0].Flats, Plan(site).Batches[0].Seeds));
    }

    // A factor below 1 where it does not matter, so that the dark days are not warned of.
    private static readonly System.Collections.Immutable.ImmutableArray<double> s_darkDecember = new SiteRules().Light.SetItem(11, 0.5);

    private static RecordedWeather Record(string first, string last)
    {
        var (from, to) = (DateOnly.ParseExact(first, "yyyy-MM-dd"), DateOnly.ParseExact(last, "yyyy-MM-dd"));
        return new(
            [.. Enumerable.Range(0, to.DayNumber - from.DayNumber + 1).Select(day => new DailyWeather(from.AddDays(day), 10, 10, 0))],
            null,
            "record.csv"
        );
    }

    private static DateOnly March(int day) => Monday.AddDays(day - 1);

    private static BatchPlan Planned(BatchOrder order) => Make(order).Plan!.Batches[0];

    private static PlanResult Make(BatchOrder order, SiteRules? rules = null) =>
        SeasonPlanner.Make(Scenario([Mat(9), Bench(9), Table(9)], [order], rules));
}
