using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Sheets;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Editing;

/// <summary>
/// The cells of a table as they are read, and which of them a fault means. Rows are counted as <see cref="CsvEdit"/> does.
/// </summary>
public sealed class CsvOutline
{
    private readonly List<List<SheetField>> _records;

    private CsvOutline(List<List<SheetField>> records)
    {
        _records = records;
        Columns = records.Count == 0 ? [] : [.. records[0].Select(field => CsvTable.NameOf(field.Text))];
        Rows = [.. records.Skip(1).Select(Cells)];
    }

    /// <summary>Names of the columns as they are read.</summary>
    public ImmutableArray<string> Columns { get; }

    /// <summary>The cells of the rows, each row as long as there are columns.</summary>
    public ImmutableArray<ImmutableArray<string>> Rows { get; }

    /// <summary>Outlines a text, faults in it or not.</summary>
    public static CsvOutline Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new CsvOutline(new CsvSheet(text).Records);
    }

    /// <summary>Outlines the table of a workbook; without columns where it cannot be read.</summary>
    public static CsvOutline OfWorkbook(InputFile workbook)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        var rows = WorkbookFile.Read(workbook.Name, [.. workbook.Bytes], new FaultList()) ?? [];
        return new CsvOutline([.. rows.Where(row => !row.IsBlank).Select(row => row.Fields)]);
    }

    /// <summary>The row and column that a place in the file means; null for the head, and for what is no cell.</summary>
    /// <param name="place">A place in the file.</param>
    public (int Row, string? Column)? Find(SourcePlace place)
    {
        var row = _records.FindLastIndex(record => record[0].Line <= place.Line) - 1;
        if (place.Line == 0 || row < 0)
        {
            return null;
        }

        var at = _records[row + 1].FindLastIndex(field => field.Line < place.Line || field.Column <= place.Column);
        return (row, place.Column == 0 || at < 0 || at >= Columns.Length ? null : Columns[at]);
    }

    private ImmutableArray<string> Cells(List<SheetField> record) =>
        [.. Enumerable.Range(0, Columns.Length).Select(at => at < record.Count ? record[at].Text : "")];
}
