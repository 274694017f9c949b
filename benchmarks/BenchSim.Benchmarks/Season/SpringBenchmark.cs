using BenchmarkDotNet.Attributes;
using BenchSim.Benchmarks.Examples;
using BenchSim.Season.Play;

namespace BenchSim.Benchmarks.Season;

/// <summary>One season of the spring example, warm: its weather is drawn anew each time.</summary>
[MemoryDiagnoser]
public class SpringBenchmark
{
    private readonly SeasonResult _result = new();
    private SeasonPlayer _player = null!;
    private int _season;

    /// <summary>Reads the example and makes a player.</summary>
    [GlobalSetup]
    public void Read() => _player = new SeasonPlayer(SpringExample.Read().Plan, 1);

    /// <summary>One season with places as given.</summary>
    [Benchmark]
    public bool SeasonAsGiven()
    {
        _player.Play(_season++, PlaceLimits.AsGiven, _result);
        return _result.Fits;
    }

    /// <summary>One season without limits of place.</summary>
    [Benchmark]
    public bool SeasonWithoutLimits()
    {
        _player.Play(_season++, PlaceLimits.None, _result);
        return _result.Fits;
    }
}
