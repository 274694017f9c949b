namespace BenchSim.Report.Tests.Synthetic;

/// <summary>Finds files of the repository from where the tests run.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find();

    /// <summary>A file of the repository.</summary>
    public static string File(string relative) => Path.Combine(Root, relative);

    private static string Find()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (System.IO.File.Exists(Path.Combine(at.FullName, "BenchSim.sln")))
            {
                return at.FullName;
            }
        }

        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
