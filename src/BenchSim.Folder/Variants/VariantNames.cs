using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Variants;

/// <summary>Finds the variants of a folder.</summary>
internal static class VariantNames
{
    /// <summary>Names of the variants of a folder, in order; none where they cannot be listed.</summary>
    public static IReadOnlyList<string> In(FileReader files) =>
        [.. files.NamesIn(FileNames.VariantFolder).Select(FileNames.VariantOf).OfType<string>()];

    /// <summary>Reports a name that no variant has.</summary>
    public static void Refuse(string name, IReadOnlyList<string> names, FaultList faults)
    {
        var near = Spelling.Nearest(FileNames.VariantOf(name) ?? name, names);
        faults.Add(
            new SourcePlace(FileNames.VariantFolder, 0, 0),
            $"there is no variant {Words.Quote(name)}",
            near is not null ? $"did you mean {Words.Quote(near)}"
                : names.Count > 0 ? $"the variants of this folder are {Words.List(names)}"
                : "write it as a file NAME.toml in the folder variants"
        );
    }
}
