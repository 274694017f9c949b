using System.Collections.Immutable;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
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

    /// <summary>Reads every cell that is filled into a record; what is blank, or is wrong, stays as it is.</summary>
    public TRecord Read<TRecord>(FieldTable<TRecord> table, TRecord record, CellReader cells)
    {
        foreach (var field in table.Values)
        {
            if (this[field.Name] is { IsBlank: false } cell)
            {
                record = field.Read(new WrittenCell(cells, cell), record);
            }
        }

        return record;
    }

    /// <summary>Where the values of the columns come from.</summary>
    /// <param name="isSourced">Whether a column has a source.</param>
    public ImmutableSortedDictionary<string, Provenance> Sources(Func<string, bool> isSourced) =>
        Cells
            .Where(pair => isSourced(pair.Key))
            .ToImmutableSortedDictionary(pair => pair.Key, pair => pair.Value.Source, StringComparer.Ordinal);

    private static bool IsNone(Cell cell) =>
        string.Equals(cell.Text, "none", StringComparison.OrdinalIgnoreCase) && CropFields.Table.Find(cell.Name)?.Kind.TakesNone == true;
}

/// <summary>A filled cell and where its value comes from.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Source">Where its value comes from.</param>
internal readonly record struct ShelfCell(Cell Cell, Provenance Source);
