namespace BenchSim.Benchmarks.Examples;

/// <summary>The files of the checkout that a benchmark plays: its own program may run from a folder deep below it.</summary>
internal static class Checkout
{
    /// <summary>A path in the checkout.</summary>
    /// <param name="parts">Names of folders and of the file, from the top.</param>
    public static string PathTo(params string[] parts)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "BenchSim.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("No BenchSim.sln above the program.");
        }

        return Path.Combine([folder.FullName, .. parts]);
    }
}
