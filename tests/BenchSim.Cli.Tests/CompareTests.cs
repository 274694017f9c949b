using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"compare" says which differences are real and which cannot be told, and writes nothing.</summary>
public sealed class CompareTests
{
    [Fact]
    public void Prints_a_table_and_a_sentence_for_each_difference()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[work_minutes]\nsow = 60\n");
        var before = folder.Everything();
        var compare = Call.Run("compare", spring, "--with", "slow", "--seasons", "20");
        Assert.Equal(0, compare.Code);
        Assert.Empty(compare.Error);
        Assert.Contains("* With \"slow\" the work takes ", compare.Sentences, StringComparison.Ordinal);
        Assert.Contains("- The plants out in time: the same in every one of 20 seasons.", compare.Sentences, StringComparison.Ordinal);
        Assert.Contains("The same seasons fit with and without ", compare.Sentences, StringComparison.Ordinal);
        Assert.Contains("comparisons made here (Bonferroni)", compare.Sentences, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Machines_get_every_difference_and_the_threads_do_not_matter()
    {
        using var folder = new TemporaryFolder();
        var spring = WithVariant(folder, "[rules]\nlate_days = 0\n");
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

    private static string WithVariant(TemporaryFolder folder, string text)
    {
        var spring = folder.Starter();
        Directory.CreateDirectory(Path.Combine(spring, "variants"));
        File.WriteAllText(Path.Combine(spring, "variants", "slow.toml"), text);
        return spring;
    }
}
