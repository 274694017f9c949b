using BenchSim.Season.Inputs;
using BenchSim.Study.Results;
using BenchSim.Study.Sizing;
using static Support.SmallSite;

namespace BenchSim.Study.Tests.Sizing;

/// <summary>The smallest number of places, against answers known by construction and against trying every number.</summary>
public class SizeRunnerTests
{
    // Without luck, and with no day late allowed: six trays sown on Monday, day 0, come up on day 3, are grown on day 17, a Thursday, and
    // after three nights on the table go out on Monday, day 21, as planned. Table: what goes to it later than Friday, day 18, is not
    // hardened on day 21; a place is free again on day 21 only: six. Bench: trays grow on the mats too while they wait. B of six stand on
    // the bench and go to the table on day 17, when the next B take their places; these go to the table on day 18, in time; any more not
    // before Monday, day 21. So 2 B must be six: three.
    [Theory]
    [InlineData(2, 6)]
    [InlineData(1, 3)]
    public void Without_luck_the_answer_is_the_trays_there_are(int space, int answer)
    {
        var result = Find(Sixes(), space, 0.9, seasons: 50);

        Assert.Equal(answer, result.Answer!.Places);
        Assert.Equal(50, result.Answer.Fits.Hits);
        Assert.All(result.Curve, point => Assert.Equal(point.Places >= answer, point.IsMet));
        Assert.Equal(Enumerable.Range(0, result.Largest + 1), result.Curve.Select(point => point.Places!.Value));
        Assert.True(result.IsWhole);
        Assert.Empty(result.MissedAbove);
        Assert.Equal(50 * (result.Curve.Length + 2), result.SeasonsInAll);
    }

    // Of the many numbers above 40 the search plays some; each is set against a run of the site with that many places.
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData(0, 0.3)]
    [InlineData(0, 0.7)]
    [InlineData(1, 0.5)]
    [InlineData(1, 0.8)]
    [InlineData(2, 0.5)]
    [InlineData(2, 0.8)]
    public void The_search_finds_what_trying_every_number_finds(int space, double goal)
    {
        var plan = Busy();
        var found = Find(plan, space, goal);
        var every = Find(plan, space, goal, every: true);

        Assert.False(found.IsWhole);
        Assert.True(every.IsWhole);
        Assert.True(found.Curve.Length < every.Curve.Length);
        Assert.NotNull(every.Answer);
        Assert.Equal(every.Answer, found.Answer);
        Assert.All(found.Curve, point => Assert.Equal(every.Curve[point.Places!.Value], point));
    }

    // Below the answer a run of the plan with those places misses the goal, at the answer it meets it: the lower end of Wilson's interval,
    // as run gives it.
    [Fact]
    public void Each_point_is_what_a_run_with_that_many_places_gives()
    {
        var plan = Busy();
        var found = Find(plan, 2, 0.5);

        foreach (var point in found.Curve.Where(point => Math.Abs(point.Places!.Value - found.Answer!.Places!.Value) <= 1))
        {
            var scenario = plan.Scenario with
            {
                Spaces = plan.Scenario.Spaces.SetItem(2, plan.Scenario.Spaces[2] with { Places = point.Places!.Value }),
            };
            var run = StudyRunner.Play(
                plan with
                {
                    Scenario = scenario,
                },
                new StudyOptions { Seasons = 60, Seed = 3 },
                null,
                CancellationToken.None
            );
            Assert.Equal(run.Fits, point.Fits);
            Assert.Equal(run.LatePlantDays.Mean, point.LatePlantDays, 1e-9);
            Assert.Equal(run.LatePlantDays.HalfWidth, point.HalfWidth, 1e-9);
            Assert.Equal(run.Fits.Low >= 0.5, point.IsMet);
        }
    }

    [Fact]
    public void No_number_of_places_is_told_with_what_stands_in_the_way()
    {
        // The table holds five of the six trays, so however large the bench, one waits for the table and is late.
        var result = Find(Sixes(table: 5), 1, 0.9, seasons: 50);

        Assert.Null(result.Answer);
        Assert.Equal((0, 50), (result.Unlimited.Fits.Hits, result.Everywhere.Fits.Hits));
        Assert.Contains(result.Waits, wait => wait is { From.Id: "bench", By.Id: "table", TrayDays.Mean: > 0 });
    }

    // Wilson's lower end with all of n fitting is n / (n + 1.95996^2) = n / (n + 3.8415): 34 / 37.8415 = 0.898, 35 / 38.8415 = 0.901.
    [Theory]
    [InlineData(34, false)]
    [InlineData(35, true)]
    public void Too_few_seasons_to_show_the_goal_are_told(int seasons, bool found)
    {
        var result = Find(Sixes(), 2, 0.9, seasons);

        Assert.Equal(35, result.FewestSeasons);
        Assert.Equal(found, result.Answer is not null);
    }

    [Fact]
    public void The_numbers_of_later_dates_move_along()
    {
        var plan = Sixes();
        var table = plan.Scenario.Spaces[2] with { Places = 8, Changes = [new PlacesFrom(Monday.AddDays(10), 5)] };
        var result = Find(
            plan with
            {
                Scenario = plan.Scenario with { Spaces = plan.Scenario.Spaces.SetItem(2, table) },
            },
            2,
            0.9,
            seasons: 50
        );

        // Six are needed on day 17, when there are three fewer than on the first day.
        Assert.Equal(9, result.Answer!.Places);
    }

    [Fact]
    public void Any_number_of_threads_gives_the_same_answer()
    {
        var alone = Find(Busy(), 2, 0.5, threads: 1);
        var three = Find(Busy(), 2, 0.5, threads: 3);

        Assert.Equal(alone.Curve.AsEnumerable(), three.Curve);
        Assert.Equal((alone.Answer, alone.Unlimited, alone.Everywhere), (three.Answer, three.Unlimited, three.Everywhere));
    }

    [Fact]
    public void Progress_rises_to_the_end()
    {
        Steps steps = new();
        SizeRunner.Find(
            Busy(),
            2,
            new SizeGoal { Share = 0.5 },
            new StudyOptions
            {
                Seasons = 40,
                Seed = 3,
                Threads = 1,
            },
            steps,
            CancellationToken.None
        );

        Assert.Equal(steps.Told.Order(), steps.Told);
        Assert.InRange(steps.Told[^1], SizeRunner.ProgressParts * 8 / 10, SizeRunner.ProgressParts);
    }

    [Theory]
    [InlineData(0, 0.95)]
    [InlineData(1, 0.95)]
    [InlineData(0.9, 0)]
    [InlineData(0.9, 1)]
    public void A_goal_that_is_no_chance_is_refused(double share, double confidence) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SizeRunner.Find(
                Sixes(),
                2,
                new SizeGoal { Share = share, Confidence = confidence },
                new StudyOptions { Seasons = 1, Seed = 1 },
                null,
                CancellationToken.None
            )
        );

    private static SeasonPlan Sixes(int table = 8) =>
        Plan(Scenario([Mat(8), Bench(8), Table(table)], [Batch("a", 300, Monday)], new SiteRules { LateDays = 0 }));

    // Eight batches of eight trays, sown in two weeks, whose emergence and growth differ from season to season.
    private static SeasonPlan Busy() =>
        Plan(
            Scenario(
                [Mat(70), Bench(80), Table(75)],
                Enumerable.Range(0, 8).Select(index => Batch($"b{index}", 400, Monday.AddDays(2 * index))),
                crops: [Crop() with { EmergeCv = 0.2, GrowthCv = 0.15 }]
            ) with
            {
                Rules = new SiteRules
                {
                    MediumOffsetK = 0,
                    SlackDays = 0,
                    LateDays = 5,
                    ServiceGoal = 0.8,
                },
            }
        );

    private static SizeResult Find(SeasonPlan plan, int space, double goal, int seasons = 60, bool every = false, int threads = 0) =>
        SizeRunner.Find(
            plan,
            space,
            new SizeGoal { Share = goal, Every = every },
            new StudyOptions
            {
                Seasons = seasons,
                Seed = 3,
                Threads = threads,
            },
            null,
            CancellationToken.None
        );

    private sealed class Steps : IProgress<int>
    {
        public List<int> Told { get; } = [];

        public void Report(int value) => Told.Add(value);
    }
}
