using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Study.Sizing;

namespace BenchSim.Report.Tests.Words;

/// <summary>How large a space has to be, word for word. Wilson's interval of n of n begins at n / (n + 3.8415).</summary>
public class SizeSentencesTests
{
    private static readonly SizePoint s_none = Point(2, 0);

    // 40 of 40: 40 / 43.8415 = 91.2 %; none of 40 ends at 3.8415 / 43.8415 = 8.8 %.
    [Fact]
    public void What_is_enough_and_what_one_place_fewer_would_do()
    {
        var enough = Point(5, 40);
        Assert.Equal(
            [
                "5 places on \"Table\" are enough, 3 fewer than there are: the plan then fits in 100 % of 40 seasons (95 % interval 91.2 "
                    + "to 100 %), so in at least the 90 % asked for.",
                "With 2 places it fits in 0 % of 40 seasons (95 % interval 0 to 8.8 %): that is too few.",
            ],
            SizeSentences.Of(Result(enough, [s_none, enough], enough)).ToArray()
        );
    }

    [Fact]
    public void Another_space_that_stands_in_the_way()
    {
        string[] sentences = [.. SizeSentences.Of(Result(null, [s_none], Point(null, 40)))];
        Assert.Equal(
            "No number of places on \"Table\" meets the goal of 90 %: with no limit there the plan fits in 0 % of 40 seasons (95 % "
                + "interval 0 to 8.8 %).",
            sentences[0]
        );
        Assert.StartsWith(
            "Other spaces stand in the way: with no limit on any space it would fit in 100 % of 40 seasons (95 % interval 91.2 to 100 %). ",
            sentences[1],
            StringComparison.Ordinal
        );
    }

    // The space has so many places as it is; three more bring 120 plants more in time, six no more than three, though no number meets the
    // goal.
    [Fact]
    public void A_goal_out_of_reach_does_not_hide_what_more_room_brings()
    {
        var asItIs = SyntheticPlan.Tiny().Scenario.Spaces[2].Places;
        SizePoint[] curve = [Point(asItIs, 0, inTime: 300), Point(asItIs + 3, 10, inTime: 420), Point(asItIs + 6, 10, inTime: 420)];
        var result = Result(null, curve, Point(null, 40));
        var wanted = Numbers.Whole(result.Plan.Batches.Sum(batch => batch.Order.Plants));
        Assert.Equal(
            $"Still, more of it brings plants in time: 300 of {wanted} a season as it is, "
                + $"420 with {asItIs + 3} places, the best number tried.",
            SizeSentences.Of(result)[1]
        );
    }

    // 34 of 34 begin at 34 / 37.8415 = 0.8985, 35 of 35 at 35 / 38.8415 = 0.9011.
    [Fact]
    public void Too_few_seasons_to_show_the_goal() =>
        Assert.Equal(
            "Even if every season fitted, 10 seasons could not show it: play 35 or more.",
            SizeSentences.Of(Result(null, [Point(4, 10, 10)], Point(null, 10, 10)) with { Seasons = 10, FewestSeasons = 35 })[1]
        );

    private static SizePoint Point(int? places, int hits, int seasons = 40, double inTime = 0) =>
        new(places, Figures.Chance(hits, seasons), 0, 0, inTime, places is not null && hits == seasons);

    private static SizeResult Result(SizePoint? answer, SizePoint[] curve, SizePoint everywhere)
    {
        var plan = SyntheticPlan.Tiny();
        return new SizeResult
        {
            Plan = plan,
            Space = plan.Scenario.Spaces[2],
            Goal = new SizeGoal { Share = 0.9 },
            Seasons = 40,
            Seed = 1,
            Answer = answer,
            Curve = [.. curve],
            Largest = 9,
            IsWhole = true,
            Unlimited = answer ?? curve[^1] with { Places = null },
            Everywhere = everywhere,
            Waits = SyntheticRoom.Waits(plan),
            FewestSeasons = 35,
        };
    }
}
