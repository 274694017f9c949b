using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Variants;

/// <summary>Finds the variants of a folder.</summary>
internal static class VariantNames
{
    private const string Ending = ".toml";

    /// <summary>Names of the variants of a folder, in order; empty when there are none or they cannot be listed.</summary>
    public static IReadOnlyList<string> In(FileReader files) =>
        [
            .. files
                .NamesInFolder(FolderReference.VariantFolder)
                .Where(name => name.EndsWith(Ending, StringComparison.Ordinal))
                .Select(name => name[..^Ending.Length])
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The file of a variant, relative to the folder.</summary>
    public static string FileOf(string name) => $"{FolderReference.VariantFolder}/{name}{Ending}";

    /// <summary>Reports a name that no variant has.</summary>
    public static void Refuse(string name, IReadOnlyList<string> names, FaultList faults)
    {
        var known = names.Select(each => Words.HasControlCharacter(each) ? Words.Quote(each) : each).ToArray();
        var near = Spelling.Nearest(name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length] : name, known);
        faults.Add(
            new SourcePlace(FolderReference.VariantFolder, 0, 0),
            $"there is no variant {Words.Quote(name)}",
            near is not null ? $"did you mean {Words.Quote(near)}"
                : known.Length > 0 ? $"the variants of this folder are {Words.List(known)}"
                : "write it as a file NAME.toml in the folder variants"
        );
    }
}
