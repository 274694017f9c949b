namespace EndToEnd;

/// <summary>What is said and written twice is the same twice, to the byte; and the same from another build of the program
/// (BENCHSIM_PROGRAM) as from the built one.</summary>
public sealed class SameTwiceTests
{
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("check", "--sources", "--stand")]
    [InlineData("check", "--json")]
    [InlineData("print", "--out", "OUT")]
    [InlineData("print", "--today", "2027-03-15", "--out", "OUT")]
    [InlineData("agree", "--seasons", "20", "--json")]
    [InlineData("run", "--seasons", "20", "--bottlenecks", "--case", "--out", "OUT")]
    [InlineData("level", "--seasons", "20", "--json")]
    public async Task Words_and_files(string command, params string[] options)
    {
        using var folder = new TemporaryFolder();
        var spring = folder.In("spring");
        var made = folder.In("made");
        Assert.Equal(0, (await Command.RunAsync("new", spring)).Code);
        string[] call = [command, spring, .. options.Select(option => option.Replace("OUT", made, StringComparison.Ordinal))];

        var first = await Command.RunBuiltAsync(call);
        Assert.Equal(0, first.Code);
        var files = Files(made);
        if (files.Count > 0)
        {
            Directory.Delete(made, recursive: true);
        }

        Assert.Equal(first, await Command.RunAsync(call));
        Assert.Equal(files, Files(made));
        Assert.Equal(options.Contains("OUT", StringComparer.Ordinal), files.Count > 0);
    }

    private static SortedDictionary<string, string> Files(string folder) =>
        new(
            Directory.Exists(folder)
                ? Directory
                    .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                    .ToDictionary(
                        file => Path.GetRelativePath(folder, file),
                        file => Convert.ToHexString(File.ReadAllBytes(file)),
                        StringComparer.Ordinal
                    )
                : [],
            StringComparer.Ordinal
        );
}
