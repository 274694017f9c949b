using BenchSim.Study.Sizing;

namespace BenchSim.Cli.Commands;

/// <summary>What was asked of <c>size</c>.</summary>
internal sealed record SizeSettings
{
    /// <summary>Scenario folder.</summary>
    public required string Directory { get; init; }

    /// <summary>Id of the space.</summary>
    public required string Space { get; init; }

    /// <summary>Variant to play; null for the folder as it is.</summary>
    public string? With { get; init; }

    /// <summary>What has to be met.</summary>
    public required SizeGoal Goal { get; init; }

    /// <summary>Folder for the curve; null for none.</summary>
    public string? Out { get; init; }

    /// <summary>True for output that machines read.</summary>
    public bool Json { get; init; }
}
