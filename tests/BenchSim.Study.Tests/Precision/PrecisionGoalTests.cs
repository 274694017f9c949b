using BenchSim.Study.Precision;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Tests.Precision;

/// <summary>The looks are fixed beforehand, and the last of a chance is always enough.</summary>
public class PrecisionGoalTests
{
    // n = z^2 (1 / (4 h^2) - 1) with z^2 = 3.841459: for 2 points 3.841459 x 624 = 2,397.1; for 5 points 3.841459 x 99 = 380.3.
    [Fact]
    public void Looks_double_up_to_the_number_that_is_enough_for_any_share()
    {
        Assert.Equal([300, 600, 1199, 2398], Looks(new PrecisionGoal { Chance = 0.02 }));
        Assert.Equal([381], Looks(new PrecisionGoal { Chance = 0.05 }));
        Assert.Equal([48, 96, 191, 381], Looks(new PrecisionGoal { Chance = 0.05, Least = 40 }));
    }

    [Fact]
    public void Bounds_hold()
    {
        Assert.Equal([300, 600, 1000], Looks(new PrecisionGoal { Chance = 0.02, Most = 1000 }));
        Assert.Equal([500], Looks(new PrecisionGoal { Chance = 0.05, Least = 500 }));
        Assert.Equal(
            [70],
            Looks(
                new PrecisionGoal
                {
                    Chance = 0.02,
                    Least = 70,
                    Most = 70,
                }
            )
        );
        Assert.Equal([200, 400, 800, 1500], Looks(new PrecisionGoal { LatePlantDays = 5, Most = 1500 }));
        Assert.Equal(
            [300, 600, 1199, 2398, 4796, 9592, 10_000],
            Looks(
                new PrecisionGoal
                {
                    Chance = 0.02,
                    LatePlantDays = 5,
                    Most = 10_000,
                }
            )
        );
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.01)]
    [InlineData(0.02)]
    [InlineData(0.0333)]
    [InlineData(0.1)]
    [InlineData(0.45)]
    public void The_last_look_is_the_smallest_number_that_is_enough_for_any_share(double half)
    {
        var goal = new PrecisionGoal
        {
            Chance = half,
            Least = 2,
            Most = 1_000_000,
        };
        var last = Looks(goal)[^1];
        Assert.All(Enumerable.Range(0, 101), percent => Assert.True(goal.IsReached(Chance((int)((long)last * percent / 100), last))));

        // Widest at one half; an odd number has none, so the one below is held to the formula, which needs no half.
        var z2 = 1.959963984540054 * 1.959963984540054;
        Assert.True(last == 2 || Math.Sqrt(z2 / (4 * (last - 1 + z2))) > half);
    }

    [Fact]
    public void What_is_not_asked_for_is_reached()
    {
        Assert.True(new PrecisionGoal { LatePlantDays = 1 }.IsReached(Chance(1, 2)));
        Assert.False(new PrecisionGoal { Chance = 0.1 }.IsReached(Chance(1, 2)));
    }

    private static Study.Results.Chance Chance(int hits, int trials)
    {
        (var low, var high) = Wilson.Interval(hits, trials);
        return new Study.Results.Chance(hits, trials, low, high);
    }

    private static int[] Looks(PrecisionGoal goal) => [.. goal.Looks()];
}
