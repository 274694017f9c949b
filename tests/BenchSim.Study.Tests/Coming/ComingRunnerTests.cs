using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Study.Coming;

namespace BenchSim.Study.Tests.Coming;

/// <summary>What the next days bring, on a site without luck and against seasons counted here.</summary>
public class ComingRunnerTests
{
    private static readonly StudyOptions s_options = new() { Seasons = 20, Seed = 7 };

    // a, 4 trays, is sown on Monday 1 March, up on Thursday the 4th, grown on Thursday the 18th, and out on Monday the 22nd; b, one flat
    // for 3 trays, sown on the 8th, is up on the 11th and potted up on Thursday the 18th (README of scenarios/by-hand).
    [Theory]
    [InlineData(0, "Sow b0 4 today -mat, OffMat b0 4 4 mat-bench")]
    [InlineData(3, "OffMat b0 4 today mat-bench, Sow b1 1 8 -mat")]
    [InlineData(15, "ToTable b0 4 18 bench-table, PotUp b1 3 18 -, SetOut b0 4 22 table-")]
    public void Without_luck_all_is_sure_and_on_its_day(int day, string expected)
    {
        var plan = NoLuck();
        var coming = ComingRunner.Play(plan, plan.FirstDay.AddDays(day), s_options, null, CancellationToken.None);
        Assert.All(coming.Jobs, job => Assert.Equal((Likelihood.Sure, job.Last), (job.Likelihood, job.First)));
        Assert.Equal(
            expected.Split(", ").Order(StringComparer.Ordinal),
            coming
                .Jobs.Select(job =>
                    $"{job.Kind} b{job.Batch} {job.Pieces} {(job.IsToday ? "today" : job.First.Day)} "
                    + $"{Name(plan, job.From)}-{Name(plan, job.To)}"
                )
                .Order(StringComparer.Ordinal)
        );
        Assert.Empty(coming.Late);
    }

    // On Tuesday 16 March the 4 trays and the flat are on the bench of 20; on the 18th the trays go to the table of 10 and 3 are filled.
    [Fact]
    public void Room_is_what_the_day_leaves()
    {
        var plan = NoLuck();
        var coming = ComingRunner.Play(plan, plan.FirstDay.AddDays(15), s_options, null, CancellationToken.None);
        Assert.Equal("15 15 17 17 17 17 17 17 17 17", string.Join(" ", coming.Free[1]));
        Assert.Equal("10 10 6 6 6 6 10 10 10 10", string.Join(" ", coming.Free[2]));
    }

    [Fact]
    public void The_words_the_days_and_the_room_are_those_of_the_seasons()
    {
        var plan = Plans.Small(days: 90, plantsEach: 700);
        var (day, seasons) = (30, 60);
        var coming = ComingRunner.Play(
            plan,
            plan.FirstDay.AddDays(day),
            s_options with
            {
                Seasons = seasons,
            },
            null,
            CancellationToken.None
        );
        var player = new SeasonPlayer(plan, 7);
        var first = new Dictionary<int, List<int>>();
        var held = new List<int>();
        for (var season = 0; season < seasons; season++)
        {
            var (result, out0) = (new SeasonResult(), new Dictionary<int, int>());
            player.Play(season, PlaceLimits.AsGiven, result, new FirstOut(day, out0));
            held.Add(result.Held[1][day + 3]);
            foreach (var (batch, on) in out0)
            {
                first.TryAdd(batch, []);
                first[batch].Add(on - day);
            }
        }

        foreach (var (batch, days) in first)
        {
            var within = days.Where(on => on < ComingDays.JobDays).Order().ToArray();
            var job = coming.Jobs.FirstOrDefault(each => each.Kind == WorkKind.SetOut && each.Batch == batch);
            if (10 * within.Length < seasons)
            {
                Assert.Null(job);
            }
            else if (job is { IsToday: false })
            {
                Assert.Equal(Likelihoods.Of(within.Length, seasons), job.Likelihood);
                Assert.Equal(within[(int)Math.Ceiling(0.1 * within.Length) - 1], job.First.DayNumber - coming.Today.DayNumber);
                Assert.Equal(within[(int)Math.Ceiling(0.9 * within.Length) - 1], job.Last.DayNumber - coming.Today.DayNumber);
            }
        }

        var free = SpacePlaces.On(plan.Scenario, 1, coming.Today.AddDays(3)) - coming.Free[1][3];
        Assert.True(held.Count(each => each <= free) >= 0.9 * seasons);
        Assert.True(held.Count(each => each < free) < 0.9 * seasons);
    }

    [Fact]
    public void The_answer_does_not_depend_on_the_threads()
    {
        var plan = Plans.Small(days: 90, plantsEach: 700);
        string Told(int threads)
        {
            var coming = ComingRunner.Play(
                plan,
                plan.FirstDay.AddDays(30),
                s_options with
                {
                    Threads = threads,
                },
                null,
                CancellationToken.None
            );
            return string.Join('\n', coming.Jobs.Select(job => job.ToString()))
                + string.Join('\n', coming.Late.Select(late => late.ToString()))
                + string.Join(' ', coming.Free.SelectMany(free => free));
        }

        Assert.Equal(Told(1), Told(3));
    }

    // The table has 2 places for 4 trays that want 3 nights on it: the last 2 are out on Thursday 25 March, 3 days
    // late; one day is allowed.
    [Fact]
    public void A_batch_without_a_place_in_time_is_late_for_that()
    {
        var plan = NoLuck(table: 2, new SiteRules { LateDays = 1 });
        var late = Assert.Single(ComingRunner.Play(plan, plan.FirstDay, s_options, null, CancellationToken.None).Late, each =>
            each.Batch == 0
        );
        Assert.Equal((Likelihood.Sure, 2, false, false), (late.Likelihood, late.NoRoomIn, late.IsShort, late.IsHeld));
    }

    private static SeasonPlan NoLuck(int table = 10, SiteRules? rules = null) =>
        SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(10), SmallSite.Bench(20), SmallSite.Table(table)],
                [
                    SmallSite.Batch("a", 200, SmallSite.Monday),
                    SmallSite.PotUpBatch("b", 120, SmallSite.Monday.AddDays(7), seedsPerFlat: 120),
                ],
                rules
            )
        );

    private static string Name(SeasonPlan plan, int? space) => space is { } at ? plan.Scenario.Spaces[at].Id : "";

    private sealed class FirstOut(int from, Dictionary<int, int> first) : ISeasonWitness
    {
        public void WentOut(TraysOut trays)
        {
            var day = (int)(trays.Hour / 24);
            if (day >= from)
            {
                first.TryAdd(trays.Batch, day);
            }
        }
    }
}
