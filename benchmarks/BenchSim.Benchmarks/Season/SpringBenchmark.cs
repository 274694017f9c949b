using BenchmarkDotNet.Attributes;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Study;
using BenchSim.Study.Results;

namespace BenchSim.Benchmarks.Season;

/// <summary>The spring example, warm: one season each way, and 200 and 1,000 seasons of the study on two threads.</summary>
[MemoryDiagnoser]
public class SpringBenchmark
{
    private readonly SeasonResult result = new();
    private SeasonPlan plan = null!;
    private SeasonPlayer player = null!;
    private int season;

    /// <summary>Reads the example and makes a player.</summary>
    [GlobalSetup]
    public void Read()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "BenchSim.sln")))
        {
            folder = folder.Parent;
        }

        var reading = ScenarioFolder.Read(Path.Combine(folder!.FullName, "scenarios", "two-house-spring"));
        plan = SeasonPlanner.Make(reading.Scenario!).Plan!;
        player = new SeasonPlayer(plan, 1);
    }

    /// <summary>One season with places as given.</summary>
    [Benchmark]
    public bool SeasonAsGiven()
    {
        player.Play(season++, PlaceLimits.AsGiven, result);
        return result.Fits;
    }

    /// <summary>One season without limits of place.</summary>
    [Benchmark]
    public bool SeasonWithoutLimits()
    {
        player.Play(season++, PlaceLimits.None, result);
        return result.Fits;
    }

    /// <summary>A study on two threads, each season played both ways and counted.</summary>
    /// <param name="seasons">Seasons.</param>
    [Benchmark]
    [Arguments(200)]
    [Arguments(1000)]
    public StudyResult Study(int seasons) =>
        StudyRunner.Play(plan, new StudyOptions { Seasons = seasons, Seed = 1, Threads = 2 }, null, CancellationToken.None);
}
