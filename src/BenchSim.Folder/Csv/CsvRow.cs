using System.Collections.Frozen;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;

namespace BenchSim.Folder.Csv;

/// <summary>The columns that a file may have, by name.</summary>
internal sealed class CsvColumns(FieldTable table)
{
    private readonly FrozenDictionary<string, int> _places = table
        .Names.Select((name, index) => KeyValuePair.Create(name, index))
        .ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>How many there are.</summary>
    public int Count => _places.Count;

    /// <summary>The place of a column among them; -1 for one that no file of this kind has.</summary>
    public int this[string column] => _places.TryGetValue(column, out var place) ? place : -1;
}

/// <summary>One row of a table: its cells by column name.</summary>
internal sealed class CsvRow
{
    private readonly CsvColumns _columns;
    private readonly Cell[] _cells;

    /// <summary>A row without cells.</summary>
    /// <param name="line">Line on which it begins.</param>
    /// <param name="columns">Columns it may have.</param>
    /// <param name="number">Its number in a spreadsheet, where it stands in a table.</param>
    public CsvRow(int line, CsvColumns columns, int number = 0)
        : this(line, columns, number, new Cell[columns.Count]) { }

    private CsvRow(int line, CsvColumns columns, int number, Cell[] cells) =>
        (Line, _columns, Number, _cells) = (line, columns, number, cells);

    /// <summary>Its number in a spreadsheet: blank rows count, line breaks inside a cell do not.</summary>
    public int Number { get; }

    /// <summary>Line on which it begins.</summary>
    public int Line { get; }

    /// <summary>Its cells, blank ones too; a column the file has not is not among them.</summary>
    public IEnumerable<Cell> Cells => _cells.Where(cell => cell.Name is not null);

    /// <summary>The cell of a column; a blank cell without a place when the file has no such column.</summary>
    public Cell this[string column] =>
        _columns[column] is >= 0 and var place && _cells[place].Name is not null ? _cells[place] : new Cell("", default, column, default);

    /// <summary>Whether the file has the column.</summary>
    public bool Has(string column) => _columns[column] is >= 0 and var place && _cells[place].Name is not null;

    /// <summary>
    /// Reads every cell that is filled into a record; what is blank, or is wrong, stays as it is. A blank cell that must not be is a fault.
    /// </summary>
    public TRecord Read<TRecord>(FieldTable<TRecord> table, TRecord record, CellReader cells)
    {
        for (var place = 0; place < _cells.Length; place++)
        {
            var (cell, field) = (_cells[place], table.Values[place]);
            if (cell.Name is null)
            {
                continue;
            }

            if (!cell.IsBlank)
            {
                record = field.Read(new WrittenCell(cells, cell), record);
            }
            else if (field.IsRequired)
            {
                cells.Refuse(cell, "is empty", field.Example);
            }
        }

        return record;
    }

    /// <summary>Puts a cell into its column.</summary>
    public void Put(Cell cell) => _cells[_columns[cell.Name]] = cell;

    /// <summary>The row with other cells in some columns.</summary>
    public CsvRow With(IEnumerable<Cell> cells)
    {
        var row = new CsvRow(Line, _columns, Number, [.. _cells]);
        foreach (var cell in cells)
        {
            row.Put(cell);
        }

        return row;
    }
}
