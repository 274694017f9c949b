namespace BenchSim.Cli.Tests;

/// <summary>A folder for one test, gone when the test is over.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public TemporaryFolder() => Path = Directory.CreateTempSubdirectory("benchsim-test-").FullName;

    public string Path { get; }

    /// <summary>A path in the folder.</summary>
    public string In(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>A scenario folder in it, as "new" lays it down.</summary>
    public string Scenario(string name = "spring")
    {
        var made = Call.Run("new", In(name));
        Assert.Equal(0, made.Code);
        return In(name);
    }

    /// <summary>Everything in the folder, hidden files too, in order of name.</summary>
    public string[] Everything() =>
        [
            .. Directory
                .EnumerateFileSystemEntries(
                    Path,
                    "*",
                    new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }
                )
                .Select(entry => System.IO.Path.GetRelativePath(Path, entry).Replace('\\', '/'))
                .Order(StringComparer.Ordinal),
        ];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
