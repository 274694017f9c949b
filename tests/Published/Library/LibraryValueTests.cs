using System.Globalization;
using BenchSim.Folder.Library;

namespace BenchSim.Published.Library;

/// <summary>The values of the built-in library against the published rows that it cites.</summary>
public class LibraryValueTests
{
    /// <summary>Crop of the library, its row in thermal_time.csv and emergence_days.csv, its row in
    /// germination_temps.csv, its kind in 7 CFR 201.31.</summary>
    public static TheoryData<string, string, string, string> Rows =>
        new()
        {
            { "tomato", "Tomato", "Tomato", "Tomato" },
            { "tomatillo", "Tomato", "Tomato", "Tomato, husk" },
            { "pepper", "Pepper", "Pepper", "Pepper" },
            { "eggplant", "Eggplant", "Eggplant", "Eggplant" },
            { "cabbage", "Cabbage", "Cabbage", "Cabbage" },
            { "chinese-cabbage", "Cabbage", "Cabbage", "Chinese cabbage" },
            { "pak-choi", "Cabbage", "Cabbage", "Pak-choi" },
            { "broccoli", "Cabbage", "Broccoli", "Broccoli" },
            { "cauliflower", "Cauliflower", "Cauliflower", "Cauliflower" },
            { "brussels-sprouts", "Cabbage", "Cabbage", "Brussels sprouts" },
            { "kale", "Cabbage", "Cabbage", "Kale" },
            { "collards", "Cabbage", "Cabbage", "Collards" },
            { "kohlrabi", "Cabbage", "Cabbage", "Kohlrabi" },
            { "turnip", "Turnip", "Turnip", "Turnip" },
            { "lettuce", "Lettuce", "Lettuce", "Lettuce" },
            { "endive", "Lettuce", "Lettuce", "Endive" },
            { "radicchio", "Lettuce", "Lettuce", "Chicory" },
            { "onion", "Onion", "Onion", "Onion" },
            { "leek", "Onion", "Leek", "Leek" },
            { "scallion", "Onion", "Onion", "Onion, Welsh" },
            { "celery", "Celery", "Celery", "Celery" },
            { "celeriac", "Celery", "Celery", "Celeriac" },
            { "parsley", "Parsley", "Parsley", "Parsley" },
            { "fennel", "Carrot", "Carrot", "" },
            { "beet", "Beet", "Beet", "Beet" },
            { "chard", "Beet", "Chard", "Chard, Swiss" },
            { "spinach", "Spinach", "Spinach", "Spinach" },
            { "cucumber", "Cucumber", "Cucumber", "Cucumber" },
            { "summer-squash", "Cucumber", "Squash", "Squash" },
            { "winter-squash", "Cucumber", "Squash", "Squash" },
            { "pumpkin", "Cucumber", "Pumpkin", "Pumpkin" },
            { "melon", "Muskmelon", "Muskmelon", "Melon" },
            { "watermelon", "Watermelon", "Watermelon", "Watermelon" },
            { "okra", "Okra", "Okra", "Okra" },
            { "sweet-corn", "Corn_sweet", "Corn_sweet", "Corn, sweet" },
            { "pea", "Pea", "Pea", "Pea" },
            { "bean", "Bean_snap", "Bean_snap", "Bean, garden" },
            { "basil", "", "", "" },
            { "asparagus", "Asparagus", "Asparagus", "Asparagus" },
            { "cilantro", "", "", "" },
            { "dill", "", "", "" },
            { "chives", "", "", "" },
            { "thyme", "", "", "" },
            { "oregano", "", "", "" },
            { "sage", "", "", "" },
            { "lavender", "", "", "" },
            { "snapdragon", "", "", "" },
            { "statice", "", "", "" },
            { "lisianthus", "", "", "" },
            { "zinnia", "", "", "" },
            { "celosia", "", "", "" },
        };

    [Fact]
    public void Every_crop_of_the_library_is_checked() =>
        Assert.Equal(
            BuiltInLibrary.Crops.Select(crop => crop.Id).Order(StringComparer.Ordinal),
            Rows.Select(row => (string)row[0]).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );

    [Theory]
    [MemberData(nameof(Rows))]
    public void Base_optimum_and_heat_sum_are_one_fitted_row(string id, string fitted, string hottest, string kind)
    {
        _ = (hottest, kind);
        if (fitted.Length == 0)
        {
            return;
        }

        var row = PublishedTable.Read("thermal_time.csv").Find(line => line["crop"] == fitted)!;
        Assert.Contains("Harrington & Minges 1954", row["source"], StringComparison.Ordinal);
        Assert.Equal(Number(row["base_c"]), Degrees(id, "emerge_base"));
        Assert.Equal(Number(row["optimum_c"]), Degrees(id, "emerge_optimum"));
        Assert.Equal(Number(row["heat_sum_cd"]), Number(Cell(id, "emerge_heat")));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_plateau_ends_where_the_1954_table_first_shows_a_loss_of_days(string id, string fitted, string hottest, string kind)
    {
        _ = (hottest, kind);
        if (fitted.Length == 0)
        {
            Assert.Equal(Degrees(id, "emerge_optimum"), Degrees(id, "emerge_plateau"));
            return;
        }

        var optimum = Degrees(id, "emerge_optimum");
        Assert.Equal(PublishedPlateau.Of(fitted, optimum, PublishedCeiling.Of(fitted, optimum)), Degrees(id, "emerge_plateau"));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_ceiling_is_the_published_maximum_and_lies_above_the_optimum(string id, string fitted, string hottest, string kind)
    {
        _ = (fitted, kind);
        Assert.True(Degrees(id, "emerge_ceiling") > Degrees(id, "emerge_optimum"));
        if (hottest.Length > 0)
        {
            // The library rounds to a tenth of a degree.
            Assert.InRange(Degrees(id, "emerge_ceiling") - PublishedCeiling.Of(hottest, Degrees(id, "emerge_optimum")), -0.051, 0.051);
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_germination_curve_is_the_percent_normal_of_the_1954_table(string id, string fitted, string hottest, string kind)
    {
        _ = (hottest, kind);
        var published = PublishedTable
            .Read("emergence_days.csv")
            .Where(line => line["crop"] == fitted && line["pct_normal"].Length > 0)
            .Where(line => !(fitted == "Celery" && line["temp_c"] == "15"))
            .Select(line => $"{line["temp_c"]} C {line["pct_normal"]} %");
        Assert.Equal(string.Join(" | ", published), Cell(id, "germination_curve"));
    }

    // 40 % at 15 C between 70 % at 10 C and 97 % at 20 C: no other crop of the table falls by 30 points below its best and rises again.
    [Theory]
    [InlineData("celery")]
    [InlineData("celeriac")]
    public void The_curve_of_celery_leaves_out_the_suspect_point_and_says_so(string id)
    {
        var row = PublishedTable.Read("emergence_days.csv").Find(line => line["crop"] == "Celery" && line["temp_c"] == "15")!;
        Assert.Equal("40", row["pct_normal"]);
        Assert.DoesNotContain("15 C", Cell(id, "germination_curve"), StringComparison.Ordinal);
        Assert.Contains("40 % printed at 15 C", Crop(id).Sources["germination_curve"].Source, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_default_germination_lies_above_the_legal_minimum_of_the_kind(string id, string fitted, string hottest, string kind)
    {
        _ = (fitted, hottest);
        if (kind.Length == 0)
        {
            return;
        }

        var row = PublishedTable.Read("federal_germination_minimums.csv").Find(line => line["crop"] == kind)!;
        Assert.True(100 * Number(Cell(id, "germination")) > Number(row["min_germination_pct"]));
        Assert.Contains($"{row["min_germination_pct"]} %", Crop(id).Sources["germination"].Source, StringComparison.Ordinal);
    }

    [Fact]
    public void The_spread_of_onion_is_the_published_spread_in_log10_times_ln_10()
    {
        // 0.1844 (SD of log10 thermal time), Onions and Other Vegetable Alliums, eqns 4.8-4.9.
        var row = PublishedTable.Read("thermal_time.csv").Find(line => line["crop"] == "Onion (median; germination)")!;
        var log10 = Number(row["sigma"].Split(' ')[0]);
        Assert.Equal(0.1844, log10);
        Assert.All(new[] { "onion", "leek", "scallion" }, id => Assert.Equal(log10 * Math.Log(10), Number(Cell(id, "emerge_sigma")), 4));
    }

    private static LibraryRow Crop(string id) => BuiltInLibrary.Crops.Single(crop => crop.Id == id);

    private static string Cell(string id, string column) => Crop(id).Cells[column];

    private static double Degrees(string id, string column) => Number(Cell(id, column).Replace(" C", "", StringComparison.Ordinal));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
