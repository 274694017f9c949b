namespace BenchSim.Folder.Tests;

/// <summary>The folder of a small farm, to be read.</summary>
internal sealed class TestFolder(string? site = FarmFolder.GoodSite, string? plan = FarmFolder.GoodPlan) : FarmFolder(site, plan)
{
    public new TestFolder Write(string name, string text)
    {
        base.Write(name, text);
        return this;
    }

    public new TestFolder Write(string name, byte[] bytes)
    {
        base.Write(name, bytes);
        return this;
    }

    public FolderReading Read() => ScenarioFolder.Read(Path);

    /// <summary>Reads a folder with these files and returns the faults as they are printed.</summary>
    public static string[] Faults(string site = GoodSite, string plan = GoodPlan, params (string Name, string Text)[] others)
    {
        using var folder = new TestFolder(site, plan);
        foreach (var (name, text) in others)
        {
            folder.Write(name, text);
        }

        return [.. folder.Read().Faults.Select(fault => fault.ToString())];
    }
}
