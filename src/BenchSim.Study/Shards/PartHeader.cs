using System.Collections.Immutable;

namespace BenchSim.Study.Shards;

/// <summary>What a part of a run says of itself.</summary>
public sealed record PartHeader
{
    /// <summary>Which share it is.</summary>
    public required Share Share { get; init; }

    /// <summary>Seasons of the whole run.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Name of the scenario folder, without the folders above it.</summary>
    public required string Folder { get; init; }

    /// <summary>Marks the build of the program that played it: other builds may play otherwise.</summary>
    public required string Build { get; init; }

    /// <summary>Names of files of the scenario folder that were not read, but that reading warned of.</summary>
    public ImmutableArray<string> Unread { get; init; } = [];
}
