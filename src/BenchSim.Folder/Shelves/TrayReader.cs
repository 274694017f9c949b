using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Shelves;

/// <summary>Turns rows of the tray shelf into tray types.</summary>
internal sealed class TrayReader(CellReader cells)
{
    private const int MostCells = 5000;
    private const int MostSeeds = 100_000;

    private static readonly string[] Needed = ["cells", "medium_litres"];

    /// <summary>Reads a row; null when it had a fault.</summary>
    public TrayType? Read(ShelfRow row)
    {
        var before = cells.Faults.Count;
        var count = cells.Whole(row["cells"], 0, MostCells);
        var seedsCell = row["seeds_per_flat"];
        var seeds = cells.Whole(seedsCell, 1, MostSeeds);
        var litres = cells.Number(row["medium_litres"], 0, 1000);
        var places = cells.Whole(row["places_each"], 1, 100) ?? 1;
        var missing = Needed.Where(column => row[column].IsBlank).ToList();
        if (count == 0 && seedsCell.IsBlank)
        {
            missing.Add("seeds_per_flat");
        }

        if (missing.Count > 0)
        {
            cells.Faults.Add(
                row.Place,
                $"the new tray type {Words.Quote(row.Id)} has no {Words.List(missing, "or")}",
                "fill in the cells of this row"
            );
        }

        if (count > 0 && seeds is not null)
        {
            cells.Refuse(seedsCell, "is only for an open flat", "leave it empty, or write 0 in cells");
        }

        var name = cells.Name(row["name"]) ?? row.Id;
        return cells.Faults.Count > before
            ? null
            : new TrayType
            {
                Id = row.Id,
                Name = name,
                Cells = count!.Value,
                SeedsPerFlat = seeds ?? 0,
                MediumLitres = litres!.Value,
                PlacesEach = places,
                Sources = row
                    .Cells.Where(pair => pair.Key is not ("id" or "name"))
                    .ToImmutableSortedDictionary(pair => pair.Key, pair => pair.Value.Source, StringComparer.Ordinal),
            };
    }
}
