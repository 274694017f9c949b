using BenchmarkDotNet.Attributes;
using BenchSim.Benchmarks.Examples;
using BenchSim.Report;
using BenchSim.Report.Case;
using BenchSim.Report.Writing;
using BenchSim.Study;
using BenchSim.Study.Results;

namespace BenchSim.Benchmarks.Report;

/// <summary>
/// Writing the report of the spring example, 200 seasons of it: page, charts, tables and inputs; and the same with the case report.
/// </summary>
[MemoryDiagnoser]
public class ReportBenchmark
{
    private readonly string _folder = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
    private ReportInput[] _inputs = [];
    private StudyResult _result = null!;
    private CaseInput _caseInput = null!;

    /// <summary>Reads and plays the example.</summary>
    [GlobalSetup]
    public void Play()
    {
        var (plan, files) = SpringExample.Read();
        _inputs = [.. files.Select(file => new ReportInput(file.Name, file.Bytes.AsMemory()))];
        _result = StudyRunner.Play(
            plan,
            new StudyOptions
            {
                Seasons = 200,
                Seed = 1,
                Threads = 2,
            },
            null,
            CancellationToken.None
        );
        _caseInput = new CaseInput
        {
            Base = _result,
            Command = "benchsim run inputs",
            Version = "0",
            Build = "benchmark",
        };
    }

    /// <summary>Takes away what was written.</summary>
    [GlobalCleanup]
    public void TidyUp() => Directory.Delete(_folder, recursive: true);

    /// <summary>The folder without the case report.</summary>
    [Benchmark]
    public void Folder() => ReportFolder.Write(_folder, _result, _inputs, null, CancellationToken.None);

    /// <summary>The folder with the case report.</summary>
    [Benchmark]
    public void FolderWithCase() => ReportFolder.Write(_folder, _result, _inputs, null, _caseInput, CancellationToken.None);
}
