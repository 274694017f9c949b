using System.Collections.Immutable;
using BenchSim.Folder.Files;

namespace BenchSim.Folder;

/// <summary>The starter folder: a small invented farm, with a comment beside each key, to fill in.</summary>
public static class ScenarioTemplate
{
    private static readonly string[] s_names = ["README.md", FileNames.Plan, FileNames.Site];

    /// <summary>The files of the starter folder, in order of name.</summary>
    public static IReadOnlyList<InputFile> Files() => [.. s_names.Select(name => new InputFile(name, Bytes(name)))];

    private static ImmutableArray<byte> Bytes(string name)
    {
        using var stream = typeof(ScenarioTemplate).Assembly.GetManifestResourceStream($"BenchSim.Folder.Template.{name}")
            ?? throw new InvalidOperationException($"The starter file {name} is not in the program.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return ImmutableArray.Create(copy.ToArray());
    }
}
