using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Compare;
using BenchSim.Answers.Opening;
using BenchSim.Report.Words;
using BenchSim.Study.Figures;

namespace BenchSim.Cli.Tests;

/// <summary>"compare" says which differences are real, and writes nothing.</summary>
public sealed class CompareTests
{
    [Fact]
    public void Prints_a_table_and_a_sentence_for_each_difference()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[work_minutes]\nsow = 60\n");
        var before = folder.Everything();
        var compare = Call.Run("compare", spring, "--with", "slow", "--seasons", "20", "--all");
        Assert.Equal(0, compare.Code);
        Assert.Empty(compare.Error);
        var result = new CompareQuestion
        {
            Scenario = ScenarioSource.Folder(spring),
            Variants = ["slow"],
            Play = new PlayWish(Seasons: 20),
        }
            .Ask(Asked.Unwatched)
            .Result;
        var variant = Assert.Single(result.Variants);
        Assert.True(variant.Of(Measures.LabourHours)!.Difference > 0);
        Assert.Equal((0, 0), (variant.Of(Measures.PlantsInTime)!.Differing, variant.Fits.Differing));
        compare.Says([
            "* With \"slow\" the work takes ",
            "- The plants out in time: the same in every one of 20 seasons.",
            "The same seasons fit with and without ",
            "comparisons made here (Bonferroni)",
            CompareSentences.Fits("slow", variant.Fits, 20),
            .. variant.Changes.Select(change =>
                change.IsReal ? "* " + CompareSentences.Real("slow", change) : "- " + CompareSentences.NotReal(change, 20)
            ),
        ]);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Machines_get_every_difference_and_the_threads_do_not_matter()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[rules]\nforecast_nights = 0\n");
        var compare = Call.Run("compare", spring, "--with", "slow", "--seasons", "20", "--json", "--threads", "1");
        Assert.Equal(compare.Output, Call.Run("compare", spring, "--with", "slow", "--seasons", "20", "--json", "--threads", "3").Output);
        using var json = JsonDocument.Parse(compare.Output);
        var comparison = json.RootElement.GetProperty("comparison");
        var variant = Assert.Single(comparison.GetProperty("variants").EnumerateArray());
        Assert.Equal("slow", variant.GetProperty("name").GetString());

        // k = one variant times the measures and the chance of fit; each interval has the confidence 1 - 0.05 / k.
        var comparisons = variant.GetProperty("measures").GetArrayLength() + 1;
        Assert.Equal(comparisons, comparison.GetProperty("comparisons").GetInt32());
        Assert.Equal(1 - (0.05 / comparisons), comparison.GetProperty("each_confidence").GetDouble(), 1e-6);
        foreach (var measure in variant.GetProperty("measures").EnumerateArray())
        {
            Assert.Equal(
                measure.GetProperty("variant").GetDouble() - measure.GetProperty("base").GetDouble(),
                measure.GetProperty("difference").GetDouble(),
                2e-6
            );
        }
    }

    [Fact]
    public void Faults_of_all_variants_come_with_their_places()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "include = \"slow\"\n");
        var compare = Call.Run("compare", spring, "--with", "slow", "none");
        Assert.Equal(2, compare.Code);
        Assert.Empty(compare.Output);
        var lines = compare.Error.TrimEnd('\n').Split('\n');
        Assert.Equal("variants:0:0: there is no variant \"none\"; the variants of this folder are slow", lines[0]);
        Assert.StartsWith("variants/slow.toml:1:1: there is no key \"include\" in a variant: ", lines[1], StringComparison.Ordinal);
        Assert.Equal("2 faults found. Mend them and try again.", lines[2]);
    }

    [Fact]
    public void A_batch_that_becomes_impossible_in_a_variant_is_a_fault_there()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[[plan]]\nbatch = \"*\"\nshift_days = -60\n");
        var compare = Call.Run("compare", spring, "--with", "slow");
        Assert.Equal(2, compare.Code);
        Assert.All(compare.Error.TrimEnd('\n').Split('\n')[..^1], line =>
            Assert.StartsWith("variants/slow.toml:", line, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Asks_for_a_variant_when_none_is_named()
    {
        using var folder = new TemporaryFolder();
        var compare = Call.Run("compare", folder.Starter());
        Assert.Equal(2, compare.Code);
        Assert.Contains("--with", compare.Error, StringComparison.Ordinal);
    }

    // The starter has one hardening table; of two, both are meant.
    [Theory]
    [InlineData("", "peak on the hardening table ")]
    [InlineData("[[space]]\nid = \"second-table\"\nkind = \"table\"\nplaces = 4\n", "peak on the hardening tables")]
    public void One_table_is_called_one(string more, string said)
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[work_minutes]\nsow = 60\n" + more);
        var compare = Call.Run("compare", spring, "--with", "slow", "--seasons", "2", "--all");
        Assert.Equal(0, compare.Code);
        Assert.Contains(said, compare.Output, StringComparison.Ordinal);
    }

    // However long it is, it can be copied as it stands.
    [Fact]
    public void The_case_report_stands_on_a_line_of_its_own()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[work_minutes]\nsow = 60\n");
        var place = folder.In("a folder with a name so long that no line of a screen holds it beside the words of the footnote");
        var compare = Call.Run("compare", spring, "--with", "slow", "--seasons", "2", "--case", "--out", place);
        Assert.Contains($"\nCase report: {Path.Combine(place, "case.pdf")}\n", compare.Output, StringComparison.Ordinal);
    }

    // Of the starter's eleven sowings the three of broccoli, the tomatoes and the basil have a set-out date alone. In a cooler house they
    // grow slower, so each must be sown earlier; the others stay.
    [Fact]
    public void Planned_anew_the_sow_dates_move_and_the_first_screen_says_which()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, Cooler("55 F"));
        string[] asked = ["compare", spring, "--with", "slow", "--seasons", "20"];
        Assert.DoesNotContain("Planned anew", Call.Run(asked).Output, StringComparison.Ordinal);

        var screen = Call.Run([.. asked, "--replan"]);
        Assert.Equal(0, screen.Code);
        screen.Says(["Planned anew with \"slow\", 5 of 11 sowings move", "earlier): ", "Set-out dates stay."]);
        Assert.InRange(screen.Output.Count(character => character == '\n'), 1, 24);

        using var json = JsonDocument.Parse(Call.Run([.. asked, "--replan", "--json"]).Output);
        var dates = Assert.Single(json.RootElement.GetProperty("sow_dates").EnumerateArray());
        Assert.True(dates.GetProperty("planned_anew").GetBoolean());
        var moves = dates.GetProperty("moves").EnumerateArray().ToArray();
        Assert.Equal(
            ["broccoli-1", "broccoli-2", "broccoli-3", "tomatoes", "basil"],
            moves.Select(move => move.GetProperty("batch").GetString()),
            StringComparer.Ordinal
        );
        Assert.All(moves, move => Assert.True(move.GetProperty("days").GetInt32() < 0));
        Assert.All(moves, move => Assert.Equal(move.GetProperty("set_out_from").GetString(), move.GetProperty("set_out_to").GetString()));

        var whole = Call.Run([.. asked, "--replan", "--all"]);
        whole.Says(["Late is counted from the set-out dates of the base, which stay, so that it means the same in both."]);
        Assert.All(moves, move => Assert.Contains(move.GetProperty("to").GetString()!, whole.Output, StringComparison.Ordinal));
    }

    [Fact]
    public void Planned_anew_nothing_moves_where_nothing_that_grows_is_changed()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[work_minutes]\nsow = 60\n");
        Call.Run("compare", spring, "--with", "slow", "--seasons", "5", "--replan").Says(["Planned anew with \"slow\", no sowing moves."]);
        File.WriteAllText(Path.Combine(spring, "plan.csv"), "id,crop,grower,plants,sow\na,broccoli,Ada,300,2027-03-01\n");
        Call.Run("compare", spring, "--with", "slow", "--seasons", "5", "--replan")
            .Says(["Planned anew with \"slow\", no sowing may move: the plan gives every sow date itself."]);
    }

    [Fact]
    public void A_variant_whose_file_says_replan_is_planned_anew_unasked()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, Cooler("55 F"));
        string[] asked = ["compare", spring, "--with", "slow", "--seasons", "5", "--json"];
        var told = Call.Run([.. asked, "--replan"]).Output;
        Write("replan = true\n");
        var said = Call.Run(asked).Output;
        Assert.Contains("\"planned_anew\": true", told, StringComparison.Ordinal);
        Assert.Equal(told, said);
        Write("replan = false\n");
        Assert.Contains("\"planned_anew\": false", Call.Run(asked).Output, StringComparison.Ordinal);

        void Write(string front) => File.WriteAllText(Path.Combine(spring, "variants", "slow.toml"), front + Cooler("55 F"));
    }

    // As the starter is, broccoli for 24 March is sown in the first days of February, when the season has just opened. In a house as cool
    // as 45 F it would have to be sown in January: said of the variant, with the line of the plan.
    [Fact]
    public void A_sowing_that_cannot_be_planned_anew_is_a_fault_of_the_variant()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, Cooler("45 F"));
        File.WriteAllText(Path.Combine(spring, "plan.csv"), "id,crop,grower,plants,set_out\na,broccoli,Ada,300,2027-03-24\n");
        Assert.Equal(0, Call.Run("compare", spring, "--with", "slow", "--seasons", "2").Code);
        var compare = Call.Run("compare", spring, "--with", "slow", "--seasons", "2", "--replan");
        Assert.Equal(2, compare.Code);
        Assert.StartsWith(
            "plan.csv:2:1: in the variant \"slow\": batch \"a\" would have to be sown",
            compare.Error,
            StringComparison.Ordinal
        );
    }

    private static string Cooler(string night) => $"[[house]]\nid = \"main\"\nnight = \"{night}\"\nday = \"{night}\"\n";

    private static string WithVariant(TemporaryFolder folder, string text)
    {
        var spring = folder.Starter();
        Directory.CreateDirectory(Path.Combine(spring, "variants"));
        File.WriteAllText(Path.Combine(spring, "variants", "slow.toml"), text);
        return spring;
    }
}
