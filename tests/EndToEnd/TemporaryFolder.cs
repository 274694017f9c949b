namespace EndToEnd;

/// <summary>A folder for one test, gone when the test is over.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("benchsim-test-").FullName;

    public string In(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
