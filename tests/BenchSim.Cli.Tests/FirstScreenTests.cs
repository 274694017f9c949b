namespace BenchSim.Cli.Tests;

/// <summary>What a grower reads first: no more than a screen of 24 lines of 80 columns, with a command to type next.</summary>
public sealed class FirstScreenTests
{
    [Theory]
    [InlineData("check")]
    [InlineData("run", "--seasons=40", "--no-report")]
    [InlineData("bottlenecks", "--seasons=5")]
    [InlineData("dense", "--seasons=5")]
    [InlineData("level", "--seasons=5")]
    [InlineData("size", "--space=table", "--seasons=20")]
    [InlineData("succession", "--batch=lettuce", "--every", "7", "10", "--times", "2", "3", "--gap=9", "--seasons=5")]
    [InlineData("print", "--out=papers")]
    public void Fits_a_screen(string command, params string[] options)
    {
        using var folder = new TemporaryFolder();
        string[] asked = [.. options.Select(option => option.Replace("=papers", "=" + folder.In("p"), StringComparison.Ordinal))];
        _ = FirstScreen.Of(Call.Run([command, folder.Starter("s"), .. asked]), folder.In(""));
    }

    [Theory]
    [InlineData("two-house-spring", "check")]
    [InlineData("two-house-spring", "run", "--seasons=40", "--no-report")]
    [InlineData("two-house-spring", "dense", "--seasons=2")]
    [InlineData("two-house-spring", "compare", "--with", "more-mats", "longer-table", "--seasons=40")]
    [InlineData("two-house-spring", "invest", "--with", "second-house", "--seasons=40")]
    [InlineData("by-hand", "check")]
    [InlineData("by-hand", "run", "--no-report")]
    public void Fits_a_screen_for_the_examples(string example, string command, params string[] options)
    {
        var farm = Repository.File($"scenarios/{example}");
        _ = FirstScreen.Of(Call.Run([command, farm, .. options]), farm);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("level", "--seasons=5")]
    [InlineData("compare", "--with=the-north-house-somewhat-warmer-by-night", "--seasons=5")]
    public void Cuts_long_names_rather_than_leave_the_screen(string command, params string[] options)
    {
        using var farm = new FarmFolder(
            plan: "id,crop,grower,plants,set_out,earlier,later\n"
                + "tomatoes-for-the-early-tunnels,tomato,Somebody with a long name,900,2027-05-24,5,5\n"
                + "tomatoes-for-the-later-tunnels,tomato,Somebody with a long name,900,2027-05-25,5,5\n"
        );
        farm.Write("variants/the-north-house-somewhat-warmer-by-night.toml", "[[house]]\nid = \"main\"\nnight = \"64 F\"\n");
        _ = FirstScreen.Of(Call.Run([command, farm.Path, .. options]), farm.Path);
    }

    [Fact]
    public void Everything_stands_behind_one_option()
    {
        using var folder = new TemporaryFolder();
        var farm = folder.Starter();
        var first = Call.Run("check", farm);
        var all = Call.Run("check", farm, "--all");
        Assert.EndsWith("Everything else: add --all.\n", first.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Rules in force", first.Output, StringComparison.Ordinal);
        Assert.Contains("Rules in force", all.Output, StringComparison.Ordinal);
        Assert.StartsWith(first.Output.Split('\n')[0], all.Output, StringComparison.Ordinal);
    }
}
