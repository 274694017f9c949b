using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Season.Fields;

namespace BenchSim.Folder.Tests.Editing;

/// <summary>A key of site.toml is changed, and nothing else.</summary>
public class TomlEditTests
{
    public static TheoryData<string> Sites => [.. Repository.Examples.Select(folder => Path.GetFileName(folder))];

    [Theory]
    [MemberData(nameof(Sites))]
    public void Every_key_set_to_itself_leaves_the_file_and_set_to_another_value_changes_its_span_alone(string name)
    {
        var text = File.ReadAllText(Repository.File($"scenarios/{name}/site.toml"));
        var found = 0;
        foreach (var field in FolderReference.Site.SelectMany(table => table.Fields))
        {
            for (var entry = 0; TomlEdit.Value(text, field.Section, entry, field.Name) is { } value; entry++)
            {
                found++;
                Assert.Equal(text, Set(text, field, entry, value));
                var changed = Set(text, field, entry, "\"another\"");
                Assert.Equal("\"another\"", TomlEdit.Value(changed, field.Section, entry, field.Name));
                Assert.Equal(text.Length - value.Length + "\"another\"".Length, changed.Length);
                Assert.Equal(text, Set(changed, field, entry, value));
            }
        }

        Assert.InRange(found, 20, 500);
    }

    [Fact]
    public void A_value_that_is_set_is_read()
    {
        var text = TomlEdit.Set("site.toml", TestFolder.GoodSite, "space", 0, "places", "14").Text;
        text = TomlEdit.Set("site.toml", text, "house", 0, "day", "\"65 F\"").Text;
        var scenario = ScenarioFolder.ReadKept([InputFile.Of("site.toml", text), InputFile.Of("plan.csv", TestFolder.GoodPlan)]).Scenario!;
        Assert.Equal(14, scenario.Spaces[0].Places);
        Assert.Equal((65 - 32) / 1.8, scenario.Houses[0].DayC!.Value, 1e-9);
    }

    [Fact]
    public void A_key_is_added_where_the_reference_has_it_and_taken_out_with_its_line()
    {
        const string site = "\uFEFF[rules]   # how we work\r\nwork_days = [\"Mon\"] # one\r\nlate_days = 2\r\n\r\n[play]\r\n";
        var added = TomlEdit.Set("site.toml", site, "rules", 0, "slack_days", "4").Text;
        Assert.Equal(
            "\uFEFF[rules]   # how we work\r\nwork_days = [\"Mon\"] # one\r\nslack_days = 4\r\nlate_days = 2\r\n\r\n[play]\r\n",
            added
        );
        Assert.Equal(site, TomlEdit.Remove("site.toml", added, "rules", 0, "slack_days").Text);
        Assert.Equal(site + "seed = 3\r\n", TomlEdit.Set("site.toml", site, "play", 0, "seed", "3").Text);
    }

    [Fact]
    public void An_entry_is_added_behind_its_like_and_taken_out()
    {
        const string site = "[[space]]\nid = \"a\"\n\n[[space]]\nid = \"b\" # two\n\n[rules]\n";
        var added = TomlEdit.Add("site.toml", site, "space", [("id", "\"c\""), ("places", "4")]).Text;
        Assert.Equal("[[space]]\nid = \"a\"\n\n[[space]]\nid = \"b\" # two\n\n[[space]]\nid = \"c\"\nplaces = 4\n\n[rules]\n", added);
        Assert.Equal(
            "[[space]]\nid = \"a\"\n\n\n[[space]]\nid = \"c\"\nplaces = 4\n\n[rules]\n",
            TomlEdit.RemoveEntry("site.toml", added, "space", 1).Text
        );
    }

    [Fact]
    public void What_cannot_be_done_is_a_fault_and_changes_nothing()
    {
        var edit = TomlEdit.Set("site.toml", TestFolder.GoodSite, "space", 0, "places", "14 places");
        Assert.Equal((TestFolder.GoodSite, "with this value the file could not be read"), (edit.Text, edit.Fault!.What));
        Assert.Contains(
            "there is no entry 9 of \"space\"",
            TomlEdit.Set("site.toml", TestFolder.GoodSite, "space", 8, "places", "1").Fault!.What,
            StringComparison.Ordinal
        );
        Assert.Equal("\"a \\\"b\\\" \\\\\"", TomlEdit.Quoted("a \"b\" \\"));
    }

    private static string Set(string text, Field field, int entry, string value)
    {
        var edit = TomlEdit.Set("site.toml", text, field.Section, entry, field.Name, value);
        Assert.Null(edit.Fault);
        return edit.Text;
    }
}
