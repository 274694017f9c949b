using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Play;
using BenchSim.Study.Billing;

namespace BenchSim.Study.Tests.Billing;

/// <summary>
/// A tiny farm of two growers by hand (dates: README of scenarios/by-hand). Ada's 4 trays are sown on Monday 1 March and stand in the
/// house, on mat and bench, up to 17 March; on the 18th they go to the table, which is outdoors. Ben's 2 trays are sown on Monday 8 March,
/// come off the mat on the 11th and stand in the house up to the 24th. No heater is given, so each of these 24 days counts 1.
/// </summary>
public class BillRunnerTests
{
    private static readonly StudyOptions s_options = new() { Seasons = 3, Seed = 7 };

    // Equal: 24 / 2. Tray-days: Ada 4 x 17 = 68, Ben 2 x 17 = 34: 24 x 68/102 = 16, and 8.
    // Full weeks, none full: 1 to 7 March 7 days, Ada alone; 8 to 14, 3.5 each; 15 to 21, 3.5 each; 22 to 24, 3 days, Ben alone: 14 and 10.
    [Fact]
    public void Each_rule_gives_what_the_pencil_gives()
    {
        var bills = Play(Farm(bench: 20));
        Assert.Equal((BillUnit.Days, 24.0, 24.0, 24.0), (bills.Things.Unit, bills.Mean, bills.P10, bills.P90));
        Assert.Equal("Ada 12 16 14; Ben 12 8 10", Told(bills));
    }

    // The bench has 6 places and holds 4 + 2 from the 11th to the 17th, so the weeks of the 8th and the 15th are full.
    // 8 to 14: Ada 28, Ben 14 place-days: 7 x 28/42 = 4.667, and 2.333. 15 to 21: Ada 12, Ben 14: 7 x 12/26 = 3.231, and 3.769.
    // Ada 7 + 4.667 + 3.231 = 14.897; Ben 2.333 + 3.769 + 3 = 9.103 (in thousandths).
    [Fact]
    public void Full_weeks_are_those_in_which_the_benches_are()
    {
        Assert.Equal("Ada 12 16 14.897; Ben 12 8 9.103", Told(Play(Farm(bench: 6))));

        // With 7 places one of them is free, more than one of twenty.
        Assert.Equal("Ada 12 16 14; Ben 12 8 10", Told(Play(Farm(bench: 7))));
    }

    // By the log, up to the morning of Monday 15 March: 14 days; Ada 4 x 14 = 56, Ben 2 x 7 = 14 place-days: 14 x 56/70 = 11.2, and 2.8.
    // Full weeks, none full: 7 of Ada's alone and 7 of both: 10.5 and 3.5. What is planned after that day is not in it.
    [Theory]
    [InlineData(BillRule.Equal, 7, 7)]
    [InlineData(BillRule.TrayDays, 11.2, 2.8)]
    [InlineData(BillRule.FullWeeks, 10.5, 3.5)]
    public void So_far_is_what_the_log_says(BillRule rule, double ada, double ben)
    {
        var plan = Farm(bench: 20);
        LogEntry[] log =
        [
            Row(1, LogKind.Sown, "a", 4, null, "mat"),
            Row(4, LogKind.Moved, "a", 4, "mat", "bench"),
            Row(8, LogKind.Sown, "b", 2, null, "mat"),
        ];
        var today = new DateOnly(2027, 3, 15);
        var past = LedgerPast.Of(plan, BenchLedger.Of(plan.Scenario, log, today), today);
        var soFar = BillRunner.SoFar(plan with { Past = past }, today, rule, 7);
        Assert.Equal(ada, soFar.Of("Ada"), 1e-9);
        Assert.Equal(ben, soFar.Of("Ben"), 1e-9);
        Assert.Equal(14, soFar.Total, 1e-9);
    }

    [Fact]
    public void Late_batches_and_days_in_hand_stand_with_their_grower()
    {
        // Ben wants his out on Thursday 18 March, ten days before it can be ready: 8 March + 3 + 14 is the 25th, and 3 nights.
        var bills = Play(Farm(bench: 20, benOut: new DateOnly(2027, 3, 18)));
        Assert.Equal((1, 0), (bills.Growers[0].Batches, bills.Growers[0].LikelyLate));
        Assert.Equal((1, 1, -11), (bills.Growers[1].Batches, bills.Growers[1].LikelyLate, bills.Growers[1].DaysInHand));
    }

    // Prices: the heat of every day in fuel at 2.40 and 240 W of mats at 0.25 a kilowatt-hour, as they stand in the season.
    [Fact]
    public void With_every_price_the_bill_is_the_money_of_the_season()
    {
        var plan = Priced(Farm(bench: 20), 2.40, 0.25);
        var season = new SeasonResult();
        new SeasonPlayer(plan, 7).Play(0, PlaceLimits.AsGiven, season);
        var fuel = Fuels.Propane.Units(season.HeatWattHours[0].Sum(), 0.8) * 2.40;

        // A tray on the mats on 1 to 3 and on 8 to 10 March: 6 days x 24 h x 0.24 kW x 0.25 = 8.64.
        Assert.True(fuel > 1);
        var bills = Play(plan);
        Assert.Equal(BillUnit.Money, bills.Things.Unit);
        Assert.Equal(fuel + 8.64, bills.Mean, 2e-3);
        Assert.Equal(bills.Mean / 2, bills.Growers[0].Amounts[0], 2e-3);
    }

    [Fact]
    public void Without_a_price_it_is_kilowatt_hours()
    {
        var plan = Priced(Farm(bench: 20), 2.40, null);
        var season = new SeasonResult();
        new SeasonPlayer(plan, 7).Play(0, PlaceLimits.AsGiven, season);
        var bills = Play(plan);
        Assert.Equal(BillUnit.Heat, bills.Things.Unit);
        Assert.Equal((season.HeatWattHours[0].Sum() / 1000.0) + (6 * 24 * 0.24), bills.Mean, 2e-3);
    }

    [Fact]
    public void The_answer_does_not_depend_on_the_threads()
    {
        var plan = Plans.Small(days: 60, plantsEach: 700);
        string With(int threads)
        {
            var bills = BillRunner.Play(
                plan,
                new StudyOptions
                {
                    Seasons = 12,
                    Seed = 3,
                    Threads = threads,
                },
                null,
                CancellationToken.None
            );
            return $"{bills.Mean} {bills.P10} {bills.P90} {Told(bills)}";
        }

        Assert.Equal(With(1), With(3));
    }

    private static BillForecast Play(SeasonPlan plan) => BillRunner.Play(plan, s_options, null, CancellationToken.None);

    private static string Told(BillForecast bills) =>
        string.Join(
            "; ",
            bills.Growers.Select(each => $"{each.Grower} {string.Join(' ', each.Amounts.Select(one => Math.Round(one, 3)))}")
        );

    private static LogEntry Row(int day, LogKind what, string batch, int trays, string? from, string space) =>
        new()
        {
            Date = new DateOnly(2027, 3, day),
            What = what,
            BatchId = batch,
            Trays = trays,
            From = from,
            Space = space,
        };

    private static SeasonPlan Farm(int bench, DateOnly? benOut = null) =>
        SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(10), SmallSite.Bench(bench), SmallSite.Table(10)],
                [
                    SmallSite.Batch("a", 200, SmallSite.Monday),
                    SmallSite.Batch("b", 100, SmallSite.Monday.AddDays(7), grower: "Ben") with
                    {
                        SetOut = benOut,
                    },
                ]
            )
        );

    private static SeasonPlan Priced(SeasonPlan plan, double fuel, double? current)
    {
        var scenario = plan.Scenario;
        var house = scenario.Houses[0] with
        {
            Body = new HouseBody
            {
                Shell = HouseShell.Hoop(6, 14),
                Covering = "double polyethylene",
                UValue = 4.5,
                AirChanges = 1,
                Transmission = 0.6,
            },
            Heat = new HouseHeat
            {
                Fuel = Fuels.Propane,
                Efficiency = 0.8,
                Price = fuel,
            },
        };
        return plan with
        {
            Scenario = scenario with
            {
                Houses = [house],
                Spaces = [scenario.Spaces[0] with { Power = new MatPower(240, 1, null, null, current) }, .. scenario.Spaces.Skip(1)],
            },
        };
    }
}
