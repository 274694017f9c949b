using System.Globalization;
using BenchSim.Folder.Library;
using BenchSim.Season.Inputs;

namespace BenchSim.Published.Library;

/// <summary>
/// The cold that crops of the library stand on the table and in the field, and the warmth of the covers, against published limits. The
/// sources contradict one another, so a value must lie in their range and not at a point.
/// </summary>
public class HardeningTests
{
    // Half a tenth of a degree: the library rounds Celsius to a tenth.
    private const double Rounding = 0.06;

    private static readonly List<Dictionary<string, string>> s_rules = PublishedTable.Read("hardening_rules.csv");

    // 28 F is the short limit of brassica seedlings being hardened; below 32 F all go back under cover.
    [Theory]
    [InlineData("hardy")]
    [InlineData("half-hardy")]
    public void Cool_season_crops_stay_out_between_the_short_limit_of_brassicas_and_the_frost_below_which_all_come_in(string hardiness)
    {
        var (least, most) = (Rule("Brassicas", "short-period limit"), Rule("All", "move back under cover when forecast low is below"));
        Assert.Equal((28, 32), (least, most));
        Assert.All(Of(hardiness), crop => Assert.InRange(Fahrenheit(crop, "damage_below"), least - Rounding, most + Rounding));
    }

    // They are set out at the cold that just set cool-season transplants stand, or down to the hard freeze of 28 F.
    [Fact]
    public void Cool_season_crops_go_out_at_the_cold_that_transplants_just_set_stand()
    {
        var most = Rule("Cool-season vegetables", "night minimum, tender transplants");
        Assert.Equal(32, most);
        foreach (var crop in Of("hardy").Concat(Of("half-hardy").Where(crop => !crop.Id.StartsWith("celer", StringComparison.Ordinal))))
        {
            Assert.InRange(Fahrenheit(crop, "table_above"), 28 - Rounding, most + Rounding);
            Assert.InRange(Fahrenheit(crop, "field_above"), 28 - Rounding, most + Rounding);
        }
    }

    // Tomato and pepper react badly below 45 F; warm-season crops are stunted by a week below 55 F.
    [Fact]
    public void Warm_season_crops_go_out_between_the_night_that_hurts_and_the_night_that_stunts()
    {
        var (least, most) = (Rule("Tomato, pepper", "reacts badly below"), Rule("Warm-season vegetables", "stunted by a week below"));
        Assert.Equal((45, 55), (least, most));
        foreach (var crop in Of("very tender"))
        {
            Assert.InRange(Fahrenheit(crop, "damage_below"), least - Rounding, most + Rounding);
            Assert.InRange(Fahrenheit(crop, "table_above"), least - Rounding, most + Rounding);
            Assert.InRange(Fahrenheit(crop, "field_above"), least - Rounding, most + Rounding);
        }

        Assert.InRange(Fahrenheit(Crop("tomato"), "damage_below"), least - Rounding, least + Rounding);
        Assert.InRange(Fahrenheit(Crop("pepper"), "damage_below"), least - Rounding, least + Rounding);
    }

    // The fabric cover added 47.4 - 44.1 = 3.3 F to the mean lowest of one spring and 47.5 - 47.2 = 0.3 F of the next: 1.8 F, which is 1 K.
    // A tunnel without heat is 1.3 K above the mean lowest outdoors.
    [Fact]
    public void Covers_in_the_field_add_what_was_measured_under_them()
    {
        var gains =
            Rule("Row cover in field", "gain in mean minimum over mulch alone, Reemay 1983")
            + Rule("Row cover in field", "gain in mean minimum over mulch alone, Reemay 1984");
        Assert.Equal(gains / 2 / 1.8, new SiteRules().RowCoverGainK, 0.001);
        Assert.Equal(Rule("Plastic tunnel, unheated", "minimum above outside"), new SiteRules().TunnelGainK);
    }

    private static IEnumerable<LibraryRow> Of(string hardiness) => BuiltInLibrary.Crops.Where(crop => crop.Cells["hardiness"] == hardiness);

    private static LibraryRow Crop(string id) => BuiltInLibrary.Crops.Single(crop => crop.Id == id);

    private static double Fahrenheit(LibraryRow crop, string column) =>
        32 + (1.8 * double.Parse(crop.Cells[column].Split(' ')[0], CultureInfo.InvariantCulture));

    private static double Rule(string crop, string rule) =>
        double.Parse(s_rules.Find(row => row["crop_or_group"] == crop && row["rule"] == rule)!["value"], CultureInfo.InvariantCulture);
}
