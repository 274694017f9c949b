using System.Text.Json;
using BenchSim.Season.Inputs;
using BenchSim.Study.Bottlenecks;
using BenchSim.Study.Results;
using static Support.SmallSite;

namespace BenchSim.Study.Tests.Bottlenecks;

/// <summary>
/// Sites small enough that the bottleneck is known by construction. One crop without luck: up 3 days after sowing, grown 14 days later, 3
/// nights on the table. Two batches of one tray, 50 plants, sown on Monday 1 March (day 0): up on day 3, grown on day 17 (Thursday),
/// hardened on Sunday, out on Monday, day 21, as planned.
/// </summary>
public class BottleneckRunnerTests
{
    private static readonly JsonSerializerOptions s_anyNumber = new()
    {
        NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    // One mat place: the second tray is sown when the first leaves, on day 3; it comes up on day 6, is grown on Saturday, day 20, goes to
    // the table on Monday, day 21, and out on day 24: 50 plants x 3 days = 150 late plant-days. With a second mat place none is late.
    [Fact]
    public void One_mat_place_too_few_is_found_to_be_the_bottleneck()
    {
        var result = Play(Mat(1), Bench(10), Table(10));

        Assert.Equal(150, result.LatePlantDays);
        Assert.Equal("mat bench table", string.Join(" ", result.Unlimited.Select(trial => trial.Space.Id)));
        Assert.Equal([-150, 0, 0], result.Unlimited.Select(trial => trial.LatePlantDays.Difference));
        Assert.Equal([true, false, false], result.Unlimited.Select(trial => trial.LatePlantDays.IsReal));
        Assert.Equal([-150, 0, 0], result.Larger.Select(trial => trial.LatePlantDays.Difference));
        Assert.Equal([1, 1, 1], result.Larger.Select(trial => trial.PlacesAdded));
        Assert.All(result.Pairs, pair => Assert.False(pair.HelpsTogether));

        // The tray waits unsown for 3 days of the first week.
        var waits = Assert.Single(result.Waits, wait => wait.TrayDays.Most > 0);
        Assert.Equal((null, "mat", 3.0, 3), (waits.From, waits.By.Id, waits.TrayDays.Mean, waits.ByWeek[0].P50));
    }

    // As above, but a day late is late: the second tray misses its date by three days, and its 50 plants with it. A second mat place brings
    // them out in time.
    [Fact]
    public void Plants_in_time_are_counted_as_a_grower_feels_them()
    {
        Space[] spaces = [Mat(1), Bench(10), Table(10)];
        var site = Scenario(spaces, [Batch("a", 50, Monday), Batch("b", 50, Monday)]);
        var plan = Plan(site with { Rules = site.Rules with { LateDays = 0 } });
        var result = BottleneckRunner.Play(plan, new StudyOptions { Seasons = 3, Seed = 1 }, null, CancellationToken.None);

        Assert.Equal("mat bench table", string.Join(" ", result.Unlimited.Select(trial => trial.Space.Id)));
        Assert.Equal([50, 0, 0], result.Unlimited.Select(trial => trial.PlantsInTime.Difference));
        Assert.Equal([true, false, false], result.Unlimited.Select(trial => trial.Helps));
        Assert.Equal([50, 0, 0], result.Larger.Select(trial => trial.PlantsInTime.Difference));
    }

    // One mat place and one table place. As it is the second tray is sown 3 days late, as above, and finds the table free on day 21: 150
    // late plant-days. Without limit on the mat, both are grown on day 17; one takes the table until day 21, the other follows and goes out
    // on day 24: 150. Without limit on the table, the second is still sown late: 150. With both, none is late.
    [Fact]
    public void Two_that_help_only_together_are_found()
    {
        var result = Play(Mat(1), Bench(10), Table(1));

        Assert.Equal(150, result.LatePlantDays);
        Assert.All(result.Unlimited, trial => Assert.Equal((0.0, false), (trial.LatePlantDays.Difference, trial.LatePlantDays.IsReal)));
        var together = Assert.Single(result.Pairs, pair => pair.HelpsTogether);
        Assert.Equal(("mat", "table"), (together.First.Id, together.Second.Id));
        Assert.Equal(-150, together.LatePlantDays.Difference);
        Assert.Equal(-150, together.BeyondSum.Difference);
        Assert.Same(together, result.Pairs[0]);
    }

    [Fact]
    public void A_site_with_room_has_no_bottleneck_and_nobody_waits()
    {
        var result = Play(Mat(10), Bench(10), Table(10));

        Assert.Equal(0, result.LatePlantDays);
        Assert.All(result.Unlimited.Concat(result.Larger), trial =>
            Assert.Equal((0, 0), (trial.LatePlantDays.Differing, trial.Fits.Differing))
        );
        Assert.All(result.Waits, wait => Assert.Equal((0.0, 0), (wait.TrayDays.Most, wait.Happens.Hits)));
    }

    // Three intervals for each of 3 spaces without limit and 3 larger, five for each of 3 pairs: 33; each then has the confidence
    // 1 - 0.05 / 33.
    [Fact]
    public void The_intervals_allow_for_all_comparisons()
    {
        var result = Play(Mat(1), Bench(10), Table(10));

        Assert.Equal((33, 0.95), (result.Comparisons, result.Confidence));
        Assert.Equal(1 - (0.05 / 33), result.EachConfidence, 1e-15);
    }

    [Theory]
    [InlineData(null, 30, 3)]
    [InlineData(null, 31, 4)]
    [InlineData(null, 0, 1)]
    [InlineData(8, 52, 8)]
    public void A_unit_is_what_the_site_says_or_a_tenth(int? given, int places, int unit)
    {
        Assert.Equal(unit, BottleneckTrials.UnitOf(Mat(places) with { UnitPlaces = given }));
        Assert.Equal(
            Math.Max(unit, given ?? 10),
            BottleneckTrials.UnitOf(Mat(places) with { UnitPlaces = given, Changes = [new PlacesFrom(Monday, 100)] })
        );
    }

    [Fact]
    public void Spaces_that_no_batch_may_use_are_left_out()
    {
        var result = Play([Crop() with { Benches = ["bench"] }], Mat(1), Bench(10), Bench(5, "other"), Table(10));

        Assert.DoesNotContain(result.Unlimited, trial => trial.Space.Id == "other");
        Assert.Equal(3, result.Pairs.Length);
    }

    // Emergence and growth are drawn here, so that seasons differ.
    [Fact]
    public void Any_number_of_threads_gives_the_same_answer()
    {
        var plan = Plan(
            Scenario(
                [Mat(2), Bench(4), Table(3)],
                [Batch("a", 200, Monday), Batch("b", 200, Monday)],
                crops: [Crop() with { EmergeCv = 0.2, GrowthCv = 0.2 }]
            )
        );
        string[] texts =
        [
            .. new[] { 1, 3 }.Select(threads =>
                JsonSerializer.Serialize(
                    BottleneckRunner.Play(
                        plan,
                        new StudyOptions
                        {
                            Seasons = 50,
                            Seed = 4,
                            Threads = threads,
                        },
                        null,
                        CancellationToken.None
                    ),
                    s_anyNumber
                )
            ),
        ];

        Assert.Equal(texts[0], texts[1]);
        Assert.Contains("\"Differing\":", texts[0], StringComparison.Ordinal);
    }

    // One place on the warm bench, a cold house at 15 C without a place. Both trays are up on day 3. "a" takes the warm bench; "b" waits on
    // its mat in the warm house, grows there just as fast, and is out on its day, 21. With one place in the cold house it moves there on
    // day 3 and grows half as fast, by (15 - 10) / (20 - 10): grown on day 31, a Thursday, hardened on
    // Sunday, out on Monday, day 35: 50 plants
    // x 14 days = 700. Nobody waits for that: the 14 tray-days of waiting are gone. From sowing to field size 17 and 31 days,
    // mean 24, 7 more.
    [Fact]
    public void A_place_in_a_colder_house_does_harm_by_slower_growth_and_not_by_crowding()
    {
        var result = PlayTwoHouses(0);
        Assert.Equal(0, result.LatePlantDays);
        var harm = Assert.Single(result.Larger, trial => trial.Space.Id == "cool");
        Assert.Equal((700, true), (harm.LatePlantDays.Difference, harm.LatePlantDays.IsReal));
        Assert.Equal((7, true), (harm.Growing.Difference, harm.Growing.IsReal));
        Assert.Equal([0, -14, 0], harm.Waited.Select(change => change.Difference));
    }

    // With ten places in the cold house "b" stands there as above, 14 days late. As warm as the other house, it is out on its day.
    [Fact]
    public void A_colder_house_is_tried_as_warm_as_the_warmest()
    {
        var result = PlayTwoHouses(10);
        Assert.Equal(700, result.LatePlantDays);
        var warmer = Assert.Single(result.Warmer);
        Assert.Equal(("cold", 15.0, 20.0), (warmer.House.Id, warmer.House.NightC, warmer.Warmer.NightC));
        Assert.Equal((-700, true), (warmer.LatePlantDays.Difference, warmer.LatePlantDays.IsReal));

        // Three for each of 4 spaces without limit and 4 larger and for the house, five for each of 6 pairs.
        Assert.Equal((3 * 9) + (5 * 6), result.Comparisons);
        Assert.Empty(Play(Mat(1), Bench(10), Table(10)).Warmer);
    }

    private static BottleneckResult PlayTwoHouses(int places)
    {
        var site = Scenario([Mat(2), Bench(1), Bench(places, "cool", "cold"), Table(10)], [Batch("a", 50, Monday), Batch("b", 50, Monday)]);
        var cold = site.Houses[0] with { Id = "cold", Name = "Cold", NightC = 15, DayC = 15, VentC = 15 };
        return BottleneckRunner.Play(
            Plan(site with { Houses = site.Houses.Add(cold) }),
            new StudyOptions { Seasons = 3, Seed = 1 },
            null,
            CancellationToken.None
        );
    }

    private static BottleneckResult Play(params Space[] spaces) => Play([Crop()], spaces);

    private static BottleneckResult Play(Crop[] crops, params Space[] spaces)
    {
        var plan = Plan(Scenario(spaces, [Batch("a", 50, Monday), Batch("b", 50, Monday)], crops: crops));
        return BottleneckRunner.Play(plan, new StudyOptions { Seasons = 3, Seed = 1 }, null, CancellationToken.None);
    }
}
