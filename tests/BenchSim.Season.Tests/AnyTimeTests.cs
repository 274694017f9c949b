using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>
/// Rounds at any time (docs/model.md section 3), by hand: the same steps whenever a sowing falls due or a threshold is reached. The site is
/// the one of <see cref="SmallSite"/>, but for seed that needs 25 degree-days, which is 2.5 days, to come up: never at the hour of a work
/// round.
/// </summary>
public class AnyTimeTests
{
    private static readonly SiteRules s_anyTime = new() { Rounds = RoundKind.AnyTime };

    private static readonly Crop s_quick = Crop() with { EmergeHeat = 25 };

    // Sown on day 0 at 08:00, up and off the mat 2.5 days later, on day 2 at 20:00; grown 14 days after that, on day 16 at 20:00. A work
    // round would move it on days 3 and 17. What is kept of a day is what stands just after 08:00, so the moves show in the places a day
    // later.
    [Fact]
    public void A_tray_moves_at_the_hour_at_which_it_is_ready()
    {
        var result = PlayOnce(Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 50, Monday)], s_anyTime, [s_quick]));
        var batch = result.Batches[0];
        Assert.Equal((0, 2, 16), (batch.SownLast, batch.OffMat, batch.OnTable));
        Assert.Equal([1, 1, 1, 0], Held(result, 0, 0, 3));
        Assert.Equal([0, 1, 1], Held(result, 1, 2, 4));
        Assert.Equal([1, 0], Held(result, 1, 16, 17));
        Assert.Equal((1, 1), (result.Moved[2], result.Moved[16]));

        var rounds = PlayOnce(Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 50, Monday)], null, [s_quick])).Batches[0];
        Assert.Equal((0, 3, 17), (rounds.SownLast, rounds.OffMat, rounds.OnTable));
    }

    // Of two trays the second waits for the only mat place. It is sown at 20:00 on day 2, when the first leaves, and is up on day 5 at
    // 08:00. A place that it lacked just after 08:00 on days 0, 1 and 2 is three tray-days of waiting.
    [Fact]
    public void A_place_that_is_left_is_taken_at_the_same_hour()
    {
        var result = PlayOnce(Scenario([Mat(1), Bench(2), Table(2)], [Batch("a", 100, Monday)], s_anyTime, [s_quick]));
        Assert.Equal([1, 0, 1, 0], result.Sown[..4]);
        Assert.Equal([1, 1, 1, 1, 1, 0], Held(result, 0, 0, 5));
        Assert.Equal((2, 5), (result.Batches[0].SownLast, result.Batches[0].OffMat));
        Assert.Equal([1, 1, 1, 0], result.Waiting[0][..4]);
    }

    // With no night to harden, a tray that comes to the table on its date may go out at once. A work round moves it only once, so it goes
    // out a round later; at any time the steps are gone through until nothing moves any more.
    [Fact]
    public void The_steps_are_gone_through_until_nothing_moves()
    {
        var batch = Batch("a", 50, Monday) with { SetOut = Monday.AddDays(16) };
        var soft = s_quick with { HardeningNights = 0 };
        var result = PlayOnce(Scenario([Mat(1), Bench(1), Table(1)], [batch], s_anyTime, [soft])).Batches[0];
        Assert.Equal((16, 16), (result.OnTable, result.OutLast));

        var rounds = PlayOnce(Scenario([Mat(1), Bench(1), Table(1)], [batch], null, [soft])).Batches[0];
        Assert.Equal((17, 18), (rounds.OnTable, rounds.OutLast));
    }

    // Seed that needs 15 days at 20 C is up on Tuesday day 15; given up after 14 days it is thrown out on day 14, at the daily hour of the
    // round, for reaching an age is no threshold.
    [Fact]
    public void What_never_comes_up_is_thrown_out_at_the_daily_hour()
    {
        var slow = Crop() with { EmergeHeat = 150, EmergeGiveUpDays = 14 };
        var result = PlayOnce(
            Scenario([Mat(1), Bench(1), Table(1)], [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(40) }], s_anyTime, [slow])
        );
        Assert.Equal([1, 0], Held(result, 0, 13, 14));
        Assert.Equal(1, result.Batches[0].Discarded[(int)DiscardReason.NeverCameUp]);
    }

    // Two a day may be sown. Trays 1 and 2 are sown on day 0, trays 3 and 4 a day later, 5 on day 2: the hands of a day are the day's,
    // however often the steps are gone through.
    [Fact]
    public void Hands_begin_anew_each_day_not_each_time()
    {
        var result = PlayOnce(
            Scenario([Mat(9), Bench(9), Table(9)], [Batch("a", 250, Monday)], s_anyTime with { SowTraysADay = 2 }, [s_quick])
        );
        Assert.Equal([2, 2, 1, 0], result.Sown[..4]);
    }

    // The flat is up on day 2 at 20:00 and at its pot-up stage 7 days later, on day 9 at 20:00.
    [Fact]
    public void A_flat_is_potted_up_at_the_hour_at_which_it_is_ready()
    {
        var batch = PlayOnce(
            Scenario([Mat(1), Bench(3), Table(3)], [PotUpBatch("p", 120, Monday, seedsPerFlat: 120)], s_anyTime, [s_quick])
        ).Batches[0];
        Assert.Equal((9, 3), (batch.PottedUp, batch.TraysStarted));
    }

    [Fact]
    public void Reliefs_and_giving_up_are_as_in_a_work_round()
    {
        var unheated = s_quick with { BottomHeat = false };
        var rules = s_anyTime with { Reliefs = [Relief.Aisle], SowGiveUpDays = 0 };
        var result = PlayOnce(Scenario([Bench(1) with { AislePlaces = 1 }, Table(4)], [Batch("a", 150, Monday)], rules, [unheated]));
        Assert.Equal([2, 0], result.Sown[..2]);
        Assert.Equal(1, result.Batches[0].GivenUp);
    }
}
