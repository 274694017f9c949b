namespace BenchSim.Report.Writing;

/// <summary>A small text by which a folder of ours is known.</summary>
internal static class OwnText
{
    private const int MostBytes = 10_000_000;

    /// <summary>What a file holds, with line feeds alone; null when it is none of ours, whatever it is.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="IOException">Another writer takes it away in this moment: what stands must be looked at again.</exception>
    public static string? Read(string path)
    {
        // An empty one is none of ours, and a named pipe, which seems empty, would hold up whoever opens it.
        var file = new FileInfo(path);
        return !file.Exists || file.LinkTarget is not null || file.Length is 0 or > MostBytes
            ? null
            : File.ReadAllText(path).ReplaceLineEndings("\n");
    }
}
