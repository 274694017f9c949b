using BenchSim.Folder.Text;

namespace BenchSim.Folder.Csv;

/// <summary>One row of a table: its cells by column name.</summary>
/// <param name="Line">Line on which it begins.</param>
/// <param name="Cells">Cells by column name, blank ones too; a column the file has not is not in it.</param>
internal sealed record CsvRow(int Line, IReadOnlyDictionary<string, Cell> Cells)
{
    /// <summary>The cell of a column; a blank cell without a place when the file has no such column.</summary>
    public Cell this[string column] => Cells.TryGetValue(column, out var cell) ? cell : new Cell("", default, column, default);

    /// <summary>Whether the file has the column.</summary>
    public bool Has(string column) => Cells.ContainsKey(column);
}
