using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"run --with" plays a variant by itself, and everything that comes of it says so.</summary>
public sealed class RunWithTests
{
    private const string Few = "--seasons=20";

    // The paper farm wants 200 of A, 100 of B and 120 of P: 420. With 400 of A it is 620.
    private const string Doubled = "[[plan]]\nbatch = \"A\"\nplants = 400\n";

    [Fact]
    public void The_report_of_a_variant_stands_by_itself_and_names_it()
    {
        using var folder = new TemporaryFolder();
        var farm = WithVariant(folder);
        Assert.Equal(0, Call.Run("run", farm, Few).Code);
        var asItIs = File.ReadAllBytes(folder.In("paper-report/result.json"));
        var run = Call.Run("run", farm, "--with", "doubled", Few);
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.StartsWith("Paper farm with \"doubled\": ", run.Output, StringComparison.Ordinal);
        Assert.EndsWith($"Report: {folder.In("paper-doubled-report/report.html")}\n", run.Output, StringComparison.Ordinal);

        Assert.Equal((null, 420), Played(folder.In("paper-report/result.json")));
        Assert.Equal(("doubled", 620), Played(folder.In("paper-doubled-report/result.json")));
        Assert.Equal(asItIs, File.ReadAllBytes(folder.In("paper-report/result.json")));
        const string Said = "Played with the variant <bdi>doubled</bdi>, not as the plan stands.";
        Assert.Contains(Said, File.ReadAllText(folder.In("paper-doubled-report/report.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("Played with", File.ReadAllText(folder.In("paper-report/report.html")), StringComparison.Ordinal);
        Assert.Equal(Doubled, File.ReadAllText(folder.In("paper-doubled-report/inputs/variants/doubled.toml")));
        Assert.False(Directory.Exists(folder.In("paper-report/inputs/variants")));
    }

    [Fact]
    public void The_files_kept_beside_the_report_bring_the_same_answer_again()
    {
        using var folder = new TemporaryFolder();
        var farm = WithVariant(folder);
        Assert.Equal(0, Call.Run("run", farm, "--with", "doubled", Few).Code);
        var inputs = folder.In("paper-doubled-report/inputs");
        Assert.Equal(0, Call.Run("run", inputs, "--with", "doubled", Few, "--out", folder.In("again")).Code);
        Assert.Equal(File.ReadAllBytes(folder.In("paper-doubled-report/result.json")), File.ReadAllBytes(folder.In("again/result.json")));
    }

    // The seasons are those in which "compare" plays the two side by side.
    [Fact]
    public void A_variant_fits_as_often_as_when_it_is_compared()
    {
        var farm = Repository.File("scenarios/two-house-spring");
        using var run = JsonDocument.Parse(Call.Run("run", farm, "--with", "longer-table", Few, "--no-report", "--json").Output);
        using var compare = JsonDocument.Parse(Call.Run("compare", farm, "--with", "longer-table", Few, "--json").Output);
        var compared = compare.RootElement.GetProperty("comparison").GetProperty("variants")[0];
        Assert.Equal("longer-table", run.RootElement.GetProperty("variant").GetString());
        Assert.True(JsonElement.DeepEquals(compared.GetProperty("fits"), run.RootElement.GetProperty("fits")));
    }

    [Fact]
    public void The_story_of_a_batch_is_that_of_the_variant()
    {
        using var folder = new TemporaryFolder();
        var farm = WithVariant(folder, "[[plan]]\nbatch = \"B\"\ndrop = true\n");
        Assert.Equal(0, Call.Run("run", farm, "--season", "1", "--batch", "B").Code);
        var story = Call.Run("run", farm, "--with", "doubled", "--season", "1", "--batch", "B");
        Assert.Equal(2, story.Code);
        Assert.Contains("The plan has no batch \"B\".", story.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("there is no variant \"doubld\"; did you mean \"doubled\"", "--with", "doubld")]
    [InlineData("\"benchsim compare DIR --with VARIANT --case\" sets the variant beside", "--with", "doubled", "--case")]
    [InlineData("--with does not go with --shard", "--with", "doubled", "--shard", "1/2")]
    public void What_cannot_be_is_refused_and_nothing_is_written(string fault, params string[] options)
    {
        using var folder = new TemporaryFolder();
        var farm = WithVariant(folder);
        var before = folder.Everything();
        var run = Call.Run(["run", farm, Few, .. options]);
        Assert.Equal(2, run.Code);
        Assert.Contains(fault, string.Join(' ', run.Error.Split([' ', '\n'])), StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    private static (string? Variant, int Wanted) Played(string file)
    {
        using var json = JsonDocument.Parse(File.ReadAllBytes(file));
        return (
            json.RootElement.GetProperty("scenario").GetProperty("variant").GetString(),
            json.RootElement.GetProperty("plants_wanted").GetInt32()
        );
    }

    private static string WithVariant(TemporaryFolder folder, string text = Doubled)
    {
        var farm = PaperFarm.In(folder);
        Directory.CreateDirectory(Path.Combine(farm, "variants"));
        File.WriteAllText(Path.Combine(farm, "variants", "doubled.toml"), text);
        return farm;
    }
}
