using BenchSim.Season.Inputs;
using BenchSim.Study.Precision;
using BenchSim.Study.Results;

namespace BenchSim.Study.Tests.Precision;

/// <summary>The play stops at the first look that is narrow enough, and its answer is that of a play of as many seasons.</summary>
public class PrecisionRunnerTests
{
    private static readonly SeasonPlan s_plan = Plans.Small(days: 90, plantsEach: 700);

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void The_answer_is_that_of_as_many_seasons_whatever_the_threads(int threads)
    {
        var found = PrecisionRunner.Play(s_plan, new PrecisionGoal { Chance = 0.05, Least = 40 }, 3, threads, null, CancellationToken.None);
        var given = StudyRunner.Play(s_plan, new StudyOptions { Seasons = found.Study.Seasons, Seed = 3 }, null, CancellationToken.None);
        Assert.True(found.IsReached);
        Assert.Equal(ResultText.Of(given), ResultText.Of(found.Study));
    }

    // No season fits: Wilson's interval is 0 to z^2 / (n + z^2), z^2 = 3.841. Half of it is 3.8 points at 48 seasons, so 5 points are
    // reached at the first look. One in two fits: 5 points need all 381.
    [Theory]
    [InlineData(0, new[] { 48 })]
    [InlineData(0.5, new[] { 48, 96, 191, 381 })]
    public void It_stops_at_the_first_look_that_is_narrow_enough(double chance, int[] looks)
    {
        var found = Play(new PrecisionGoal { Chance = 0.05, Least = 40 }, chance, _ => 0, null);
        Assert.Equal(looks, found.Looks.Select(look => look.Seasons));
        Assert.Equal(looks[^1], found.Study.Seasons);
        Assert.All(found.Looks.SkipLast(1), look => Assert.True(look.Fits.High - look.Fits.Low > 0.1));
        Assert.True(found.IsReached);
    }

    [Fact]
    public void It_stops_at_the_most_seasons_and_says_that_it_is_not_reached()
    {
        var found = Play(new PrecisionGoal { Chance = 0.02, Most = 350 }, 0.5, _ => 0, null);
        Assert.Equal(350, found.Study.Seasons);
        Assert.False(found.IsReached);
    }

    // Late plant-days 0 or 100 with even chance: deviation 50, half width about 1.96 x 50 / sqrt n = 98 / sqrt n: 9.8 at 100, 4.9 at 400,
    // 3.46 at 800.
    [Fact]
    public void It_plays_on_for_the_late_plant_days()
    {
        var found = Play(new PrecisionGoal { LatePlantDays = 4, Least = 100 }, 0.5, luck => luck.Next(2) * 100, null);
        Assert.Equal([100, 200, 400, 800], found.Looks.Select(look => look.Seasons));
        var both = Play(
            new PrecisionGoal
            {
                LatePlantDays = 4,
                Chance = 0.05,
                Least = 100,
            },
            0.5,
            luck => luck.Next(2) * 100,
            null
        );
        Assert.Equal([191, 381, 762], both.Looks.Select(look => look.Seasons));
    }

    [Fact]
    public void Progress_rises_through_all_looks()
    {
        Steps steps = new();
        Play(new PrecisionGoal { Chance = 0.05, Least = 40 }, 0.5, _ => 0, steps);
        Assert.Equal(steps.Seen.Order(), steps.Seen);
        Assert.Equal(381, steps.Seen[^1]);
    }

    [Fact]
    public void Goals_out_of_range_are_refused()
    {
        foreach (
            var goal in new[]
            {
                new PrecisionGoal(),
                new() { Chance = 0 },
                new() { Chance = 0.5 },
                new() { Chance = double.NaN },
                new() { LatePlantDays = 0 },
                new() { LatePlantDays = double.PositiveInfinity },
                new() { Chance = 0.1, Least = 1 },
                new()
                {
                    Chance = 0.1,
                    Least = 300,
                    Most = 299,
                },
            }
        )
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Play(goal, 0.5, _ => 0, null));
        }
    }

    private static PrecisionResult Play(PrecisionGoal goal, double chance, Func<Luck, long> late, IProgress<int>? progress) =>
        PrecisionRunner.Play(KnownSeasons.Plan, goal, 1, 2, KnownSeasons.Player(chance, late, 1), progress, CancellationToken.None);

    private sealed class Steps : IProgress<int>
    {
        public List<int> Seen { get; } = [];

        public void Report(int value) => Seen.Add(value);
    }
}
