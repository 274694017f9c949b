namespace BenchSim.Cli.Tests;

/// <summary>Scenario folders as "new" lays them down.</summary>
internal static class StarterFolder
{
    /// <summary>A new scenario folder in a folder.</summary>
    public static string Starter(this TemporaryFolder folder, string name = "spring")
    {
        Assert.Equal(0, Call.Run("new", folder.In(name)).Code);
        return folder.In(name);
    }
}
