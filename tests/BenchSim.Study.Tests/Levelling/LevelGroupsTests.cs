using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Levelling;

namespace BenchSim.Study.Tests.Levelling;

/// <summary>Spaces are counted together where trays can be shared out over them, and apart where some can stand nowhere else.</summary>
public class LevelGroupsTests
{
    private static readonly SeasonPlan s_plan = SeasonPlanner
        .Make(ScenarioFolder.Read(Repository.File("scenarios/two-house-spring")).Scenario!)
        .Plan!;
    private static readonly LevelGroups s_groups = new(s_plan);

    // The overflow house is kept at 54 F: too cold for tomatoes, warm enough for cabbage, which may stand in both.
    [Fact]
    public void Each_set_of_spaces_that_a_crop_may_use_is_a_group()
    {
        Assert.Equal(
            "Mat: mats; Bench: main-bench overflow-bench; Bench: main-bench; Table: table",
            string.Join(
                "; ",
                s_groups.All.Select(group =>
                    $"{group.Kind}: {string.Join(' ', group.Spaces.Select(space => s_plan.Scenario.Spaces[space].Id))}"
                )
            )
        );
        Assert.Equal([true, true, false, true], s_groups.All.Select(group => group.IsWholeKind));
    }

    [Fact]
    public void A_batch_counts_in_every_group_that_holds_all_it_may_use()
    {
        Assert.Equal([1, 2], Of("tomato-main", SpaceKind.Bench));
        Assert.Equal([1], Of("cabbage-early", SpaceKind.Bench));
        Assert.Equal([0], Of("tomato-main", SpaceKind.Mat));
        Assert.Empty(Of("cabbage-early", SpaceKind.Mat));
        Assert.Equal([3], Of("cabbage-early", SpaceKind.Table));
    }

    // 346 places in the main house, 200 from 24 May on; 96 in the overflow house, from 1 March on.
    [Fact]
    public void Places_of_a_group_are_those_of_the_day()
    {
        Assert.Equal((346, 442, 296), (Places(2, 28), Places(3, 1), Places(5, 24)));

        static int Places(int month, int day) =>
            s_groups.All[1].Places[new DateOnly(2027, month, day).DayNumber - s_plan.FirstDay.DayNumber];
    }

    [Fact]
    public void What_a_batch_holds_is_added_to_its_groups_alone()
    {
        long[][] sums = [.. s_groups.All.Select(_ => new long[s_plan.Days])];
        int[][] held = [.. Enumerable.Range(0, 3).Select(kind => Enumerable.Repeat(kind + 1, s_plan.Days).ToArray())];
        s_groups.Add(Batch("cabbage-early"), held, sums);
        s_groups.Add(Batch("tomato-main"), held, sums);

        // Mats 1 of the tomato; benches 2 of each; the main bench 2 of the tomato; the table 3 of each.
        Assert.Equal([1L, 4, 2, 6], sums.Select(days => days[40]));
    }

    private static int[] Of(string batch, SpaceKind kind) => s_groups.Of[Batch(batch)][(int)kind];

    private static int Batch(string id) => Enumerable.Range(0, s_plan.Batches.Length).Single(at => s_plan.Batches[at].Order.Id == id);
}
