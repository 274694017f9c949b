using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Library;
using BenchSim.Folder.Plan;
using BenchSim.Folder.Shelves;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Folder.Variants;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder;

/// <summary>Reads the crops and tray types a plan may choose from: the library, with crops.csv and trays.csv laid over it.</summary>
internal sealed class ChoicesReader(FileReader files, CellReader cells, SiteDraft site, VariantFile? variant)
{
    /// <summary>Reads both.</summary>
    public Choices Read()
    {
        var trays = ReadShelf(BuiltInLibrary.Trays, TrayFields.Table, "tray type", null);
        var overlay = variant is null ? null : new CropOverlay(variant, site.Units, cells.Faults);
        var crops = ReadShelf(BuiltInLibrary.Crops, CropFields.Table, "crop", overlay);
        CheckMishapCrops(crops);
        return new Choices(
            new ShelfReading<Crop>(crops, new CropReader(cells, trays, site).Read),
            new ShelfReading<TrayType>(trays, new TrayReader(cells).Read)
        );
    }

    private void CheckMishapCrops(Shelf crops)
    {
        foreach (var cell in site.MishapCrops.Where(cell => crops.IsWhole && crops.Find(cell.Text) is null))
        {
            cells.Faults.Add(
                cell.Place,
                $"there is no crop {Words.Quote(cell.Text)}",
                crops.Nearest(cell.Text) is { } near
                    ? $"did you mean {Words.Quote(near)}"
                    : "name one of the built-in library or of crops.csv"
            );
        }
    }

    private Shelf ReadShelf(ImmutableArray<LibraryRow> library, FieldTable columns, string thing, CropOverlay? overlay)
    {
        var name = columns.Section;
        if (!files.HasTable(name))
        {
            return Shelf.Of(library, overlay?.Lay([]) ?? [], isWhole: true, cells, thing);
        }

        var table = files.ReadTable(name, new SourcePlace(name, 0, 0)) is { } file
            ? CsvTable.Read(file, columns, CsvTable.MostRows, cells, site.Units)
            : null;
        var rows = table?.Rows ?? [];
        return Shelf.Of(
            library,
            table is null ? rows : overlay?.Lay(rows) ?? rows,
            isWhole: table is not null && table.Has("id"),
            cells,
            thing
        );
    }

    /// <summary>The open flats of the library and of the farm, in order of their ids.</summary>
    public static ImmutableArray<TrayType> OpenFlats(ShelfReading<TrayType> trays) =>
        [
            .. BuiltInLibrary
                .Trays.Select(row => trays.Find(row.Id))
                .OfType<TrayType>()
                .Concat(trays.Known)
                .Where(tray => tray.IsFlat)
                .DistinctBy(tray => tray.Id, StringComparer.Ordinal)
                .OrderBy(tray => tray.Id, StringComparer.Ordinal),
        ];
}
