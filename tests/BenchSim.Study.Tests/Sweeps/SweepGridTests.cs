using BenchSim.Study.Sweeps;

namespace BenchSim.Study.Tests.Sweeps;

/// <summary>The numbers of the tasks, against a list of all of them written out.</summary>
public sealed class SweepGridTests
{
    // Two folders of 2 plans and 1, the values as given and 1 set, 5 seasons in blocks of 2: 3 plans x 2 sets x 3 blocks.
    [Fact]
    public void A_small_sweep_is_numbered_as_by_hand()
    {
        var grid = new SweepGrid([2, 1], valueSets: 1, seasons: 5, seasonsPerTask: 2);
        Assert.Equal((18, 2, 3, 2, 3), (grid.Tasks, grid.Folders, grid.Plans, grid.Sets, grid.Blocks));
        Assert.Equal(new SweepCell(0, 0, 0, 0), grid[1]);
        Assert.Equal(new SweepCell(0, 0, 0, 2), grid[3]);
        Assert.Equal(new SweepCell(0, 0, 1, 0), grid[4]);
        Assert.Equal(new SweepCell(0, 1, 0, 0), grid[7]);
        Assert.Equal(new SweepCell(1, 0, 0, 0), grid[13]);
        Assert.Equal(new SweepCell(1, 0, 1, 2), grid[18]);
        Assert.Equal([(0, 2), (2, 2), (4, 1)], new[] { 0, 1, 2 }.Select(grid.SeasonsOf).ToArray());
    }

    public static TheoryData<int> Crosses => [.. Enumerable.Range(1, 40)];

    // Folder slowest, block fastest: the numbers are those of four loops, each inside the one before.
    [Theory]
    [MemberData(nameof(Crosses))]
    public void Every_cell_has_one_number_and_every_number_one_cell(int cross)
    {
        Random random = new(cross);
        int[] plans = [.. Enumerable.Range(0, random.Next(1, 9)).Select(_ => random.Next(1, 7))];
        var (sets, seasons, each) = (random.Next(0, 5), random.Next(1, 60), random.Next(1, 70));
        var grid = new SweepGrid(plans, sets, seasons, each);
        var cells =
            from folder in Enumerable.Range(0, plans.Length)
            from plan in Enumerable.Range(0, plans[folder])
            from set in Enumerable.Range(0, 1 + sets)
            from block in Enumerable.Range(0, (seasons / each) + (seasons % each > 0 ? 1 : 0))
            select new SweepCell(folder, plan, set, block);
        var number = 0;
        foreach (var cell in cells)
        {
            number++;
            Assert.Equal(cell, grid[number]);
            Assert.Equal(number, grid.NumberOf(cell));
        }

        Assert.Equal(number, grid.Tasks);
        Assert.Equal(number, SweepGrid.TasksOf(plans, sets, seasons, each));
    }

    [Theory]
    [MemberData(nameof(Crosses))]
    public void The_blocks_hold_every_season_once(int cross)
    {
        Random random = new(1000 + cross);
        var (seasons, each) = (random.Next(1, 500), random.Next(1, 90));
        var grid = new SweepGrid([1], 0, seasons, each);
        Assert.Equal(
            Enumerable.Range(0, seasons),
            Enumerable.Range(0, grid.Blocks).Select(grid.SeasonsOf).SelectMany(block => Enumerable.Range(block.First, block.Count))
        );
        Assert.All(Enumerable.Range(0, grid.Blocks - 1), block => Assert.Equal(each, grid.SeasonsOf(block).Count));
    }

    [Fact]
    public void There_are_no_tasks_before_the_first_and_after_the_last()
    {
        var grid = new SweepGrid([1], 0, 4, 2);
        Assert.Throws<ArgumentOutOfRangeException>(() => grid[0]);
        Assert.Throws<ArgumentOutOfRangeException>(() => grid[3]);
    }

    // 20 x 500,000 tasks are just allowed; one season more makes 20 blocks more.
    [Fact]
    public void A_sweep_has_an_end_to_its_size()
    {
        Assert.Equal(10_000_000, new SweepGrid([20], 0, 500_000, 1).Tasks);
        Assert.Equal(10_000_020, SweepGrid.TasksOf([20], 0, 500_001, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SweepGrid([20], 0, 500_001, 1));

        // More than a long holds: 2 x 2^31 x 65,537 x 1,000,000 or so.
        Assert.Equal(long.MaxValue, SweepGrid.TasksOf(Enumerable.Repeat(int.MaxValue, 200), 65_536, 1_000_000, 1));
    }
}
