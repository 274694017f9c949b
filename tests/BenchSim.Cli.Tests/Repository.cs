namespace BenchSim.Cli.Tests;

/// <summary>The folder that holds the sources.</summary>
internal static class Repository
{
    public static string Root()
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
}
