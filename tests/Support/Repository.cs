namespace Support;

/// <summary>Files of the repository, found from where the tests run.</summary>
public static class Repository
{
    /// <summary>
    /// The folder that holds the solution. The paths of source files are rewritten in the build, so the way to it starts at the built
    /// tests.
    /// </summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The worked examples: folders under scenarios/ with a site.toml, in order of name.</summary>
    public static string[] Examples { get; } =
    [
        .. Directory
            .EnumerateDirectories(Path.Combine(Root, "scenarios"))
            .Where(folder => System.IO.File.Exists(Path.Combine(folder, "site.toml")))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>A file of the repository.</summary>
    public static string File(string relative) => Path.Combine(Root, relative);

    private static string FindRoot()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (System.IO.File.Exists(Path.Combine(at.FullName, "BenchSim.sln")))
            {
                return at.FullName;
            }
        }

        throw new InvalidOperationException("BenchSim.sln is in no folder above the tests.");
    }
}
