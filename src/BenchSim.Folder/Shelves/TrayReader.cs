using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Shelves;

/// <summary>Turns rows of the tray shelf into tray types.</summary>
internal sealed class TrayReader(CellReader cells)
{
    private const int NotRead = -1;

    private static readonly string[] s_needed = ["cells", "medium_litres"];

    /// <summary>Reads a row; null when it had a fault.</summary>
    public TrayType? Read(ShelfRow row)
    {
        var before = cells.Faults.Count;
        var nothing = TrayFields.Nothing with { Id = row.Id, Name = row.Id, Cells = NotRead };
        var tray = row.Read(TrayFields.Table, nothing, cells);
        var seeds = row["seeds_per_flat"];
        var missing = s_needed.Where(column => row[column].IsBlank).ToList();
        if (tray.Cells == 0 && seeds.IsBlank)
        {
            missing.Add(seeds.Name);
        }

        if (missing.Count > 0)
        {
            cells.Faults.Add(
                row.Place,
                $"the new tray type {Words.Quote(row.Id)} has no {Words.List(missing, "or")}",
                "fill in the cells of this row"
            );
        }

        if (tray.Cells > 0 && tray.SeedsPerFlat > 0)
        {
            cells.Refuse(seeds, "is only for an open flat", "leave it empty, or write 0 in cells");
        }

        return cells.Faults.Count > before ? null : tray with { Sources = row.Sources(TrayFields.IsSourced) };
    }
}
