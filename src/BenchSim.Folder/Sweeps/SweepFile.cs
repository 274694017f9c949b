using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Sweeps;

/// <summary>A sweep file: many scenario folders, their variants, and how much is played of each (docs/sweep.md).</summary>
/// <param name="Settings">The values that are one each; its name is filled in.</param>
/// <param name="Folders">The folders; one or more.</param>
public sealed record SweepFile(SweepSettings Settings, ImmutableArray<SweepFolder> Folders)
{
    /// <summary>Reads the file. Bad input never throws: every fault comes back in one pass.</summary>
    /// <param name="path">The file. Faults name it as it is written here.</param>
    /// <param name="faults">What is wrong; empty when it was read.</param>
    /// <returns>The sweep; null with a fault. What is in the folders has not been read.</returns>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    public static SweepFile? Read(string path, out ImmutableArray<Fault> faults)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var found = new FaultList();
        var sweep = LoneFile.Read(path, "name the sweep file itself", found) is { } file ? new SweepReader(path, found).Read(file) : null;
        faults = found.Faults;
        return found.Count == 0 ? sweep : null;
    }
}

/// <summary>A folder of a sweep.</summary>
/// <param name="Name">Its path from the sweep file, with forward slashes.</param>
/// <param name="Directory">Where it is.</param>
/// <param name="Variants">What is played of it: names of variants, null for the plan itself; one or more.</param>
public sealed record SweepFolder(string Name, string Directory, ImmutableArray<string?> Variants);
