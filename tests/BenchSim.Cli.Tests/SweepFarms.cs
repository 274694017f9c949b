using System.Security.Cryptography;
using System.Text;
using BenchSim.Study.Sweeps;

namespace BenchSim.Cli.Tests;

/// <summary>A few small farms side by side, with a sweep file over them.</summary>
internal sealed class SweepFarms : TemporaryFolder
{
    /// <summary>Two farms, "east" and "west", each with the variants "longer" and "warmer".</summary>
    public SweepFarms()
    {
        foreach (var name in new[] { "east", "west" })
        {
            Write($"farms/{name}/site.toml", FarmFolder.GoodSite);
            Write($"farms/{name}/plan.csv", FarmFolder.GoodPlan);
            Write($"farms/{name}/variants/longer.toml", "[[space]]\nid = \"table\"\nplaces = 60\n");
            Write($"farms/{name}/variants/warmer.toml", "[[house]]\nid = \"main\"\nnight = \"64 F\"\n");
        }

        // The east has a bench of two trays, and fits less.
        Write("farms/east/site.toml", FarmFolder.Site("places = 60", "places = 2"));
    }

    /// <summary>The sweep file.</summary>
    public string File => In("county.toml");

    /// <summary>The answer.</summary>
    public string Answer => In("county-sweep/answer");

    /// <summary>Writes the sweep file.</summary>
    /// <param name="lines">What stands in it below the folders.</param>
    /// <param name="folders">The folders.</param>
    public void Sweep(string lines, string folders = "[\"farms/*\"]") => Write("county.toml", $"folders = {folders}\n{lines}\n");

    /// <summary>Plays what the file says.</summary>
    public Call Run(params string[] options) => Call.Run(["sweep", File, .. options]);

    /// <summary>The file of a task.</summary>
    public string Task(int number) => In($"county-sweep/tasks/00000/{number:00000000}.task");

    /// <summary>Changes the result of a task, and puts a last line under it that vouches for the change.</summary>
    public void Forge(int number, string old, string other)
    {
        var text = System.IO.File.ReadAllText(Task(number));
        var body = text[..text.LastIndexOf('\n', text.Length - 2)];
        Assert.Contains(old, body, StringComparison.Ordinal);
        var changed = body.Replace(old, other, StringComparison.Ordinal);
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(changed)));
        System.IO.File.WriteAllText(Task(number), $"{changed}\n{hash}\n");
        Assert.NotNull(TaskFile.Read(System.IO.File.ReadAllBytes(Task(number))));
    }
}
