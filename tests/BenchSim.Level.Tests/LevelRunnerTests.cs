using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Levelling;

namespace BenchSim.Level.Tests;

/// <summary>What the runner refuses, and that it can be stopped.</summary>
public class LevelRunnerTests
{
    private static readonly SeasonPlan s_plan = SeasonPlanner.Make(ScenarioFolder.Read(SpringTests.Folder).Scenario!).Plan!;
    private static readonly LevelOptions s_options = new()
    {
        Seasons = 2,
        Seed = 1,
        ExpectedSeasons = 2,
    };

    [Fact]
    public void Options_outside_their_ranges_are_refused()
    {
        foreach (
            var bad in new[]
            {
                s_options with
                {
                    Seasons = 0,
                },
                s_options with
                {
                    ExpectedSeasons = 0,
                },
                s_options with
                {
                    Threads = -1,
                },
                s_options with
                {
                    Fill = 0,
                },
                s_options with
                {
                    Fill = 1.01,
                },
                s_options with
                {
                    Fill = double.NaN,
                },
                s_options with
                {
                    Effort = 0,
                },
            }
        )
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => LevelRunner.Run(s_plan, bad, new Leveller(), null, CancellationToken.None));
        }
    }

    [Fact]
    public void A_stopped_run_has_no_answer()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => LevelRunner.Run(s_plan, s_options, new Leveller(), null, stop.Token));
    }

    [Fact]
    public void Progress_rises_to_the_whole()
    {
        var told = new List<int>();
        var mayMove = SeasonPlanner
            .Make(s_plan.Scenario with { Batches = [.. s_plan.Scenario.Batches.Select(order => order with { LaterDays = 3 })] })
            .Plan!;
        var result = LevelRunner.Run(mayMove, s_options with { Threads = 1 }, new Leveller(), new Told(told), CancellationToken.None);
        Assert.NotEmpty(result.Moves);
        Assert.Equal(told.Order(), told);
        Assert.Equal(100, told[^1]);
    }

    private sealed class Told(List<int> values) : IProgress<int>
    {
        public void Report(int value) => values.Add(value);
    }
}
