using System.Text;
using BenchSim.Folder.Faults;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Editing;

/// <summary>
/// Changes a cell or a row of a CSV text and leaves every other character as it is: a byte order mark, line ends, separators, quotation
/// marks, blank rows and their order. Rows are counted from 0 below the column names, blank ones left out.
/// </summary>
public static class CsvEdit
{
    /// <summary>How many rows there are.</summary>
    public static int Rows(string text) => new CsvSheet(text).Rows;

    /// <summary>The text of a cell as it is read; empty where the row stops early, null where there is no such row or column.</summary>
    public static string? Cell(string text, int row, string column) => new CsvSheet(text).Cell(row, column);

    /// <summary>Writes a cell. A column that is not there is added behind the others.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The table.</param>
    /// <param name="row">The row.</param>
    /// <param name="column">Name of the column.</param>
    /// <param name="value">What is to be read from the cell.</param>
    public static Edit Set(string file, string text, int row, string column, string value)
    {
        var table = new CsvSheet(text);
        if (Refusal(table, file, text) is { } refused)
        {
            return refused;
        }

        if (table.Row(row) is not { } record)
        {
            return NoRow(file, text, row, table);
        }

        var at = table.Names.IndexOf(column);
        if (at >= 0 && at < record.Count)
        {
            var field = record[at];
            return string.Equals(field.Text, value, StringComparison.Ordinal)
                ? new Edit(text, null)
                : Spliced(table, field.Start, field.End, Written(table, value, table.Body[field.Start..field.End]));
        }

        if (value.Length == 0)
        {
            return new Edit(text, null);
        }

        var last = record[^1].End;
        var place = at >= 0 ? at : table.Names.Count;
        var filled = new string(table.Separator, place - record.Count + 1) + Written(table, value, "");
        if (at >= 0)
        {
            return Spliced(table, last, last, filled);
        }

        var head = table.Records[0][^1].End;
        return new Edit(
            table.Front + table.Body[..head] + table.Separator + column + table.Body[head..last] + filled + table.Body[last..],
            null
        );
    }

    /// <summary>Puts in a row.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The table.</param>
    /// <param name="row">The row it is to be; the number of rows to put it behind the last.</param>
    /// <param name="cells">Its cells by column name; others stay empty.</param>
    public static Edit Insert(string file, string text, int row, IReadOnlyDictionary<string, string> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        var table = new CsvSheet(text);
        if (Refusal(table, file, text) is { } refused)
        {
            return refused;
        }

        var unknown = cells.Keys.FirstOrDefault(name => !table.Names.Contains(name, StringComparer.Ordinal));
        if (unknown is not null || row < 0 || row > table.Records.Count - 1)
        {
            var what = unknown is null ? $"there is no place for a row {row + 1}" : $"there is no column {Words.Quote(unknown)}";
            return Edit.Refused(text, new SourcePlace(file, 0, 0), what, "name rows and columns of the table");
        }

        var line = string.Join(table.Separator, table.Names.Select(name => Written(table, cells.GetValueOrDefault(name, ""), "")));
        if (table.Row(row) is { } before)
        {
            var start = table.LineStart(before);
            return Spliced(table, start, start, line + table.LineEnd);
        }

        var end = table.NextLine(table.Records[^1]);
        var isOpen = end == table.Body.Length && !table.Body.EndsWith('\n') && !table.Body.EndsWith('\r');
        return Spliced(table, end, end, isOpen ? table.LineEnd + line : line + table.LineEnd);
    }

    /// <summary>Puts a copy of a row behind it, character for character.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The table.</param>
    /// <param name="row">The row.</param>
    public static Edit Copy(string file, string text, int row)
    {
        var table = new CsvSheet(text);
        if (Refusal(table, file, text) is { } refused)
        {
            return refused;
        }

        if (table.Row(row) is not { } record)
        {
            return NoRow(file, text, row, table);
        }

        var end = record[^1].End;
        return Spliced(table, end, end, table.LineEnd + table.Body[table.LineStart(record)..end]);
    }

    /// <summary>Takes a row out, with its line end.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The table.</param>
    /// <param name="row">The row.</param>
    public static Edit Remove(string file, string text, int row)
    {
        var table = new CsvSheet(text);
        if (Refusal(table, file, text) is { } refused)
        {
            return refused;
        }

        return table.Row(row) is { } record
            ? Spliced(table, table.LineStart(record), table.NextLine(record), "")
            : NoRow(file, text, row, table);
    }

    private static Edit NoRow(string file, string text, int row, CsvSheet table) =>
        Edit.Refused(text, new SourcePlace(file, 0, 0), $"there is no row {row + 1}", $"the table has {table.Rows} rows");

    private static Edit? Refusal(CsvSheet table, string file, string text)
    {
        if (table.Fault is { } fault)
        {
            return new Edit(text, fault with { Place = fault.Place with { File = file } });
        }

        return table.Records.Count > 0
            ? null
            : Edit.Refused(text, new SourcePlace(file, 1, 1), "the file is empty", "begin with a line of column names");
    }

    private static Edit Spliced(CsvSheet table, int start, int end, string part) =>
        new(table.Front + table.Body[..start] + part + table.Body[end..], null);

    // A cell that was quoted stays quoted; another is where it must be.
    private static string Written(CsvSheet table, string value, string before)
    {
        var mustBe =
            value.Contains(table.Separator)
            || value.AsSpan().ContainsAny("\"\r\n")
            || value.Trim().Length < value.Length
            || before.StartsWith('"');
        return mustBe ? new StringBuilder(value).Replace("\"", "\"\"").Insert(0, '"').Append('"').ToString() : value;
    }
}
