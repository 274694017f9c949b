using System.Text;

namespace Support;

/// <summary>A folder for one test, gone when the test is over.</summary>
public class TemporaryFolder : IDisposable
{
    private static readonly EnumerationOptions s_all = new() { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None };

    public string Path { get; } = Directory.CreateTempSubdirectory("benchsim-test-").FullName;

    /// <summary>A path in the folder.</summary>
    public string In(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Writes a file, and the folders it stands in.</summary>
    /// <returns>Its path.</returns>
    public string Write(string name, string text) => Write(name, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));

    /// <inheritdoc cref="Write(string, string)" />
    public string Write(string name, byte[] bytes)
    {
        var path = In(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>Everything in the folder, hidden files too, in order of name.</summary>
    public string[] Everything() => [.. Directory.EnumerateFileSystemEntries(Path, "*", s_all).Select(Name).Order(StringComparer.Ordinal)];

    /// <summary>All files below a folder with their bytes, hidden ones too, by name relative to it.</summary>
    public static SortedDictionary<string, byte[]> Files(string folder) =>
        new(
            Directory
                .EnumerateFiles(folder, "*", s_all)
                .ToDictionary(file => Relative(folder, file), File.ReadAllBytes, StringComparer.Ordinal),
            StringComparer.Ordinal
        );

    public void Dispose()
    {
        Directory.Delete(Path, recursive: true);
        GC.SuppressFinalize(this);
    }

    private string Name(string entry) => Relative(Path, entry);

    private static string Relative(string folder, string entry) => System.IO.Path.GetRelativePath(folder, entry).Replace('\\', '/');
}
