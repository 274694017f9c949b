using System.Collections.Immutable;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder;

/// <summary>What came of reading a scenario folder.</summary>
public sealed record FolderReading
{
    /// <summary>The scenario; null when there is any fault.</summary>
    public Scenario? Scenario { get; init; }

    /// <summary>
    /// Open flats there are, those of the built-in library and of trays.csv, in order of id: what a batch of the plan could be sown dense
    /// in.
    /// </summary>
    public ImmutableArray<TrayType> OpenFlats { get; init; } = [];

    /// <summary>Everything that is wrong, in order of file, line and column.</summary>
    public ImmutableArray<Fault> Faults { get; init; } = [];

    /// <summary>What the user should know and may well have meant, in order of file, line and column.</summary>
    public ImmutableArray<Fault> Warnings { get; init; } = [];

    /// <summary>The files that were read, in order of name: what a report needs to carry the inputs it ran.</summary>
    public ImmutableArray<InputFile> Inputs { get; init; } = [];
}
