using System.Globalization;
using BenchSim.Folder.Library;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Library;

public class BuiltInLibraryTests
{
    private static readonly string[] s_mayBeBlank =
    [
        "like",
        "germination_curve",
        "weeks_min",
        "weeks_max",
        "max_mat",
        "min_night",
        "benches",
        "mats",
    ];

    public static TheoryData<string> CropIds => [.. BuiltInLibrary.Crops.Select(crop => crop.Id)];

    [Fact]
    public void Holds_at_least_24_crops_and_8_tray_types_with_an_open_flat_among_them()
    {
        Assert.True(BuiltInLibrary.Crops.Length >= 24, $"{BuiltInLibrary.Crops.Length} crops");
        Assert.True(BuiltInLibrary.Trays.Length >= 8, $"{BuiltInLibrary.Trays.Length} tray types");
        Assert.Contains(BuiltInLibrary.Trays, tray => tray.Cells["cells"] == "0");
    }

    [Fact]
    public void Ids_and_names_are_unique_and_ids_are_lower_case_with_hyphens()
    {
        foreach (var rows in new[] { BuiltInLibrary.Crops, BuiltInLibrary.Trays })
        {
            Assert.Equal(rows.Length, rows.Select(row => row.Id).Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(rows.Length, rows.Select(row => row.Cells["name"]).Distinct(StringComparer.Ordinal).Count());
            Assert.All(rows, row => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", row.Id));
            Assert.All(rows, row => Assert.Equal(row.Id, row.Cells["id"]));
        }
    }

    [Theory]
    [MemberData(nameof(CropIds))]
    public void Every_required_cell_of_a_crop_is_filled(string id) =>
        Assert.All(Crop(id).Cells, cell =>
            Assert.True(cell.Value.Length > 0 || s_mayBeBlank.Contains(cell.Key, StringComparer.Ordinal), cell.Key)
        );

    [Theory]
    [MemberData(nameof(CropIds))]
    public void The_columns_that_belong_to_a_site_are_blank(string id) =>
        Assert.All(new[] { "like", "benches", "mats" }, column => Assert.Equal("", Crop(id).Cells[column]));

    [Fact]
    public void Every_value_has_a_source_in_words_and_no_blank_cell_has_one()
    {
        foreach (var row in BuiltInLibrary.Crops.Concat(BuiltInLibrary.Trays))
        {
            string[] valued =
            [
                .. row.Cells.Where(cell => cell.Value.Length > 0 && cell.Key is not ("id" or "name")).Select(cell => cell.Key),
            ];
            Assert.Equal(valued, row.Sources.Keys, StringComparer.Ordinal);
            Assert.All(row.Sources.Values, source => Assert.True(source.Source.Length > 10 && source.Source.EndsWith('.'), source.Source));
            Assert.All(row.Sources.Values, source => Assert.NotEqual(Trust.User, source.Trust));
        }
    }

    [Theory]
    [MemberData(nameof(CropIds))]
    public void A_borrowed_value_names_the_relative(string id) =>
        Assert.All(Crop(id).Sources.Values.Where(source => source.Trust == Trust.Borrowed), source =>
            Assert.StartsWith("Borrowed from ", source.Source, StringComparison.Ordinal)
        );

    [Theory]
    [MemberData(nameof(CropIds))]
    public void Base_optimum_and_heat_sum_come_from_one_fit(string id)
    {
        var sources = Crop(id).Sources;
        Assert.Equal(sources["emerge_heat"].Trust, sources["emerge_base"].Trust);
        Assert.Equal(sources["emerge_heat"].Trust, sources["emerge_optimum"].Trust);
        Assert.StartsWith(sources["emerge_heat"].Source, sources["emerge_base"].Source, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(CropIds))]
    public void Temperatures_lie_in_their_order(string id)
    {
        var crop = Crop(id);
        var ceiling = Degrees(crop, "emerge_ceiling");
        Assert.True(Degrees(crop, "emerge_base") < Degrees(crop, "emerge_optimum"));
        Assert.True(Degrees(crop, "emerge_optimum") <= Degrees(crop, "emerge_plateau"));
        Assert.True(Degrees(crop, "emerge_plateau") < ceiling);
        Assert.True(Degrees(crop, "germinate_at") > Degrees(crop, "emerge_base"));
        Assert.True(Degrees(crop, "germinate_at") <= Degrees(crop, "emerge_plateau"));
        Assert.True(Degrees(crop, "max_mat") < ceiling);
        Assert.True(Degrees(crop, "growth_base") < Degrees(crop, "reference"));
        Assert.True(Degrees(crop, "reference") < Degrees(crop, "growth_cap"));
    }

    // No crop goes to the field on a night on which it is carried in from the table, or on which it would not be put out.
    [Theory]
    [MemberData(nameof(CropIds))]
    public void No_crop_goes_to_the_field_on_a_night_too_cold_for_the_table(string id)
    {
        var crop = Crop(id);
        Assert.True(Degrees(crop, "damage_below") <= Degrees(crop, "table_above"));
        Assert.True(Degrees(crop, "table_above") <= Degrees(crop, "field_above"));
    }

    [Theory]
    [MemberData(nameof(CropIds))]
    public void Fractions_counts_and_days_are_possible(string id)
    {
        var crop = Crop(id);
        Assert.All(new[] { "leave_mat_at", "germination" }, column => Assert.InRange(Number(crop, column), 0.3, 0.99));
        Assert.All(new[] { "stand_loss", "pot_up_loss" }, column => Assert.InRange(Number(crop, column), 0, 0.2));
        Assert.All(new[] { "emerge_sigma", "emerge_cv", "growth_cv" }, column => Assert.InRange(Number(crop, column), 0.01, 0.6));
        Assert.InRange(Whole(crop, "keep_per_cell"), 1, Whole(crop, "seeds_per_cell"));
        Assert.True(Whole(crop, "hold_days") < Whole(crop, "discard_after_days"));
        Assert.InRange(Whole(crop, "hardening_nights"), 1, 14);
        Assert.InRange(Whole(crop, "emerge_give_up_days"), 14, 60);
        Assert.InRange(Number(crop, "pot_up_check_days"), 1, 5);
    }

    [Theory]
    [MemberData(nameof(CropIds))]
    public void Words_are_known(string id)
    {
        var crop = Crop(id);
        Assert.Contains(crop.Cells["hardiness"], new[] { "hardy", "half-hardy", "tender", "very tender" }, StringComparer.Ordinal);
        Assert.Contains(crop.Cells["counted_from"], new[] { "sowing", "emergence" }, StringComparer.Ordinal);
        Assert.Contains(crop.Cells["includes_hardening"], new[] { "yes", "no" }, StringComparer.Ordinal);
        Assert.Contains(crop.Cells["bottom_heat"], new[] { "yes", "no" }, StringComparer.Ordinal);
        Assert.Contains(BuiltInLibrary.Trays, tray => tray.Id == crop.Cells["tray"] && tray.Cells["cells"] != "0");
    }

    [Theory]
    [MemberData(nameof(CropIds))]
    public void Days_are_left_for_growth_and_the_pot_up_stage_comes_before_field_size(string id)
    {
        var crop = Crop(id);
        var days = Number(crop, "days_to_ready");
        if (crop.Cells["counted_from"] == "sowing")
        {
            days -=
                Number(crop, "emerge_heat")
                / EmergenceRate.At(
                    Degrees(crop, "germinate_at"),
                    Degrees(crop, "emerge_base"),
                    Degrees(crop, "emerge_optimum"),
                    Degrees(crop, "emerge_plateau"),
                    Degrees(crop, "emerge_ceiling")
                );
        }

        if (crop.Cells["includes_hardening"] == "yes")
        {
            days -= Whole(crop, "hardening_nights");
        }

        Assert.True(days > 5, $"{days} days of growth");
        Assert.True(days > Number(crop, "pot_up_days"), $"{days} days of growth");
    }

    [Theory]
    [MemberData(nameof(CropIds))]
    public void The_germination_curve_rises_in_temperature_and_is_not_zero_everywhere(string id)
    {
        var curve = Crop(id).Cells["germination_curve"];
        if (curve.Length == 0)
        {
            return;
        }

        double[][] points =
        [
            .. curve
                .Split(" | ")
                .Select(point => point.Split(' '))
                .Select(words => words is [var t, "C", var p, "%"] ? new[] { Parse(t), Parse(p) } : throw new FormatException(curve)),
        ];
        Assert.Equal(points.Select(point => point[0]).Order(), points.Select(point => point[0]));
        Assert.Equal(points.Length, points.Select(point => point[0]).Distinct().Count());
        Assert.All(points, point => Assert.InRange(point[1], 0, 100));
        Assert.Contains(points, point => point[1] >= 50);
    }

    [Fact]
    public void Tray_types_have_mix_and_places_and_only_an_open_flat_has_seeds_a_flat()
    {
        foreach (var tray in BuiltInLibrary.Trays)
        {
            Assert.InRange(Number(tray, "medium_litres"), 1, 12);
            Assert.Equal(1, Whole(tray, "places_each"));
            Assert.Equal(tray.Cells["cells"] == "0", tray.Cells["seeds_per_flat"].Length > 0);
        }
    }

    private static LibraryRow Crop(string id) => BuiltInLibrary.Crops.Single(crop => crop.Id == id);

    private static double Degrees(LibraryRow row, string column)
    {
        var cell = row.Cells[column];
        Assert.EndsWith(" C", cell, StringComparison.Ordinal);
        return Parse(cell[..^2]);
    }

    private static double Number(LibraryRow row, string column) => Parse(row.Cells[column]);

    private static int Whole(LibraryRow row, string column) => int.Parse(row.Cells[column], CultureInfo.InvariantCulture);

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
