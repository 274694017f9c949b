namespace BenchSim.Report.Tests.Synthetic;

/// <summary>A folder of its own for one test, gone at its end.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("benchsim-report-test-").FullName;

    public string At(string relative) => System.IO.Path.Combine(Path, relative);

    /// <summary>All files below a folder with their bytes, by relative name.</summary>
    public static SortedDictionary<string, byte[]> Files(string folder) =>
        new(
            Directory
                .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                .ToDictionary(
                    file => System.IO.Path.GetRelativePath(folder, file).Replace('\\', '/'),
                    File.ReadAllBytes,
                    StringComparer.Ordinal
                ),
            StringComparer.Ordinal
        );

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
