namespace BenchSim.Cli.Tests;

/// <summary>"new" lays down a folder that "check" and "run" take, and touches no one's files.</summary>
public sealed class NewTests
{
    [Fact]
    public void Lays_down_a_folder_without_faults()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Assert.Equal(["spring", "spring/README.md", "spring/plan.csv", "spring/site.toml"], folder.Everything());
        Assert.Equal(0, Call.Run("check", spring).Code);
    }

    [Fact]
    public void Fills_an_empty_folder_and_makes_parents()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.In("empty"));
        Assert.Equal(0, Call.Run("new", folder.In("empty")).Code);
        Assert.Equal(0, Call.Run("new", folder.In("far/away")).Code);
        Assert.True(File.Exists(folder.In("far/away/plan.csv")));
    }

    [Fact]
    public void Refuses_a_folder_that_has_files_and_leaves_them()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.In("mine"));
        File.WriteAllText(folder.In("mine/.hidden"), "mine");
        var call = Call.Run("new", folder.In("mine"));
        Assert.Equal(2, call.Code);
        Assert.Contains("has files in it, and they stay as they are", call.Error, StringComparison.Ordinal);
        Assert.Equal(["mine", "mine/.hidden"], folder.Everything());
    }

    [Fact]
    public void Refuses_a_file()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.In("note"), "mine");
        var call = Call.Run("new", folder.In("note"));
        Assert.Equal(2, call.Code);
        Assert.Contains("is a file. Name a folder that does not exist yet.", call.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(folder.In("note")));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_one_sentence()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.In("note"), "mine");
        var call = Call.Run("new", folder.In("note/inside"));
        Assert.Equal(2, call.Code);
        Assert.Single(call.Error.TrimEnd('\n').Split('\n'));
        Assert.Contains("could not be made, and nothing was left behind", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Machines_get_the_names_of_the_files()
    {
        using var folder = new TemporaryFolder();
        using var json = System.Text.Json.JsonDocument.Parse(Call.Run("new", folder.In("a"), "--json").Output);
        Assert.Equal(
            ["README.md", "plan.csv", "site.toml"],
            json.RootElement.GetProperty("files").EnumerateArray().Select(name => name.GetString()!),
            StringComparer.Ordinal
        );
    }
}
