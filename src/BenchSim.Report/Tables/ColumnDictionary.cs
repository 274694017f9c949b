namespace BenchSim.Report.Tables;

/// <summary>
/// The column dictionary of a folder: a row for each column of each table in it, with its unit and meaning. It is made from the tables as
/// they are written, so that it has every column and no other.
/// </summary>
internal sealed class ColumnDictionary
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "columns.csv";

    private readonly CsvTable _table = new(
        new("file", "text", "file of the folder"),
        new("column", "text", "column of that file, in its order"),
        new("unit", "text", "unit, or what kind of value stands in it"),
        new("meaning", "text", "what it is")
    );

    /// <summary>Whether it has no table.</summary>
    public bool IsEmpty { get; private set; } = true;

    /// <summary>Adds the columns of a table.</summary>
    /// <param name="file">Name of its file within the folder.</param>
    /// <param name="table">The table.</param>
    public void Add(string file, CsvTable table)
    {
        IsEmpty = false;
        foreach (var column in table.Columns.SelectMany(column => column.Each))
        {
            _table.Text(file).Text(column.Name).Text(column.Unit).Text(column.Meaning.Replace("`", "", StringComparison.Ordinal));
        }
    }

    /// <summary>The dictionary, its own columns at the end.</summary>
    public byte[] ToBytes()
    {
        Add(FileName, _table);
        return _table.ToBytes();
    }
}
