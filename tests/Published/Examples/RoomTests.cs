using BenchSim.Folder;
using BenchSim.Published.Library;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study;
using BenchSim.Study.Results;
using BenchSim.Study.Sizing;

namespace BenchSim.Published.Examples;

/// <summary>Who waits for whom, on the season worked out on paper and on the spring example.</summary>
public class RoomTests
{
    // README of scenarios/by-hand: 2 sowings wait for the mats from 1 to 3 March; B2 waits on the mats for the bench from 8 to 10 March, B2
    // and the flat from 11 to 17. Weeks from Monday, 1 March: 2 x 3 = 6; then 1 x 3 + 2 x 4 = 11 and 2 x 3 = 6.
    [Fact]
    public void Who_waits_by_week_is_what_the_pencil_found()
    {
        var result = StudyRunner.Play(Plan("by-hand"), new StudyOptions { Seasons = 2, Seed = 1 }, null, CancellationToken.None);
        string[] found =
        [
            .. result
                .Waits.Where(wait => wait.TrayDays.Most > 0)
                .Select(wait =>
                    $"{wait.From?.Id ?? "unsown"} for {wait.By.Id}: "
                    + $"{string.Join(' ', wait.ByWeek.Take(4).Select(week => $"{week.P50}"))}, in all {wait.TrayDays.P50}, "
                    + $"in {wait.Happens.Hits}"
                ),
        ];
        Assert.Equal(["unsown for mats: 6 0 0 0, in all 6, in 2", "mats for bench: 0 11 6 0, in all 17, in 2"], found);
    }

    [Fact]
    public void Who_waits_adds_up_to_the_waiting_of_each_space_over_the_seasons()
    {
        var result = StudyRunner.Play(
            Plan("two-house-spring"),
            new StudyOptions { Seasons = 30, Seed = 2027 },
            null,
            CancellationToken.None
        );
        foreach (var space in result.Spaces)
        {
            Assert.Equal(space.WaitedDays.Mean, result.Waits.Where(wait => wait.By == space.Space).Sum(wait => wait.TrayDays.Mean), 1e-9);
            Assert.Equal(
                space.WaitedDays.Mean,
                result.Waits.Where(wait => wait.By == space.Space).Sum(wait => wait.ByWeek.Sum(week => week.Mean)),
                1e-9
            );
        }
    }

    [Theory]
    [InlineData("mats")]
    [InlineData("main-bench")]
    [InlineData("overflow-bench")]
    [InlineData("table")]
    public void Nothing_waits_for_a_space_of_the_spring_without_limit(string id)
    {
        var plan = Plan("two-house-spring");
        var space = plan.Scenario.Spaces.Select(each => each.Id).ToList().IndexOf(id);
        var size = SizeRunner.Find(
            plan,
            space,
            new SizeGoal { Share = 0.5 },
            new StudyOptions { Seasons = 10, Seed = 2027 },
            null,
            CancellationToken.None
        );
        Assert.All(size.Waits.Where(wait => wait.By.Id == id), wait => Assert.Equal((0.0, 0), (wait.TrayDays.Most, wait.Happens.Hits)));
        Assert.Contains(size.Waits, wait => wait.TrayDays.Most > 0);
    }

    private static SeasonPlan Plan(string name) =>
        SeasonPlanner.Make(ScenarioFolder.Read(Path.Combine(Repository.Root, "scenarios", name)).Scenario!).Plan!;
}
