using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"mend" from the command line: one screen, JSON by its schema, a variant that is written, and what it refuses.</summary>
public sealed class MendTests
{
    // The farm of FarmFolder with sixty trays in a week and a table of 24 places: it lacks table places.
    private static FarmFolder ShortTable() =>
        new(
            FarmFolder.Site("places = 40", "places = 24").Replace("places = 10", "places = 100", StringComparison.Ordinal),
            "id,crop,grower,plants,sow,set_out\na,tomato,Ada,900,2027-03-15,2027-05-10\nb,tomato,Ben,900,2027-03-16,2027-05-10\n"
        );

    [Fact]
    public void The_first_screen_holds_24_lines_of_80_columns_with_the_answer_first()
    {
        using var folder = ShortTable();
        var mend = Call.Run("mend", folder.Path, "--seasons", "60");
        Assert.Equal((0, ""), (mend.Code, mend.Error));
        var lines = mend.Output.TrimEnd('\n').Split('\n');
        Assert.InRange(lines.Length, 5, 24);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.StartsWith("Test farm: ", lines[0], StringComparison.Ordinal);
        Assert.Contains(" --write mended", mend.Output, StringComparison.Ordinal);
        Assert.Contains("Decide by: ", mend.Sentences, StringComparison.Ordinal);
        Assert.Contains("Wrong if: ", mend.Sentences, StringComparison.Ordinal);

        var all = Call.Run("mend", folder.Path, "--seasons", "60", "--all");
        Assert.Contains("nothing proves that no other set is better", all.Sentences, StringComparison.Ordinal);
        Assert.Contains("Mark it so: places table", all.Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void A_variant_is_written_once_and_never_over_another_file()
    {
        using var folder = ShortTable();
        string[] call = ["mend", folder.Path, "--seasons", "60", "--write", "mended"];
        var mend = Call.Run(call);
        Assert.Equal((0, ""), (mend.Code, mend.Error));
        var file = folder.In("variants/mended.toml");
        var text = File.ReadAllText(file);
        Assert.Equal(["mended.toml"], Directory.GetFiles(folder.In("variants")).Select(Path.GetFileName), StringComparer.Ordinal);
        Assert.Equal(0, Call.Run("compare", folder.Path, "--with", "mended", "--seasons", "30").Code);

        var again = Call.Run(call);
        Assert.Equal((2, ""), (again.Code, again.Output));
        Assert.Contains("There is a variant \"mended\" already, and it stays as it is.", again.Error, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(file));
    }

    [Fact]
    public void Machines_get_the_changes_and_the_text_of_the_variant()
    {
        using var folder = ShortTable();
        using var json = JsonDocument.Parse(Call.Run("mend", folder.Path, "--seasons", "60", "--json").Output);
        var root = json.RootElement;
        Assert.False(root.GetProperty("met_before").GetBoolean());
        Assert.True(root.GetProperty("steps").GetArrayLength() > 0);
        Assert.StartsWith("# ", root.GetProperty("variant").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, root.GetProperty("file").ValueKind);
    }

    [Theory]
    [InlineData("write a share above 0 and below 1", "--goal", "100%")]
    [InlineData("is no plain name of a variant", "--write", "../mended")]
    [InlineData("is no plain name of a variant", "--write", "a:b")]
    [InlineData("--write is empty", "--write", "")]
    public void Faults_say_what_would_be_right(string words, params string[] asked)
    {
        using var folder = ShortTable();
        var mend = Call.Run(["mend", folder.Path, .. asked]);
        Assert.Equal((2, ""), (mend.Code, mend.Output));
        Assert.Contains(words, mend.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.In("variants")));
    }

    [Fact]
    public void A_mark_of_nothing_is_a_fault_with_its_line()
    {
        using var folder = ShortTable();
        folder.Write("not-here.txt", "# mine\nplaces roof\n");
        var mend = Call.Run("mend", folder.Path, "--seasons", "2");
        Assert.Equal((2, ""), (mend.Code, mend.Output));
        Assert.StartsWith(
            "not-here.txt:2:1: nothing that could be changed is called \"places roof\"",
            mend.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Stopped_it_leaves_nothing_behind()
    {
        using var folder = ShortTable();
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(130, Call.Run(stop.Token, "mend", folder.Path, "--write", "mended").Code);
        Assert.False(Directory.Exists(folder.In("variants")));
    }

    // The example in full, where nobody squeezes trays in: sowings moved first, which costs nothing to buy, then the table.
    [Fact]
    [Trait("Category", "Slow")]
    public void The_spring_example_without_reliefs_is_brought_to_its_goal_by_moved_sowings_and_a_longer_table()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, bytes) in TemporaryFolder.Files(Repository.File("scenarios/two-house-spring")))
        {
            folder.Write(name, bytes);
        }

        var site = folder.In("site.toml");
        File.WriteAllLines(site, File.ReadAllLines(site).Where(line => !IsOfReliefs(line)));
        using var json = JsonDocument.Parse(Call.Run("mend", folder.Path, "--json").Output);
        var root = json.RootElement;
        Assert.True(root.GetProperty("met").GetBoolean());
        string[] marks = [.. root.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("mark").GetString()!)];
        Assert.Equal(["level", "places table"], marks);
        Assert.Equal("mats", root.GetProperty("full_for_nothing")[0].GetProperty("space").GetString());
    }

    private static bool IsOfReliefs(string line) =>
        line.StartsWith("order = ", StringComparison.Ordinal) || line.StartsWith("aisle_places = ", StringComparison.Ordinal);
}
