using BenchSim.Folder.Library;

namespace BenchSim.Folder.Tests.Library;

/// <summary>docs/library.md lists the crops and trays of the library, each with the cells that a grower chooses by.</summary>
public class LibraryPageTests
{
    [Fact]
    public void The_page_lists_every_crop_and_tray_as_the_library_has_it()
    {
        string[] listed =
        [
            .. File.ReadAllLines(Path.Combine(Repository.Root, "docs", "library.md"))
                .Where(line => line.StartsWith("| `", StringComparison.Ordinal)),
        ];
        string[] expected =
        [
            .. BuiltInLibrary.Crops.OrderBy(row => row.Id, StringComparer.Ordinal).Select(Crop),
            .. BuiltInLibrary.Trays.OrderBy(row => row.Id, StringComparer.Ordinal).Select(Tray),
        ];
        Assert.Equal<string[]>(expected, listed);
    }

    private static string Crop(LibraryRow row)
    {
        var (seeds, kept, night) = (row.Cells["seeds_per_cell"], row.Cells["keep_per_cell"], row.Cells["min_night"]);
        Assert.Equal("yes", row.Cells["includes_hardening"]);
        return Line(
            row,
            $"`{row.Cells["tray"]}`",
            row.Cells["bottom_heat"],
            night.Length > 0 ? night : "any",
            $"{row.Cells["days_to_ready"]} from {row.Cells["counted_from"]}",
            row.Cells["weeks_min"].Length > 0 ? $"{row.Cells["weeks_min"]} to {row.Cells["weeks_max"]}" : "",
            row.Cells["hardening_nights"],
            seeds == kept ? seeds : $"{seeds} (keeps {kept})",
            row.Cells["hardiness"]
        );
    }

    private static string Tray(LibraryRow row) => Line(row, row.Cells["cells"], row.Cells["medium_litres"], row.Cells["places_each"]);

    private static string Line(LibraryRow row, params string[] cells) =>
        $"| `{row.Id}` | {row.Cells["name"]} | {string.Join(" | ", cells)} |";
}
