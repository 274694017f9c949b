using System.Globalization;
using BenchSim.Answers;
using BenchSim.Report.Case;
using BenchSim.Study.Precision;
using BenchSim.Study.Shards;

namespace BenchSim.Cli.Commands;

/// <summary>What was asked of <c>run</c>.</summary>
internal sealed record RunSettings
{
    /// <summary>Scenario folder.</summary>
    public required string Directory { get; init; }

    /// <summary>Report folder; null for the scenario folder's name with "-report", beside it.</summary>
    public string? Out { get; init; }

    /// <summary>Share of seasons that must fit, 0 to 1; null for no gate.</summary>
    public double? Require { get; init; }

    /// <summary>Share of the seasons to play as a part of the run; null for all of them.</summary>
    public Share? Shard { get; init; }

    /// <summary>How narrow the intervals are to be; null for a given number of seasons.</summary>
    public PrecisionGoal? Precision { get; init; }

    /// <summary>Season whose story is told, from 1; null for none.</summary>
    public int? Season { get; init; }

    /// <summary>Batch whose story is told; null for none.</summary>
    public string? Batch { get; init; }

    /// <summary>True when each space is also played with more room.</summary>
    public bool Bottlenecks { get; init; }

    /// <summary>True when the report folder also gets a case report.</summary>
    public bool Case { get; init; }

    /// <summary>Paper of the case report; null for the usual one of the site.</summary>
    public CasePaper? Paper { get; init; }

    /// <summary>True for output that machines read.</summary>
    public bool Json { get; init; }

    /// <summary>True when no report is wanted.</summary>
    public bool NoReport { get; init; }

    /// <summary>Where the report goes; null when none is wanted.</summary>
    /// <exception cref="RefusedException">The scenario folder is the root of a disk, so that nothing can stand beside it.</exception>
    public string? ReportPlace()
    {
        return NoReport ? null : Out ?? BesideScenario.Folder(Directory, "-report");
    }

    /// <summary>Where a part of the run goes: 2 of 12 parts to NAME.02-of-12.part, so that they stand in order.</summary>
    /// <param name="share">Which part.</param>
    /// <exception cref="RefusedException">The scenario folder is the root of a disk, so that nothing can stand beside it.</exception>
    public string PartPlace(Share share)
    {
        var of = share.Of.ToString(CultureInfo.InvariantCulture);
        var number = share.Number.ToString(CultureInfo.InvariantCulture).PadLeft(of.Length, '0');
        return Out ?? BesideScenario.Folder(Directory, $".{number}-of-{of}.part");
    }

    /// <summary>Name of the scenario folder, without the folders above it.</summary>
    public string FolderName() => Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(Directory)));
}
