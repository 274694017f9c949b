using System.Text;

namespace BenchSim.Folder.Tests;

/// <summary>A scenario folder on disk for one test; gone when disposed.</summary>
internal sealed class TestFolder : IDisposable
{
    /// <summary>A site that reads without a fault: one heated house with mats and benches, a table outdoors.</summary>
    public const string GoodSite = """
        [site]
        name = "Test farm"
        [season]
        opens = 2027-01-18
        closes = 2027-06-30
        [[house]]
        id = "main"
        night = "60 F"
        [[space]]
        id = "mats"
        kind = "mat"
        house = "main"
        places = 10
        temperature = "25 C"
        [[space]]
        id = "bench"
        kind = "bench"
        house = "main"
        places = 60
        [[space]]
        id = "table"
        kind = "table"
        places = 40
        [weather]
        kind = "constant"
        low = "12 C"
        high = "20 C"
        """;

    public const string GoodPlan = "id,crop,plants,sow\na,tomato,100,2027-03-01\n";

    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("benchsim-folder-");

    public TestFolder(string? site = GoodSite, string? plan = GoodPlan)
    {
        if (site is not null)
        {
            Write("site.toml", site);
        }

        if (plan is not null)
        {
            Write("plan.csv", plan);
        }
    }

    public string Path => _directory.FullName;

    public TestFolder Write(string name, string text) => Write(name, new UTF8Encoding(false).GetBytes(text));

    public TestFolder Write(string name, byte[] bytes)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
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

    /// <summary>The good site with one text replaced by another.</summary>
    public static string Site(string old, string replacement)
    {
        Assert.Contains(old, GoodSite, StringComparison.Ordinal);
        return GoodSite.Replace(old, replacement, StringComparison.Ordinal);
    }

    public void Dispose() => _directory.Delete(recursive: true);
}
