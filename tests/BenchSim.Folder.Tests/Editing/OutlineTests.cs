using BenchSim.Folder.Editing;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Editing;

/// <summary>What stands in a text, and which part of it a fault means.</summary>
public sealed class OutlineTests
{
    private const string Site =
        "# a farm\n[site]\nname = \"A \\\"farm\\\"\"\n\n[[space]]\nid = \"mats\"\nplaces = 4 # few\n[[space]]\nid = \"bench\"\n";

    [Fact]
    public void Sections_of_one_name_are_numbered_and_values_are_plain()
    {
        var outline = TomlOutline.Of(Site);
        Assert.Equal(
            ["site 0 2", "space 0 5", "space 1 8"],
            outline.Parts.Select(part => $"{part.Section} {part.Entry} {part.Line}"),
            StringComparer.Ordinal
        );
        Assert.Equal("A \"farm\"", outline.Parts[0].Find("name")?.Plain);
        Assert.Equal("4", outline.Parts[1].Find("places")?.Value);
    }

    [Theory]
    [InlineData(3, "site", 0, "name")]
    [InlineData(7, "space", 0, "places")]
    [InlineData(8, "space", 1, null)]
    [InlineData(9, "space", 1, "id")]
    public void A_place_belongs_to_the_key_of_its_line(int line, string section, int entry, string? key)
    {
        var found = TomlOutline.Of(Site).Find(new SourcePlace("site.toml", line, 1));
        Assert.Equal((section, entry, key), (found?.Part.Section, found?.Part.Entry, found?.Key));
    }

    [Fact]
    public void A_place_before_all_sections_and_a_text_with_a_fault_belong_to_nothing()
    {
        Assert.Null(TomlOutline.Of(Site).Find(new SourcePlace("site.toml", 1, 1)));
        Assert.Null(TomlOutline.Of(Site).Find(new SourcePlace("site.toml", 0, 0)));
        Assert.False(TomlOutline.Of("[site\n").IsWhole);
    }

    [Theory]
    [InlineData("\"60 F\"", "60 F")]
    [InlineData("[\"Mon\", \"Tue\"]", "Mon, Tue")]
    [InlineData("[2027-05-31]", "2027-05-31")]
    [InlineData("[{ from = 2027-05-01, places = 30 }]", "[{ from = 2027-05-01, places = 30 }]")]
    [InlineData("12", "12")]
    public void A_value_is_shown_without_its_marks(string written, string plain) => Assert.Equal(plain, TomlEdit.Plain(written));

    // Columns are counted in characters, quoted line ends and blank rows among the rows.
    [Theory]
    [InlineData(2, 1, 0, "id")]
    [InlineData(2, 3, 0, "note")]
    [InlineData(5, 1, 1, "id")]
    [InlineData(5, 4, 1, "note")]
    [InlineData(5, 0, 1, null)]
    public void A_place_in_a_table_belongs_to_its_cell(int line, int column, int row, string? name)
    {
        var found = CsvOutline.Of("id,note\na,\"two\nlines\"\n\nbb,x\n").Find(new SourcePlace("plan.csv", line, column));
        Assert.Equal((row, name), (found?.Row, found?.Column));
    }

    [Fact]
    public void The_head_of_a_table_belongs_to_no_row() =>
        Assert.Null(CsvOutline.Of("id,note\na,x\n").Find(new SourcePlace("plan.csv", 1, 4)));
}
