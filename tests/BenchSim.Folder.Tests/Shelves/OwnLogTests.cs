using BenchSim.Folder.Shelves;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Shelves;

/// <summary>What the column "source" of crops.csv says of values learned from logs, and of all others.</summary>
public sealed class OwnLogTests
{
    private const string Text =
        "own log, 2026 and 2027, 12 batches; before: emerge_heat 96 (from memory), stand_loss 5 % (assumption); "
        + "others: my notebook, page 3";

    [Fact]
    public void Is_read_and_written_alike()
    {
        var log = OwnLog.Read(Text)!;
        Assert.Equal(["2026", "2027"], log.Seasons, StringComparer.Ordinal);
        Assert.Equal((12, "my notebook, page 3"), (log.Batches, log.Others));
        Assert.Equal<IEnumerable<ValueBefore>>(
            [new("emerge_heat", "96", Trust.Memory), new("stand_loss", "5 %", Trust.Assumption)],
            log.Before
        );
        Assert.Equal(Text, log.ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("my notebook")]
    [InlineData("own log, ")]
    [InlineData("own log, 2027")]
    [InlineData("own log, 2027, many batches")]
    [InlineData("own log, 2027, 3 batches; before: emerge_heat")]
    [InlineData("own log, 2027, 3 batches; before: emerge_heat 96 (hearsay)")]
    public void Any_other_text_is_none(string text) => Assert.Null(OwnLog.Read(text));

    // Each value of a row has the source that is its own.
    [Theory]
    [InlineData("own log, 2027, 1 batch; before: emerge_heat 96 (from memory); others: my notebook", "my notebook")]
    [InlineData("own log, 2027, 1 batch; before: emerge_heat 96 (from memory)", "")]
    [InlineData("seed merchant", "seed merchant")]
    public void Holds_for_the_values_that_it_names(string source, string others)
    {
        var sources = Tomato($"id,emerge_heat,stand_loss,source\ntomato,101,4 %,\"{source}\"\n");
        Assert.Equal(new Provenance(Trust.User, source), sources["emerge_heat"]);
        Assert.Equal(new Provenance(Trust.User, others), sources["stand_loss"]);
        Assert.False(sources.ContainsKey("source"));
    }

    [Fact]
    public void A_relative_lends_no_source_but_says_it()
    {
        using var folder = new TestFolder();
        folder.Write("plan.csv", "id,crop,plants,sow\na,mine,100,2027-03-01\n");
        folder.Write("crops.csv", "id,like,emerge_heat,stand_loss,source\nhis,tomato,101,,seed merchant\nmine,his,,4 %,\n");
        var sources = ScenarioFolder.Read(folder.Path).Scenario!.Crops.Single().Sources;
        Assert.Equal(new Provenance(Trust.Borrowed, "from his: as written in this folder, seed merchant"), sources["emerge_heat"]);
        Assert.Equal(Provenance.User, sources["stand_loss"]);
    }

    private static System.Collections.Immutable.ImmutableSortedDictionary<string, Provenance> Tomato(string crops)
    {
        using var folder = new TestFolder();
        folder.Write("crops.csv", crops);
        return ScenarioFolder.Read(folder.Path).Scenario!.Crops.Single().Sources;
    }
}
