namespace BenchSim.Cli.Tests;

/// <summary>What docs/learn.md shows of the example is what the program says.</summary>
[Trait("Category", "Slow")]
public sealed class LearnPageTests
{
    private const string Example = "scenarios/spring-under-way";

    private static readonly string s_page = File.ReadAllText(Repository.File("docs/learn.md"));

    [Fact]
    public void The_log_as_it_is() => Shows(Repository.File(Example), Example);

    [Fact]
    public void The_log_with_its_counts_picked_by_lot()
    {
        using var folder = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(Repository.File(Example)))
        {
            File.Copy(file, folder.In(Path.GetFileName(file)));
        }

        var lines = File.ReadAllLines(folder.In("log.csv"));
        var counts = lines.Where(line =>
            line.Contains(",up,", StringComparison.Ordinal) || line.Contains(",good,", StringComparison.Ordinal)
        );
        Assert.Equal(5, counts.Count());
        File.WriteAllLines(
            folder.In("log.csv"),
            lines.Select(line => counts.Contains(line, StringComparer.Ordinal) ? line + "picked" : line)
        );
        Shows(folder.Path, "spring");

        // Nothing of the example itself is in the way of writing, and to write twice changes nothing.
        Assert.Equal(0, Call.Run("learn", folder.Path, "--write").Code);
        var written = File.ReadAllText(folder.In("crops.csv"));
        Assert.Equal(0, Call.Run("learn", folder.Path, "--write").Code);
        Assert.Equal(written, File.ReadAllText(folder.In("crops.csv")));
        Assert.Equal(0, Call.Run("check", folder.Path).Code);
    }

    private static void Shows(string folder, string name)
    {
        var learn = Call.Run("learn", folder);
        Assert.Equal(("", 0), (learn.Error, learn.Code));
        var shown = learn.Output.Replace(folder, name, StringComparison.Ordinal).TrimEnd('\n').Split('\n');
        Assert.Contains(string.Join('\n', shown.Select(line => ("    " + line).TrimEnd())), s_page, StringComparison.Ordinal);
    }
}
