using BenchmarkDotNet.Attributes;
using BenchSim.Benchmarks.Examples;
using BenchSim.Season.Play;

namespace BenchSim.Benchmarks.Season;

/// <summary>One season of the spring example, warm: its weather is drawn anew each time.</summary>
[MemoryDiagnoser]
public class SpringBenchmark
{
    private readonly SeasonResult result = new();
    private SeasonPlayer player = null!;
    private int season;

    /// <summary>Reads the example and makes a player.</summary>
    [GlobalSetup]
    public void Read() => player = new SeasonPlayer(SpringExample.Read().Plan, 1);

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
}
