using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Review;

namespace BenchSim.Study.Tests.Review;

/// <summary>
/// A small season without luck, by hand (README of scenarios/by-hand). Agreed: a, Ada's 4 trays, sown on Monday 1 March, off the mat on the
/// 4th, to the table on the 18th, out on Monday the 22nd; b, Ben's 2 trays, sown on the 8th, off on the 11th, to the table on Thursday the
/// 25th, out on Monday the 29th. What happened: a as agreed, but nobody wrote that it went to the table. b was sown two days late, on the
/// 10th, and came off the mat on the 15th; up on the 13th, it is grown on Saturday the 27th, goes to the table on Monday the 29th, and is
/// out from 1 April: one tray then, the other on the 6th.
/// </summary>
public class ReviewRunnerTests
{
    private static readonly ImmutableArray<LogEntry> s_log =
    [
        Row(3, 1, LogKind.Sown, "a", 4, null, "mat"),
        Row(3, 4, LogKind.Moved, "a", 4, "mat", "bench"),
        Row(3, 10, LogKind.Sown, "b", 2, null, "mat") with
        {
            Minutes = 10,
        },
        Row(3, 15, LogKind.Moved, "b", 2, "mat", "bench"),
        Row(3, 22, LogKind.SetOut, "a", 4, "bench", null) with
        {
            Minutes = 5,
        },
        Row(3, 29, LogKind.Moved, "b", 2, "bench", "table"),
        Row(4, 1, LogKind.SetOut, "b", 1, "table", null),
        Row(4, 6, LogKind.SetOut, "b", 1, "table", null),
    ];

    [Fact]
    public void Each_job_has_the_day_agreed_the_day_done_and_how_late_it_was()
    {
        var review = Play(Plan(s_log));
        Assert.Equal(
            [
                "a Sow 03-01 03-01 0 4/4",
                "a OffMat 03-04 03-04 0 4/4",
                "a ToTable 03-18 - - 0/4",
                "a SetOut 03-22 03-22 0 4/4",
                "b Sow 03-08 03-10 2 2/2",
                "b OffMat 03-11 03-15 4 2/2",
                "b ToTable 03-25 03-29 4 2/2",
                "b SetOut 03-29 04-01 3 2/2",
            ],
            review.Batches.SelectMany(batch =>
                batch.Jobs.Select(job =>
                    $"{batch.Order.Id} {job.Kind} {job.Planned:MM-dd} {(job.Done is { } done ? $"{done:MM-dd}" : "-")} "
                    + $"{job.DaysLate?.ToString() ?? "-"} {job.PiecesDone}/{job.PiecesPlanned}"
                )
            ),
            StringComparer.Ordinal
        );

        // Both are out, no more than the 5 days of the rules after their dates.
        Assert.Equal((2, 2, 2, 2), (review.AgreedBatches, review.DueOut, review.OutBatches, review.OutInTime));
    }

    // 8 jobs, and only that of a to the table has no row.
    [Fact]
    public void A_job_without_a_row_is_counted_as_such()
    {
        Assert.Equal(
            ["Sow 2 2 [0 2] 0", "OffMat 2 2 [0 4] 0", "ToTable 2 1 [4] 4", "SetOut 2 2 [0 3] 0"],
            Play(Plan(s_log))
                .Kinds.Select(kind => $"{kind.Kind} {kind.Jobs} {kind.WithRow} [{string.Join(' ', kind.DaysLate)}] {kind.Middle}"),
            StringComparer.Ordinal
        );
    }

    // A log that ends on 15 March: b's table and field, and a's, were not due yet.
    [Fact]
    public void What_was_not_due_by_the_last_row_is_no_job_without_a_row()
    {
        var review = Play(Plan([.. s_log.Take(4)]));
        Assert.Equal(
            ["Sow 2 2", "OffMat 2 2"],
            review.Kinds.Select(kind => $"{kind.Kind} {kind.Jobs} {kind.WithRow}"),
            StringComparer.Ordinal
        );
        Assert.Equal((0, 0), (review.DueOut, review.OutBatches));
        Assert.Empty(review.Weeks);
    }

    // 8 March: a is on the bench and will be out on the 22nd, as it was. b is not sown; sown today it would be out on the 29th, and came on
    // 1 April: later. 15 March: b stands on the mat since the 10th, so out on 1 April. 22 March: no row says that a is on the table, so by
    // the forecast it goes there today and is out on the 25th; it went today: earlier. 29 March: b alone.
    [Fact]
    public void The_forecast_of_each_Monday_knows_what_had_been_written_down_by_then()
    {
        var review = Play(Plan(s_log));
        Assert.Equal(
            [
                "03-08: a 03-22 03-22 in, b 03-29 04-01 later",
                "03-15: a 03-22 03-22 in, b 04-01 04-01 in",
                "03-22: a 03-25 03-22 earlier, b 04-01 04-01 in",
                "03-29: b 04-01 04-01 in",
            ],
            review.Weeks.Select(week =>
                $"{week.Day:MM-dd}: "
                + string.Join(
                    ", ",
                    week.Cases.Select(one =>
                        $"{review.Plan.Batches[one.Batch].Order.Id} {one.P50:MM-dd} {one.OutOn:MM-dd} "
                        + (
                            one.IsEarlier ? "earlier"
                            : one.IsLater ? "later"
                            : "in"
                        )
                    )
                )
            ),
            StringComparer.Ordinal
        );
        Assert.Equal([(1, 0, 1), (2, 0, 0), (1, 1, 0), (1, 0, 0)], review.Weeks.Select(week => (week.InRange, week.Earlier, week.Later)));

        // 22 March: a three days sooner, b to the day.
        Assert.Equal([0, 0, -3, 0], review.Weeks.Select(week => week.MiddleOff!.Value));
        Assert.Equal(7, review.Cases);
    }

    // The sowing of b, written down on the 20th only, was not known on the 15th: by then it had still to be sown, that day, to be out on
    // Monday 5 April (up on the 18th, grown on 1 April, three nights).
    [Fact]
    public void A_row_written_down_later_was_not_known()
    {
        var late = s_log.SetItem(2, s_log[2] with { Entered = new DateOnly(2027, 3, 20) });
        var week = Play(Plan(late)).Weeks[1];
        Assert.Equal((new DateOnly(2027, 3, 15), new DateOnly(2027, 4, 5)), (week.Day, week.Cases[1].P50!.Value));
        Assert.True(week.Cases[1].IsEarlier);
    }

    // 2 trays sown at 4 minutes, 4 set out at half a minute.
    [Fact]
    public void What_was_timed_stands_beside_the_minutes_of_the_site()
    {
        var spent = Play(Plan(s_log)).Minutes;
        Assert.Equal(
            [(LogKind.Sown, 2, 1, 10.0, (double?)8), (LogKind.SetOut, 3, 1, 5.0, 2)],
            spent.Select(each => (each.What, each.Rows, each.Timed, each.Minutes, each.ByTheRules))
        );
    }

    [Fact]
    public void A_batch_that_was_not_agreed_has_no_day_agreed_and_one_that_left_the_plan_nothing_done()
    {
        var now = Plan(s_log);
        var agreed = SmallSite.Plan(
            now.Scenario with
            {
                Log = [],
                Batches = [now.Scenario.Batches[0], SmallSite.Batch("c", 50, SmallSite.Monday)],
            }
        );
        var review = ReviewRunner.Play(agreed, now, new StudyOptions { Seasons = 2, Seed = 7 }, null, CancellationToken.None);
        Assert.Equal(["a", "b", "c"], review.Batches.Select(batch => batch.Order.Id), StringComparer.Ordinal);
        Assert.Null(review.Batches[1].Agreed);
        Assert.All(review.Batches[1].Jobs, job => Assert.Null(job.DaysLate));
        Assert.All(review.Batches[2].Jobs, job => Assert.Equal((null, 0), (job.Done, job.PiecesDone)));
        Assert.Equal((2, 1, 1), (review.AgreedBatches, review.OutBatches, review.OutInTime));
    }

    // Deliveries of 100 gallons and of 378.541 litres, which are 100 gallons; a meter read at 1,000 and at 1,060 gallons: 260 in all. A row
    // without a unit, and one of a house that burns none, are not used.
    [Fact]
    public void Fuel_counted_stands_beside_what_the_trays_of_the_log_took_and_what_the_plan_was_to_take()
    {
        LogEntry Fuel(double count, string note, string? space = "main") =>
            new()
            {
                Date = new DateOnly(2027, 4, 2),
                What = LogKind.Fuel,
                Count = count,
                Space = space,
                Note = note,
            };
        var plan = Heated(
            Plan([
                .. s_log,
                Fuel(100, "gallons"),
                Fuel(378.541, "delivered, litres", null),
                Fuel(1000, "meter, gallons", "bench"),
                Fuel(1060, "meter, gallons"),
                Fuel(5, "barrels"),
                Fuel(5, "gal", "table"),
            ])
        );
        var review = Play(plan);
        var fuel = Assert.Single(review.Fuel);
        Assert.Equal((4, 2), (fuel.Rows, review.FuelRowsUnread));
        Assert.Equal(260, fuel.Counted!.Value, 1e-3);

        // The weather is the same on every day, and the house is open while trays stand in it: by the plan from 1 to 24 March, as b goes to
        // the table on the 25th; by the log up to the 28th. Each day takes the same.
        Assert.Equal(24, review.Agreed.Houses[0].DaysOpen.Mean);
        Assert.Equal(28.0 / 24, fuel.AsItWas / fuel.Expected!.Value.Mean, 1e-3);
    }

    [Theory]
    [InlineData("propane", 10, "gallons", 10)]
    [InlineData("propane", 10, "Gal.", 10)]
    [InlineData("propane", 37.8541, "litres (truck)", 10)]
    [InlineData("propane", 10, "kWh", double.NaN)]
    [InlineData("gas", 3, "therms", 3)]
    [InlineData("electricity", 90, "meter 90 kWh", 90)]
    [InlineData("wood", 2, "cords", 2)]
    [InlineData("propane", 10, "", double.NaN)]
    public void The_note_says_the_unit(string fuel, double count, string note, double bought) =>
        Assert.Equal(bought, FuelWords.Bought(Fuels.All.Single(each => each.Id == fuel), count, note) ?? double.NaN, 1e-3);

    [Fact]
    public void Every_figure_says_where_it_comes_from()
    {
        var figures = ReviewFigure.All(Play(Heated(Plan(s_log))));
        Assert.Equal(Basis.Counted, figures.Single(figure => figure.Name == "hours_timed").Basis);
        Assert.Equal(Basis.Assumed, figures.Single(figure => figure.Name == "hours_by_the_rules").Basis);
        Assert.Equal(Basis.Played, figures.Single(figure => figure.Name == "fuel_expected").Basis);
        Assert.Equal(15 / 60.0, figures.Single(figure => figure.Name == "hours_timed").Value, 1e-9);
        Assert.Equal(10 / 60.0, figures.Single(figure => figure.Name == "hours_by_the_rules").Value, 1e-9);
    }

    [Fact]
    public void The_answer_does_not_depend_on_the_threads()
    {
        string With(int threads)
        {
            var options = new StudyOptions
            {
                Seasons = 6,
                Seed = 7,
                Threads = threads,
            };
            var review = ReviewRunner.Play(Plan(s_log), Plan(s_log), options, null, CancellationToken.None);
            return string.Join('\n', review.Weeks.Select(week => string.Join(' ', week.Cases)));
        }

        Assert.Equal(With(1), With(3));
    }

    private static SeasonReview Play(SeasonPlan plan)
    {
        var agreed = SmallSite.Plan(plan.Scenario with { Log = [] });
        return ReviewRunner.Play(agreed, plan, new StudyOptions { Seasons = 4, Seed = 7 }, null, CancellationToken.None);
    }

    private static LogEntry Row(int month, int day, LogKind what, string batch, int trays, string? from, string? space) =>
        new()
        {
            Date = new DateOnly(2027, month, day),
            What = what,
            BatchId = batch,
            Trays = trays,
            From = from,
            Space = space,
        };

    private static SeasonPlan Plan(ImmutableArray<LogEntry> log) =>
        SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(10), SmallSite.Bench(20), SmallSite.Table(10)],
                [SmallSite.Batch("a", 200, SmallSite.Monday), SmallSite.Batch("b", 100, SmallSite.Monday.AddDays(7), grower: "Ben")]
            ) with
            {
                Log = log,
            }
        );

    private static SeasonPlan Heated(SeasonPlan plan) =>
        plan with
        {
            Scenario = plan.Scenario with
            {
                Houses =
                [
                    plan.Scenario.Houses[0] with
                    {
                        Body = new HouseBody
                        {
                            Shell = HouseShell.Hoop(6, 14),
                            Covering = "double polyethylene",
                            UValue = 4.5,
                            AirChanges = 1,
                            Transmission = 0.6,
                        },
                        Opening = HouseOpening.WhenNeeded,
                        Heat = new HouseHeat { Fuel = Fuels.Propane, Efficiency = 0.8 },
                    },
                ],
            },
        };
}
