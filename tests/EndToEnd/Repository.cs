namespace EndToEnd;

/// <summary>Where things are in the source tree.</summary>
internal static class Repository
{
    /// <summary>The folder that holds BenchSim.sln.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The worked examples: folders under scenarios/ with a site.toml, in order of name.</summary>
    public static string[] Examples { get; } = FindExamples();

    private static string FindRoot()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "BenchSim.sln")))
            {
                return at.FullName;
            }
        }

        throw new InvalidOperationException("BenchSim.sln is in no folder above the tests.");
    }

    private static string[] FindExamples()
    {
        var scenarios = Path.Combine(Root, "scenarios");
        return Directory.Exists(scenarios)
            ?
            [
                .. Directory
                    .EnumerateDirectories(scenarios)
                    .Where(folder => File.Exists(Path.Combine(folder, "site.toml")))
                    .Order(StringComparer.Ordinal),
            ]
            : [];
    }
}
