using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// The days a sowing may be moved to. At the small site a tray comes up 3 days after sowing, is grown 14 days later, hardens 3 nights and
/// goes out on the next work day: sown on Monday 1 or Tuesday 2 March it is ready on Monday 22 March, sown from Wednesday 3 to Friday 5
/// March on Thursday 25 March.
/// </summary>
public class SowingChoicesTests
{
    [Fact]
    public void Without_a_tolerance_the_planned_day_is_the_only_one()
    {
        var plan = Plan(Order(sow: 1, earlier: 0, later: 0));
        Assert.Same(plan.Batches[0], Assert.Single(SowingChoices.Of(plan)[0]));
    }

    [Fact]
    public void A_sowing_without_a_wanted_date_moves_on_work_days_and_its_set_out_date_with_it() =>
        Assert.Equal(
            [(1, 22), (2, 22), (3, 25), (4, 25), (5, 25)],
            Choices(Order(sow: 2, earlier: 4, later: 5)).Select(choice => (choice.SowOn.Day, choice.SetOutOn.Day))
        );

    // Wanted on 22 March it is sown on the 2nd; on the 1st it is ready as well, from the 3rd on too late. Before the 1st the season is not
    // open.
    [Fact]
    public void A_wanted_date_stays_and_is_met() =>
        Assert.Equal(
            [(1, 22), (2, 22)],
            Choices(Order(setOut: 22, earlier: 5, later: 5)).Select(choice => (choice.SowOn.Day, choice.SetOutOn.Day))
        );

    // Sown on the 5th it is ready on the 25th, 3 days late as planned: no other day may be later than that, and earlier ones are better.
    [Fact]
    public void A_plan_that_is_late_may_get_no_later() =>
        Assert.Equal([2, 3, 4, 5], Choices(Order(sow: 5, setOut: 22, earlier: 3, later: 7)).Select(choice => choice.SowOn.Day));

    // Wanted on 12 April, three weeks after 22 March, it is sown on 23 March. Sown on 15 March it is ready on 5 April, 7 days before: not
    // past its best. Sown on Friday the 12th it is ready on 1 April, 11 days before, and the crop holds 7.
    [Fact]
    public void No_sowing_is_moved_so_early_that_it_is_past_its_best() =>
        Assert.Equal(
            [15, 16, 17, 18, 19, 22, 23],
            Choices(Order(setOut: 31 + 12, earlier: 11, later: 0)).Select(choice => choice.SowOn.Day)
        );

    [Fact]
    public void No_sowing_is_moved_before_the_test_of_its_seed() =>
        Assert.Equal(
            [3, 4, 5],
            Choices(Order(sow: 4, earlier: 3, later: 1) with { TestedOn = March(3) }).Select(choice => choice.SowOn.Day)
        );

    // Planned to be sown on the 15th though wanted on the 8th: any earlier day is better, but nothing is sown on the day it is wanted in
    // the field, or after it.
    [Fact]
    public void No_sowing_is_moved_to_its_wanted_date_or_past_it() =>
        Assert.Equal([5, 15], Choices(Order(sow: 15, setOut: 8, earlier: 10, later: 0)).Select(choice => choice.SowOn.Day));

    [Fact]
    public void Numbers_of_a_choice_that_cannot_be_worked_out_leave_it_out()
    {
        // 199 plants of seed of which one in 200 comes, with the trays given by hand: no number is worked out, so no choice is lost.
        var crop = SmallSite.Crop() with { GerminationCurve = [new(20, 0.5), new(25, 100)] };
        var site = SmallSite.Scenario(
            [SmallSite.Mat(8), SmallSite.Bench(20), SmallSite.Table(20)],
            [Order(sow: 1, later: 2) with { Trays = 2 }],
            crops: [crop]
        );
        Assert.Equal([1, 2, 3], SowingChoices.Of(SmallSite.Plan(site))[0].Select(choice => choice.SowOn.Day));
    }

    [Fact]
    public void No_sowing_is_moved_past_the_season()
    {
        var site = Site(Order(sow: 4, earlier: 0, later: 5));
        var plan = SmallSite.Plan(site with { Window = site.Window with { Closes = March(5) } });
        Assert.Equal([4, 5], SowingChoices.Of(plan)[0].Select(choice => choice.SowOn.Day));
    }

    // What a choice says is what planning the plan with that sow date says.
    [Fact]
    public void A_choice_is_the_batch_as_it_would_be_planned()
    {
        BatchOrder[] orders =
        [
            Order(sow: 8, earlier: 3, later: 4),
            SmallSite.PotUpBatch("pot", 120, null) with
            {
                SetOut = March(31 + 13),
                EarlierDays = 4,
                LaterDays = 2,
                Germination = 0.8,
            },
        ];
        var plan = Plan(orders);
        var choices = SowingChoices.Of(plan);
        for (var batch = 0; batch < 2; batch++)
        {
            Assert.InRange(choices[batch].Length, 3, 8);
            foreach (var choice in choices[batch])
            {
                BatchOrder[] moved = [.. orders];
                moved[batch] = choice.SowOn == plan.Batches[batch].SowOn ? orders[batch] : orders[batch] with { Sow = choice.SowOn };
                Assert.Equal(Text(Plan(moved).Batches[batch]), Text(choice));
            }
        }
    }

    private static string Text(BatchPlan batch) => (batch with { Mats = [], Benches = [], Tables = [] }).ToString();

    private static ImmutableArray<BatchPlan> Choices(BatchOrder order) => SowingChoices.Of(Plan(order))[0];

    private static SeasonPlan Plan(params BatchOrder[] orders) => SmallSite.Plan(Site(orders));

    private static Scenario Site(params BatchOrder[] orders) =>
        SmallSite.Scenario([SmallSite.Mat(8), SmallSite.Bench(20), SmallSite.Table(20)], orders);

    private static BatchOrder Order(int? sow = null, int? setOut = null, int earlier = 0, int later = 0) =>
        SmallSite.Batch("a", 100, null) with
        {
            Sow = sow is { } day ? March(day) : null,
            SetOut = setOut is { } wanted ? March(wanted) : null,
            EarlierDays = earlier,
            LaterDays = later,
        };

    private static DateOnly March(int day) => SmallSite.Monday.AddDays(day - 1);
}
