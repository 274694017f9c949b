using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>
/// The rules of a season on the very day, tray or plant at which they turn, by hand on the site of <see cref="SmallSite"/>: sown on day 0 a
/// tray is up on day 3, grown on day 17, due and wanted on Monday, day 21.
/// </summary>
public class LimitOfRulesTests
{
    private static readonly Crop s_unheated = Crop() with { BottomHeat = false };

    // docs/model.md section 3: a refusal is charged to the first of the group. One tray is sown and is up on day 3, when no bench has a
    // place; the other finds no mat on days 0, 1 and 2 and is given up in the round of day 3.
    [Fact]
    public void A_refusal_is_charged_to_the_first_mat_and_the_first_bench_of_its_group()
    {
        var result = PlayOnce(
            Scenario(
                [Mat(1), Mat(0) with { Id = "mat 2" }, Bench(0), Bench(0, "bench 2"), Table(9)],
                [Batch("a", 100, Monday)],
                new SiteRules { SowWaitDays = 2, SowGiveUpDays = 3 }
            )
        );
        Assert.Equal([1, 1, 1, 0, 0], result.Waiting[0][..5]);
        Assert.Equal([0, 0, 0, 1, 1], result.Waiting[2][..5]);
        Assert.All([1, 3], space => Assert.Equal(0, result.Waiting[space].Sum()));
        Assert.Equal([3L, 0], result.Batches[0].BlockedTrayDays[..2]);
    }

    // Two bench places for three trays, the third not sown until the first two go to a table, and no table has a place: grown on day 17,
    // they are thrown out on day 42, 21 days after they were due. So one tray waits for a bench on days 0 to 41, two for a table on days 17
    // to 41.
    [Fact]
    public void A_refusal_is_charged_to_the_first_bench_and_the_first_table_of_its_group()
    {
        var result = PlayOnce(
            Scenario(
                [Bench(1), Bench(1, "bench 2"), Table(0), Table(0) with { Id = "table 2" }],
                [Batch("a", 150, Monday)],
                new SiteRules { SowWaitDays = 60, SowGiveUpDays = 60 },
                [s_unheated]
            )
        );
        Assert.Equal([42L, 0, 2 * 25, 0], result.Batches[0].BlockedTrayDays);
        Assert.Equal((42, 0), (result.Waiting[0].Sum(), result.Waiting[1].Sum()));
        Assert.Equal((50, 0), (result.Waiting[2].Sum(), result.Waiting[3].Sum()));
    }

    // Due on day 21 and thrown out 21 days later, on day 42, unless it can be set out in that round: setting out comes first. The field
    // wants nights of 12 C. They come from the night after day 42 on, and it goes out; or a day later, and it does not.
    [Theory]
    [InlineData(43, 42, 0)]
    [InlineData(44, -1, 1)]
    public void A_tray_that_can_go_out_on_its_last_day_is_not_thrown_out(int warmFrom, int outOn, int thrownOut)
    {
        var batch = Held(warmFrom);
        Assert.Equal((outOn, thrownOut), (batch.OutLast, batch.TraysDiscarded));
    }

    // From sow_wait_days on a crop that finds no mat tries the benches.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void A_sowing_waits_its_days_for_a_mat(int wait)
    {
        var result = PlayOnce(Scenario([Mat(0), Bench(9), Table(9)], [Batch("a", 50, Monday)], new SiteRules { SowWaitDays = wait }));
        Assert.Equal(wait, result.Batches[0].SownFirst);
    }

    // docs/model.md section 9: sown by the first work day later than planned + sow_wait_days. Planned for Monday, day 0, with 2 days: by
    // Wednesday + 1 = Thursday, day 3; with 4 days later than Friday, so by Monday, day 7.
    [Theory]
    [InlineData(2, 3, true)]
    [InlineData(2, 4, false)]
    [InlineData(4, 7, true)]
    [InlineData(4, 8, false)]
    public void A_sowing_is_in_time_up_to_the_work_day_after_its_days_of_waiting(int wait, int sown, bool inTime)
    {
        var bench = Bench(0) with { Changes = [new PlacesFrom(Monday.AddDays(sown), 9)] };
        var result = PlayOnce(
            Scenario([bench, Table(9)], [Batch("a", 50, Monday)], new SiteRules { SowWaitDays = wait, SowGiveUpDays = 60 }, [s_unheated])
        );
        Assert.Equal((sown, inTime), (result.Batches[0].SownLast, result.SownInTime));
    }

    // One tray a day goes out, from day 21 on. By the first of two half are out; of three the second makes it two of three; of four the
    // second makes it half.
    [Theory]
    [InlineData(2, 21, 22)]
    [InlineData(3, 22, 23)]
    [InlineData(4, 22, 24)]
    public void The_median_tray_is_the_first_by_which_half_are_out(int trays, int median, int last)
    {
        var batch = OneADay(trays, new SiteRules { SetOutTraysADay = 1 }).Batches[0];
        Assert.Equal((21, median, last), (batch.OutFirst, batch.OutMedian, batch.OutLast));
    }

    // Of four trays one goes out on its date and three after it: a quarter of the plants in time, and just that is asked for.
    [Theory]
    [InlineData(0.25, true)]
    [InlineData(0.251, false)]
    public void A_goal_that_is_just_met_is_met(double goal, bool fits)
    {
        var result = OneADay(
            4,
            new SiteRules
            {
                SetOutTraysADay = 1,
                LateDays = 0,
                ServiceGoal = goal,
            }
        );
        Assert.Equal((50L, fits), (result.PlantsInTime, result.Fits));
        Assert.Equal((50L, fits), (result.PlantsInTimeWeatherCounted, result.FitsWeatherCounted));
    }

    // The play ends on day 21 + 21 + 14 = 56. Plants that never go out are late from their date, day 21, to that day: 50 x 35.
    [Fact]
    public void Plants_that_never_go_out_are_late_until_the_last_day()
    {
        var batch = PlayOnce(Scenario([Bench(0), Table(9)], [Batch("a", 50, Monday)], crops: [s_unheated])).Batches[0];
        Assert.Equal((1, 50, 50 * 35L), (batch.GivenUp, batch.PlantsShort, batch.LatePlantDays));
    }

    // Due on day 21, it stands well for 7 days: to day 28.
    [Theory]
    [InlineData(29, 28, 0)]
    [InlineData(30, 29, 1)]
    public void A_tray_is_over_held_from_the_day_after_its_hold(int warmFrom, int outOn, int overHeld)
    {
        var batch = Held(warmFrom);
        Assert.Equal((outOn, overHeld, 0), (batch.OutLast, batch.OverHeld, batch.OverHeldForPlace));
    }

    // The table opens on day 18, a day after the tray was grown: a day of refusal, and it is hardened on day 21 all the same. Out on day
    // 29, 8 days after it was due, it would have been within its hold of 7 days without that day; out on day 30 it would not.
    [Theory]
    [InlineData(30, 29, 1)]
    [InlineData(31, 30, 0)]
    public void It_is_over_held_for_place_where_its_hold_would_have_done_without_the_days_of_refusal(int warmFrom, int outOn, int forPlace)
    {
        var batch = Held(warmFrom, Table(0) with { Changes = [new PlacesFrom(Monday.AddDays(18), 9)] });
        Assert.Equal((outOn, 1, forPlace), (batch.OutLast, batch.OverHeld, batch.OverHeldForPlace));
    }

    // Nights in the field are too cold, 10 C for the 12 C it wants, before the night that begins a day.
    private static BatchOutcome Held(int warmFrom, Space? table = null) =>
        PlayOnce(
            Scenario(
                [Mat(9), Bench(9), table ?? Table(9)],
                [Batch("a", 50, Monday)],
                new SiteRules { ForecastNights = 1 },
                [Crop() with { FieldAboveC = 12 }],
                new RecordedWeather(
                    [.. Enumerable.Range(-40, 400).Select(day => new DailyWeather(Monday.AddDays(day), day < warmFrom ? 10 : 13, 14, 0))],
                    2027,
                    "weather.csv"
                )
            )
        ).Batches[0];

    private static SeasonResult OneADay(int trays, SiteRules rules) =>
        PlayOnce(Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", trays * 50, Monday)], rules));
}
