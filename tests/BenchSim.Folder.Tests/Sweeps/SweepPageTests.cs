using BenchSim.Folder.Reference;
using BenchSim.Folder.Sweeps;

namespace BenchSim.Folder.Tests.Sweeps;

/// <summary>docs/sweep.md shows every key of a sweep file as the program describes it, and an example that is without faults.</summary>
public sealed class SweepPageTests
{
    private const string Head = "|---|---|---|---|---|---|\n";

    private static readonly string s_example = Repository.File("scenarios/examples.toml");

    [Fact]
    public void The_page_shows_every_key_and_no_other()
    {
        var page = File.ReadAllText(Repository.File("docs/sweep.md")).ReplaceLineEndings("\n");
        var start = page.IndexOf(Head, StringComparison.Ordinal) + Head.Length;
        var end = page.IndexOf("\n\n", start - 1, StringComparison.Ordinal) + 1;
        var rows = string.Concat(SweepFields.Table.Fields.Select(field => ReferencePageTests.Row(field) + "\n"));
        var made = page[..start] + rows + page[Math.Max(start, end)..];
        Assert.Equal(made.Split('\n'), Approved.Text("docs/sweep.md", made).ReplaceLineEndings("\n").Split('\n'));
    }

    // What stands in the example besides its remarks.
    [Fact]
    public void The_page_shows_the_example()
    {
        var lines = File.ReadAllLines(s_example).Where(line => line.Length > 0 && !line.StartsWith('#'));
        Assert.Contains(
            string.Join('\n', lines),
            File.ReadAllText(Repository.File("docs/sweep.md")).ReplaceLineEndings("\n"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_example_is_without_faults()
    {
        var sweep = SweepFile.Read(s_example, out var faults);
        Assert.Empty(faults);
        Assert.NotNull(sweep);
        Assert.Equal(["two-house-spring", "by-hand"], sweep.Folders.Select(folder => folder.Name).ToArray());
        Assert.Equal([7, 1], sweep.Folders.Select(folder => folder.Variants.Length));
    }
}
