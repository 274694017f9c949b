using System.Globalization;
using BenchSim.Folder.Library;
using BenchSim.Season.Values;

namespace BenchSim.Published.Library;

/// <summary>Weeks to field size, reference temperatures and potting mix of the library against transplants.csv and trays.csv.</summary>
public class TransplantTableTests
{
    /// <summary>
    /// Table 1.1 of the Utah vegetable guide, its tomato-pepper-eggplant page, the Delaware table, and the Utah table counted from
    /// germination.
    /// </summary>
    private static readonly Dictionary<string, string> s_tables = new(StringComparer.Ordinal)
    {
        ["Utah"] = "Transplant Production Table 1.1",
        ["Utah fruit"] = "vegetableguide/tomato-pepper-eggplant",
        ["Delaware"] = "Univ. of Delaware",
        ["germination"] = "WEEKS COUNT FROM GERMINATION",
    };

    public static TheoryData<string, string, string> Rows =>
        new()
        {
            { "tomato", "Utah", "Tomato" },
            { "tomatillo", "Utah", "Tomato" },
            { "pepper", "Delaware", "Pepper" },
            { "eggplant", "Utah fruit", "Eggplant" },
            { "cabbage", "Delaware", "Cabbage" },
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
            { "melon", "Delaware", "Melon" },
            { "watermelon", "Delaware", "Watermelon (seeded)" },
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
    public void The_range_of_weeks_is_that_of_the_published_row(string id, string table, string crop)
    {
        var row = Published(table, crop);
        Assert.Equal((row["weeks_min"], row["weeks_max"]), (Library(id).Cells["weeks_min"], Library(id).Cells["weeks_max"]));
    }

    // A house of 60 F nights and 65 F days, as in the example and the starter folder, has a mean of 62.5 F.
    [Theory]
    [MemberData(nameof(Rows))]
    public void Of_the_rows_with_temperatures_it_is_the_nearest_to_a_house_of_60_and_65_F(string id, string table, string crop)
    {
        var row = Published(table, crop);
        if (row["day_f"].Length == 0)
        {
            Assert.Contains(id, new[] { "celery", "celeriac" }, StringComparer.Ordinal);
            return;
        }

        string[] names = crop switch
        {
            "Melon" => ["Melon", "Cantaloupe"],
            "Watermelon (seeded)" => ["Watermelon (seeded)", "Watermelon"],
            _ => [crop],
        };
        var rows = PublishedTable
            .Read("transplants.csv")
            .Concat(PublishedTable.Read("calendars.csv").Where(line => line["house_day_f"].Length > 0).Select(AsTransplant))
            .Where(line => names.Contains(line["crop"], StringComparer.Ordinal) && line["day_f"].Length > 0)
            .ToList();
        Assert.Equal(rows.Min(Distance), Distance(row), 1e-9);

        static Dictionary<string, string> AsTransplant(Dictionary<string, string> line) =>
            new(line, StringComparer.Ordinal) { ["day_f"] = line["house_day_f"], ["night_f"] = line["house_night_f"] };

        static double Distance(Dictionary<string, string> line) => Math.Abs(((Middle(line["day_f"]) + Middle(line["night_f"])) / 2) - 62.5);
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
    [InlineData(50, "50-cell", 5.55)]
    [InlineData(72, "72 square-cell", 4.25)]
    [InlineData(98, "98-cell", 3.63)]
    [InlineData(128, "128-cell", 3.21)]
    [InlineData(200, "200-cell", 2.79)]
    public void Mix_of_a_cell_tray_is_cells_times_the_volume_of_the_supplier_sheet(int cells, string item, double litres)
    {
        // A cubic inch is 2.54^3 = 16.387064 cm3; the litres are those of the table's derived rows.
        var row = PublishedTable.Read("trays.csv").Find(line => line["item"] == $"cell volume {item}" && line["unit"] == "in3/cell")!;
        var medium = PublishedTable
            .Read("trays.csv")
            .Find(line => line["item"] == $"medium per {cells}-cell tray (cells x supplier volume)")!;
        Assert.Contains(FormattableString.Invariant($"DERIVED: {litres} L"), medium["note"], StringComparison.Ordinal);
        Assert.Equal(cells * Number(row["value"]) * 16.387064 / 1000, litres, 2);
        var tray = BuiltInLibrary.Trays.Single(type => type.Id == $"{cells}-cell");
        Assert.Equal(cells, Number(tray.Cells["cells"]));
        Assert.Equal(litres, Number(tray.Cells["medium_litres"]));
    }

    [Theory]
    [InlineData(24, 50)]
    [InlineData(38, 50)]
    [InlineData(288, 200)]
    public void A_sheet_the_supplier_does_not_list_is_as_much_deeper_than_Ontarios_as_its_kin(int cells, int kin)
    {
        double Ontario(int of) =>
            of
            * Number(
                PublishedTable.Read("trays.csv").Find(line => line["item"] == $"cell volume {of}-cell" && line["unit"] == "cm3/cell")![
                    "value"
                ]
            )
            / 1000;
        double Litres(int of) => Number(BuiltInLibrary.Trays.Single(type => type.Id == $"{of}-cell").Cells["medium_litres"]);
        Assert.InRange(
            Litres(cells),
            (Ontario(cells) * Litres(kin) / Ontario(kin)) - 0.01,
            (Ontario(cells) * Litres(kin) / Ontario(kin)) + 0.01
        );
        Assert.Equal(Trust.Assumption, BuiltInLibrary.Trays.Single(type => type.Id == $"{cells}-cell").Sources["medium_litres"].Trust);
    }

    [Fact]
    public void An_open_flat_takes_the_published_half_inch_spacing()
    {
        // "about 800 seeds per 10x20 flat at 0.5 x 0.5 in (20 x 40 grid)", UC Master Gardeners Santa Clara County.
        var row = PublishedTable.Read("trays.csv").Find(line => line["item"] == "seed spacing in open flat")!;
        var seeds = 10 / Number(row["value"]) * (20 / Number(row["value"]));
        Assert.Equal(seeds, Number(BuiltInLibrary.Trays.Single(type => type.Id == "open-flat").Cells["seeds_per_flat"]));
    }

    internal static Dictionary<string, string> Published(string table, string crop) =>
        PublishedTable
            .Read("transplants.csv")
            .Find(line => line["crop"] == crop && line["source"].Contains(s_tables[table], StringComparison.Ordinal))!;

    private static LibraryRow Library(string id) => BuiltInLibrary.Crops.Single(crop => crop.Id == id);

    internal static double Middle(string range) => range.Split('-').Average(Number);

    internal static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
