using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Values;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>Seasons small enough to draw by hand, to the tray and the day.</summary>
public class GanttTests
{
    [Fact]
    public void A_direct_batch_with_room_keeps_the_hand_made_dates()
    {
        // Sown Monday day 0 at 08:00 on a 20 C mat: 30 degree-days at 10 a day = up on day 3 at 08:00, and the round of that instant
        // counts. Grown 14 days later on day 17 (Thursday); table. Nights 17, 18, 19 harden; day 20 is a Sunday; out on Monday day 21.
        var scenario = Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, Monday)]);
        var plan = Plan(scenario).Batches[0];
        Assert.Equal(4, plan.Trays);
        Assert.Equal(Monday, plan.SowOn);
        Assert.Equal((Monday.AddDays(3), Monday.AddDays(3)), (plan.EmergeOn, plan.OffMatOn));
        Assert.Equal(Monday.AddDays(17), plan.TableOn);
        Assert.Equal(Monday.AddDays(21), plan.SetOutOn);

        var result = PlayOnce(scenario);
        Assert.Equal([4, 4, 4, 0], Held(result, 0, 0, 3));
        Assert.Equal([0, 4, 4], Held(result, 1, 2, 4));
        Assert.Equal([4, 0, 0], Held(result, 1, 16, 18));
        Assert.Equal([0, 4, 4, 4, 4, 0], Held(result, 2, 16, 21));
        Assert.Equal(21, result.Batches[0].OutLast);
        Assert.Equal(200, result.Batches[0].PlantsInTime);
        Assert.True(result.Fits);
    }

    [Fact]
    public void Trays_that_find_no_mat_wait_and_then_start_on_a_bench()
    {
        // 2 of 4 trays have a mat on Monday. On Thursday (w = 3 = sow_wait_days) step 5 frees both places before step 6: the other two are
        // sown on the mat.
        var result = PlayOnce(Scenario([Mat(2), Bench(4), Table(4)], [Batch("a", 200, Monday)]));
        Assert.Equal([2, 2, 2, 2, 2, 2, 2, 0], Held(result, 0, 0, 7));
        Assert.Equal([2, 2, 2, 0], result.Waiting[0][0..4]);
        Assert.Equal(3, result.Batches[0].SownLast);
        Assert.Equal(6, result.Batches[0].BlockedTrayDays[0]);

        // Without any mat place all four start on the bench on day 3.
        var cold = PlayOnce(Scenario([Mat(0), Bench(4), Table(4)], [Batch("a", 200, Monday)]));
        Assert.Equal([0, 0, 0, 4], Held(cold, 1, 0, 3));
        Assert.Equal([4, 4, 4, 0], cold.Waiting[0][0..4]);
    }

    [Fact]
    public void A_full_table_holds_the_bench_and_the_bench_holds_the_mat()
    {
        // Two batches of 2 trays a week apart; one table place. Batch a: mat 0-2, bench 3-16, table from 17 one tray, out on 21; the other
        // tray gets the table on day 21 after the first leaves in the same round (set out comes first), nights 21-23, out on day 24.
        var result = PlayOnce(Scenario([Mat(2), Bench(2), Table(1)], [Batch("a", 100, Monday)]));
        Assert.Equal([1, 1, 1, 1, 1, 1, 1, 0], Held(result, 2, 17, 24));
        Assert.Equal([1, 1, 1, 1, 0], Held(result, 1, 17, 21));
        Assert.Equal([1, 1, 1, 1, 0], result.Waiting[2][17..22]);
        Assert.Equal(21, result.Batches[0].OutFirst);
        Assert.Equal(24, result.Batches[0].OutLast);

        // Day 24 is 3 days after the planned 21: still in time with late_days = 3; 50 plants x 3 days late.
        Assert.Equal(100, result.Batches[0].PlantsInTime);
        Assert.Equal(150, result.Batches[0].LatePlantDays);
    }

    [Fact]
    public void A_dense_flat_is_potted_up_into_full_trays()
    {
        // 120 plants in 50s: 3 trays; 120 seeds a flat: 1 flat, on the mat until day 3, on the bench as a flat; pot-up stage 7 days later
        // on day 10 (Thursday): 50 + 50 + 20 plants. Field size: 14 + 2 days of check after emergence on day 3 = day 19 (Saturday); table
        // on Monday 21; nights 21, 22, 23; out on Thursday 24.
        var scenario = Scenario([Mat(1), Bench(3), Table(3)], [PotUpBatch("p", 120, Monday, seedsPerFlat: 120)]);
        var plan = Plan(scenario).Batches[0];
        Assert.Equal((1, 3), (plan.Flats, plan.Trays));
        Assert.Equal(Monday.AddDays(10), plan.PotUpOn);
        Assert.Equal(Monday.AddDays(24), plan.SetOutOn);
        var result = PlayOnce(scenario);
        Assert.Equal([1, 3, 3], Held(result, 1, 9, 11));
        Assert.Equal([3, 0], Held(result, 1, 20, 21));
        Assert.Equal([0, 3, 3, 3, 0], Held(result, 2, 20, 24));
        Assert.Equal(120, result.Batches[0].PlantsInTime);
    }

    [Fact]
    public void A_flat_whose_trays_find_no_room_waits_whole()
    {
        // The flat needs 3 places and its own is freed first: two bench places are not enough until day 17, when the other batch's tray
        // leaves.
        var scenario = Scenario([Mat(2), Bench(3), Table(4)], [Batch("a", 50, Monday), PotUpBatch("p", 120, Monday, seedsPerFlat: 120)]);
        var result = PlayOnce(scenario);
        Assert.Equal([2, 2, 2], Held(result, 1, 10, 12));
        Assert.Equal(3, result.Waiting[1][10]);
        Assert.Equal(17, result.Batches[1].PottedUp);
        Assert.Equal(3, result.Held[1][17]);
    }

    [Fact]
    public void A_wanted_date_is_planned_backward_to_the_latest_work_day()
    {
        // Forward from Monday day 0 is day 21 and from Tuesday day 1: up 4, grown 18, nights 18-20, out Monday 21. Wednesday day 2: up 5,
        // grown on Saturday 19, table Monday 21, out 24. So for Monday 21 March 22nd the latest sow day is Tuesday.
        var scenario = Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, null) with { SetOut = Monday.AddDays(21) }]);
        var plan = Plan(scenario).Batches[0];
        Assert.Equal(Monday.AddDays(1), plan.SowOn);
        Assert.Equal(Monday.AddDays(21), plan.SetOutOn);
    }

    [Theory]
    [InlineData(0, 21)]
    [InlineData(1, 22)]
    [InlineData(4, 25)]
    [InlineData(5, 28)]
    [InlineData(7, 28)]
    public void A_sow_date_is_planned_forward_to_the_first_work_day_after_the_slack(int slack, int setOut)
    {
        // It could go out on Monday day 21. 1 day later is Tuesday 22 and 4 are Friday 25; 5 are Saturday 26, so Monday 28; 7 are Monday
        // 28.
        var scenario = Scenario([Mat(4), Bench(4), Table(4)], [Batch("a", 200, Monday)], new SiteRules { SlackDays = slack });
        var plan = Plan(scenario).Batches[0];
        Assert.Equal(Monday, plan.SowOn);
        Assert.Equal(Monday.AddDays(21), plan.ReadyOn);
        Assert.Equal(Monday.AddDays(setOut), plan.SetOutOn);
        Assert.Equal(setOut, PlayOnce(scenario).Batches[0].OutLast);
    }

    [Theory]
    [InlineData(25)]
    [InlineData(28)]
    [InlineData(29)]
    [InlineData(42)]
    public void A_batch_ready_longer_before_its_date_than_it_holds_is_a_warning(int wanted)
    {
        // Ready on Monday day 21 = 22 March and good for 7 days more: Monday 28 is the last date without a warning. Slack has no say with
        // both dates given.
        var scenario = Scenario(
            [Mat(4), Bench(4), Table(4)],
            [Batch("a", 200, Monday) with { SetOut = Monday.AddDays(wanted), Place = new SourcePlace("plan.csv", 2, 1) }],
            new SiteRules { SlackDays = 3 }
        );
        var plan = Plan(scenario);
        Assert.Equal(Monday.AddDays(wanted), plan.Batches[0].SetOutOn);
        string[] expected = wanted switch
        {
            29 =>
            [
                "plan.csv:2:1: batch \"a\" sown on 2027-03-01 is ready for the field on 2027-03-22, 8 days before the wanted 2027-03-30: "
                    + "its trays are past their best after 7 days and thrown out after 21; sow it later, or want it sooner",
            ],
            42 =>
            [
                "plan.csv:2:1: batch \"a\" sown on 2027-03-01 is ready for the field on 2027-03-22, 21 days before the wanted 2027-04-12: "
                    + "its trays are past their best after 7 days and thrown out after 21; sow it later, or want it sooner",
            ],
            _ => [],
        };
        Assert.Equal<string[]>(
            expected,
            [
                .. plan
                    .Warnings.Select(warning => warning.ToString())
                    .Where(warning => warning.StartsWith("plan.csv", StringComparison.Ordinal)),
            ]
        );
    }

    [Fact]
    public void Wanted_places_do_not_depend_on_the_places_there_are()
    {
        BatchOrder[] batches = [Batch("a", 200, Monday), Batch("b", 150, Monday.AddDays(1)), PotUpBatch("p", 300, Monday)];
        var tight = PlayOnce(Scenario([Mat(2), Bench(3), Table(1)], batches), PlaceLimits.None);
        var roomy = PlayOnce(Scenario([Mat(20), Bench(30), Table(10)], batches), PlaceLimits.None);
        Assert.Equal(roomy.Held, tight.Held);
    }
}
