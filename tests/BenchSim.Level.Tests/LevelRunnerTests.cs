using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Levelling;

namespace BenchSim.Level.Tests;

/// <summary>What the runner refuses, and that it can be stopped.</summary>
public class LevelRunnerTests
{
    private static readonly SeasonPlan Plan = SeasonPlanner.Make(ScenarioFolder.Read(SpringTests.Folder).Scenario!).Plan!;
    private static readonly LevelOptions Options = new()
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
                Options with
                {
                    Seasons = 0,
                },
                Options with
                {
                    ExpectedSeasons = 0,
                },
                Options with
                {
                    Threads = -1,
                },
                Options with
                {
                    Fill = 0,
                },
                Options with
                {
                    Fill = 1.01,
                },
                Options with
                {
                    Fill = double.NaN,
                },
                Options with
                {
                    Effort = 0,
                },
            }
        )
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => LevelRunner.Run(Plan, bad, new Leveller(), null, CancellationToken.None));
        }
    }

    [Fact]
    public void A_stopped_run_has_no_answer()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => LevelRunner.Run(Plan, Options, new Leveller(), null, stop.Token));
    }

    [Fact]
    public void Progress_rises_to_the_whole()
    {
        var told = new List<int>();
        var mayMove = SeasonPlanner
            .Make(Plan.Scenario with { Batches = [.. Plan.Scenario.Batches.Select(order => order with { LaterDays = 3 })] })
            .Plan!;
        var result = LevelRunner.Run(mayMove, Options with { Threads = 1 }, new Leveller(), new Told(told), CancellationToken.None);
        Assert.NotEmpty(result.Moves);
        Assert.Equal(told.Order(), told);
        Assert.Equal(100, told[^1]);
    }

    private sealed class Told(List<int> values) : IProgress<int>
    {
        public void Report(int value) => values.Add(value);
    }
}
