using BenchmarkDotNet.Attributes;
using BenchSim.Benchmarks.Examples;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Compare;
using BenchSim.Study.Results;

namespace BenchSim.Benchmarks.Study;

/// <summary>
/// Studies of the spring example on two threads, warm: each season played both ways and counted; and compared with a variant.
/// </summary>
[MemoryDiagnoser]
public class StudyBenchmark
{
    private SeasonPlan _plan = null!;
    private SeasonPlan _moreMats = null!;

    /// <summary>Seasons of the study.</summary>
    [Params(200, 1000)]
    public int Seasons { get; set; }

    private StudyOptions Options =>
        new()
        {
            Seasons = Seasons,
            Seed = 1,
            Threads = 2,
        };

    /// <summary>Reads the example and a variant.</summary>
    [GlobalSetup]
    public void Read() => (_plan, _moreMats) = (SpringExample.Read().Plan, SpringExample.Read("more-mats"));

    /// <summary>The study of <c>run</c>.</summary>
    [Benchmark]
    public StudyResult Run() => StudyRunner.Play(_plan, Options, null, CancellationToken.None);

    /// <summary>The study of <c>compare</c> with one variant.</summary>
    [Benchmark]
    public CompareResult Compare() => CompareRunner.Play(_plan, [("more-mats", _moreMats)], Options, null, CancellationToken.None);
}
