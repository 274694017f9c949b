using BenchSim.Folder.Text;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Shelves;

/// <summary>A crop or tray type as text: the library's cells with the user's over them.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Place">Where the user's row is; default for a row of the library alone.</param>
/// <param name="Cells">Cells that are filled, by column.</param>
internal sealed record ShelfRow(string Id, SourcePlace Place, Dictionary<string, ShelfCell> Cells)
{
    /// <summary>Whether it was to borrow from a crop that cannot lend, so that its blank cells say nothing more.</summary>
    public bool HasNoLender { get; init; }

    /// <summary>Through how many others its blank cells come; 0 for one that does not borrow.</summary>
    public int Lenders { get; init; }

    /// <summary>Whether the user wrote the row.</summary>
    public bool IsUsers => Place.File is not null;

    /// <summary>The cell of a column; blank when it is not filled. The word "none" stands for a blank that overrides.</summary>
    public Cell this[string column]
    {
        get
        {
            var cell = Cells.TryGetValue(column, out var found) ? found.Cell : new Cell("", Place, column, UnitSystem.Metric);
            return IsNone(cell) ? cell with { Text = "" } : cell;
        }
    }

    private static bool IsNone(Cell cell) =>
        cell.Name is "min_night" or "max_mat" or "germination_curve" or "benches" or "mats" or "harvest_after_days" or "harvest_days"
        && string.Equals(cell.Text, "none", StringComparison.OrdinalIgnoreCase);
}

/// <summary>A filled cell and where its value comes from.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Source">Where its value comes from.</param>
internal readonly record struct ShelfCell(Cell Cell, Provenance Source);
