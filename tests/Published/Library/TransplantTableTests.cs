using System.Globalization;
using BenchSim.Folder.Library;
using BenchSim.Season.Values;

namespace BenchSim.Published.Library;

/// <summary>Weeks to field size, reference temperatures and potting mix of the library against transplants.csv and trays.csv.</summary>
public class TransplantTableTests
{
    /// <summary>Table 1.1 of the Utah vegetable guide, its tomato-pepper-eggplant page, the Delaware table, and
    /// the Utah table counted from germination.</summary>
    private static readonly Dictionary<string, string> Tables = new(StringComparer.Ordinal)
    {
        ["Utah"] = "Transplant Production Table 1.1",
        ["Utah fruit"] = "vegetableguide/tomato-pepper-eggplant",
        ["Delaware"] = "Univ. of Delaware",
        ["germination"] = "WEEKS COUNT FROM GERMINATION",
    };

    public static TheoryData<string, string, string> Rows =>
        new()
        {
            { "tomato", "Utah fruit", "Tomato" },
            { "tomatillo", "Utah fruit", "Tomato" },
            { "pepper", "Utah fruit", "Pepper" },
            { "eggplant", "Utah fruit", "Eggplant" },
            { "cabbage", "Utah", "Cabbage" },
            { "chinese-cabbage", "Utah", "Other leafy greens" },
            { "pak-choi", "Utah", "Other leafy greens" },
            { "broccoli", "Utah", "Broccoli" },
            { "cauliflower", "Delaware", "Cauliflower" },
            { "brussels-sprouts", "Utah", "Other Brassicas" },
            { "kale", "Utah", "Other leafy greens" },
            { "collards", "Utah", "Other leafy greens" },
            { "kohlrabi", "Utah", "Other Brassicas" },
            { "lettuce", "Utah", "Lettuce" },
            { "endive", "Utah", "Endive" },
            { "radicchio", "Utah", "Endive" },
            { "onion", "Utah", "Onion" },
            { "leek", "Utah", "Onion" },
            { "celery", "germination", "Celery" },
            { "celeriac", "germination", "Celery" },
            { "chard", "Utah", "Other leafy greens" },
            { "spinach", "Utah", "Other leafy greens" },
            { "cucumber", "Utah", "Cucumber" },
            { "summer-squash", "Utah", "Summer squash" },
            { "winter-squash", "Utah", "Summer squash" },
            { "pumpkin", "Utah", "Summer squash" },
            { "melon", "Utah", "Cantaloupe" },
            { "watermelon", "Utah", "Watermelon" },
            { "asparagus", "Utah", "Asparagus" },
        };

    [Fact]
    public void Every_crop_whose_weeks_are_not_recalled_or_assumed_is_checked() =>
        Assert.Equal(
            BuiltInLibrary
                .Crops.Where(crop => crop.Sources["days_to_ready"].Trust is not (Trust.Memory or Trust.Assumption))
                .Select(crop => crop.Id)
                .Order(StringComparer.Ordinal),
            Rows.Select(row => (string)row[0]).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );

    [Theory]
    [MemberData(nameof(Rows))]
    public void Days_to_field_size_are_the_midpoint_of_the_published_weeks(string id, string table, string crop)
    {
        var row = Published(table, crop);
        var library = Library(id);
        Assert.Equal(7 * (Number(row["weeks_min"]) + Number(row["weeks_max"])) / 2, Number(library.Cells["days_to_ready"]));
        Assert.Equal(table == "germination" ? "emergence" : "sowing", library.Cells["counted_from"]);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_reference_is_the_mean_of_day_and_night_of_the_same_row(string id, string table, string crop)
    {
        var row = Published(table, crop);
        if (row["day_f"].Length > 0)
        {
            var celsius = ((Middle(row["day_f"]) + Middle(row["night_f"])) / 2 - 32) / 1.8;
            Assert.InRange(Number(Library(id).Cells["reference"].Replace(" C", "", StringComparison.Ordinal)) - celsius, -0.051, 0.051);
        }
        else
        {
            Assert.Equal(Trust.Assumption, Library(id).Sources["reference"].Trust);
        }
    }

    [Theory]
    [InlineData("tomato", "50-60")]
    [InlineData("pepper", "60-65")]
    [InlineData("eggplant", "60-65")]
    public void Hardening_nights_of_the_fruiting_crops_are_the_published_seven(string id, string temperatures)
    {
        // Utah State Univ. Extension, tomato-pepper-eggplant transplant production: harden 7 days.
        var row = Published("Utah fruit", Library(id).Cells["name"]);
        Assert.Equal(temperatures, row["harden_temp_f"]);
        Assert.Equal(row["harden_days"], Library(id).Cells["hardening_nights"]);
        Assert.Equal("7", Library(id).Cells["hardening_nights"]);
    }

    [Theory]
    [InlineData(24)]
    [InlineData(38)]
    [InlineData(50)]
    [InlineData(72)]
    [InlineData(128)]
    [InlineData(200)]
    [InlineData(288)]
    public void Mix_of_a_cell_tray_is_cells_times_the_volume_of_the_Ontario_table(int cells)
    {
        var row = PublishedTable
            .Read("trays.csv")
            .Find(line => line["item"] == $"cell volume {cells}-cell" && line["source"].Contains("Ontario", StringComparison.Ordinal))!;
        Assert.Equal("cm3/cell", row["unit"]);
        var tray = BuiltInLibrary.Trays.Single(type => type.Id == $"{cells}-cell");
        Assert.Equal(cells, Number(tray.Cells["cells"]));
        Assert.Equal(cells * Number(row["value"]) / 1000, Number(tray.Cells["medium_litres"]), 2);
    }

    [Fact]
    public void The_98_cell_tray_lies_between_its_neighbours_of_the_Ontario_table()
    {
        // 72 x 43 cm3 = 3.096 L, 128 x 23 cm3 = 2.944 L; 26 of the 56 cells between them: 3.096 - 26/56 x 0.152 = 3.025 L.
        Assert.InRange(Number(BuiltInLibrary.Trays.Single(type => type.Id == "98-cell").Cells["medium_litres"]), 3.02, 3.03);
    }

    [Fact]
    public void An_open_flat_takes_the_published_half_inch_spacing()
    {
        // "about 800 seeds per 10x20 flat at 0.5 x 0.5 in (20 x 40 grid)", UC Master Gardeners Santa Clara County.
        var row = PublishedTable.Read("trays.csv").Find(line => line["item"] == "seed spacing in open flat")!;
        var seeds = 10 / Number(row["value"]) * (20 / Number(row["value"]));
        Assert.Equal(seeds, Number(BuiltInLibrary.Trays.Single(type => type.Id == "open-flat").Cells["seeds_per_flat"]));
    }

    private static Dictionary<string, string> Published(string table, string crop) =>
        PublishedTable
            .Read("transplants.csv")
            .Find(line => line["crop"] == crop && line["source"].Contains(Tables[table], StringComparison.Ordinal))!;

    private static LibraryRow Library(string id) => BuiltInLibrary.Crops.Single(crop => crop.Id == id);

    private static double Middle(string range) => range.Split('-').Average(Number);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
