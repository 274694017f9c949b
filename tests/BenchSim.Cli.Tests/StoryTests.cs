using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"run --season N --batch ID" tells the story of one batch.</summary>
public sealed class StoryTests
{
    [Fact]
    public void Tells_the_story_and_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var before = folder.Everything();
        var story = Call.Run("run", spring, "--season", "3", "--batch", "tomatoes");
        Assert.Equal(0, story.Code);
        Assert.Empty(story.Error);
        Assert.Contains("tomatoes", story.Output, StringComparison.Ordinal);
        Assert.Contains("Season 3", story.Output, StringComparison.Ordinal);
        Assert.Contains("Heat mats", story.Output, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Another_seed_is_another_story()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var one = Call.Run("run", spring, "--season", "3", "--batch", "tomatoes").Output;
        Assert.Equal(one, Call.Run("run", spring, "--season", "3", "--batch", "tomatoes", "--seed", "1").Output);
        Assert.NotEqual(one, Call.Run("run", spring, "--season", "3", "--batch", "tomatoes", "--seed", "2").Output, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("brocoli-2", "Near names: broccoli-2, broccoli-1, broccoli-3.")]
    [InlineData("Broccoli", "Near names: broccoli-1, broccoli-2, broccoli-3.")]
    [InlineData("zzzzzzzz", "lists all batches.")]
    public void An_unknown_batch_gets_near_names(string written, string ending)
    {
        using var folder = new TemporaryFolder();
        var story = Call.Run("run", folder.Starter(), "--season", "1", "--batch", written);
        Assert.Equal(2, story.Code);
        Assert.StartsWith($"The plan has no batch \"{written}\". ", story.Error, StringComparison.Ordinal);
        Assert.EndsWith(ending + "\n", story.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_id_is_found_however_its_accents_are_written()
    {
        // The e with an acute accent as one character in the plan, and as two on the command line.
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var plan = Path.Combine(spring, "plan.csv");
        File.WriteAllText(plan, File.ReadAllText(plan).Replace("basil,basil", "basil-\u00e9t\u00e9,basil", StringComparison.Ordinal));
        Assert.Equal(0, Call.Run("run", spring, "--season", "1", "--batch", "basil-e\u0301te\u0301").Code);
    }

    [Fact]
    public void Half_a_character_is_an_unknown_batch() => Assert.Equal(2, RunWithBatch("basil\uD800"));

    [Fact]
    public void A_season_that_is_not_played_is_refused()
    {
        using var folder = new TemporaryFolder();
        var story = Call.Run("run", folder.Starter(), "--season", "21", "--batch", "basil", "--seasons", "20");
        Assert.Equal(2, story.Code);
        Assert.Equal(
            "There is no season 21: the play has seasons 1 to 20. Choose one of them, or play more with --seasons.\n",
            story.Error
        );
    }

    [Fact]
    public void Machines_get_the_lines()
    {
        using var folder = new TemporaryFolder();
        using var json = JsonDocument.Parse(Call.Run("run", folder.Starter(), "--season", "1", "--batch", "basil", "--json").Output);
        Assert.Equal("basil", json.RootElement.GetProperty("batch").GetString());
        Assert.Equal(1, json.RootElement.GetProperty("season").GetInt32());
        Assert.NotEqual(0, json.RootElement.GetProperty("story").GetArrayLength());
    }

    private static int RunWithBatch(string batch)
    {
        using var folder = new TemporaryFolder();
        return Call.Run("run", folder.Starter(), "--season", "1", "--batch", batch).Code;
    }
}
