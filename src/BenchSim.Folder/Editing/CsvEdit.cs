using System.Text;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Editing;

/// <summary>
/// Changes a cell or a row of a CSV text and leaves every other character as it is: a byte order mark, line ends, separators, quotation
/// marks, blank rows and their order. Rows are counted from 0 below the column names, blank ones left out.
/// </summary>
public static class CsvEdit
{
    private const string Mark = "\uFEFF";

    /// <summary>How many rows there are.</summary>
    public static int Rows(string text) => Math.Max(0, new Table(text).Records.Count - 1);

    /// <summary>The text of a cell as it is read; empty where the row stops early, null where there is no such row or column.</summary>
    public static string? Cell(string text, int row, string column)
    {
        var table = new Table(text);
        var (record, at) = (table.Row(row), table.Names.IndexOf(column));
        return record is null || at < 0 ? null
            : at < record.Count ? record[at].Text
            : "";
    }

    /// <summary>Writes a cell. A column that is not there is added behind the others.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The table.</param>
    /// <param name="row">The row.</param>
    /// <param name="column">Name of the column.</param>
    /// <param name="value">What is to be read from the cell.</param>
    public static Edit Set(string file, string text, int row, string column, string value)
    {
        var table = new Table(text);
        if (table.Refusal(file) is { } refused)
        {
            return refused;
        }

        if (table.Row(row) is not { } record)
        {
            return Edit.Refused(text, new SourcePlace(file, 0, 0), $"there is no row {row + 1}", $"the table has {Rows(text)} rows");
        }

        var at = table.Names.IndexOf(column);
        if (at >= 0 && at < record.Count)
        {
            var field = record[at];
            return string.Equals(field.Text, value, StringComparison.Ordinal)
                ? new Edit(text, null)
                : table.Spliced(field.Start, field.End, table.Written(value, table.Body[field.Start..field.End]));
        }

        if (value.Length == 0)
        {
            return new Edit(text, null);
        }

        var last = record[^1].End;
        var place = at >= 0 ? at : table.Names.Count;
        var filled = new string(table.Separator, place - record.Count + 1) + table.Written(value, "");
        if (at >= 0)
        {
            return table.Spliced(last, last, filled);
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
        var table = new Table(text);
        if (table.Refusal(file) is { } refused)
        {
            return refused;
        }

        var unknown = cells.Keys.FirstOrDefault(name => !table.Names.Contains(name, StringComparer.Ordinal));
        if (unknown is not null || row < 0 || row > table.Records.Count - 1)
        {
            var what = unknown is null ? $"there is no place for a row {row + 1}" : $"there is no column {Words.Quote(unknown)}";
            return Edit.Refused(text, new SourcePlace(file, 0, 0), what, "name rows and columns of the table");
        }

        var line = string.Join(table.Separator, table.Names.Select(name => table.Written(cells.GetValueOrDefault(name, ""), "")));
        if (table.Row(row) is { } before)
        {
            var start = table.LineStart(before);
            return table.Spliced(start, start, line + table.LineEnd);
        }

        var end = table.NextLine(table.Records[^1]);
        var isOpen = end == table.Body.Length && !table.Body.EndsWith('\n') && !table.Body.EndsWith('\r');
        return table.Spliced(end, end, isOpen ? table.LineEnd + line : line + table.LineEnd);
    }

    /// <summary>Takes a row out, with its line end.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The table.</param>
    /// <param name="row">The row.</param>
    public static Edit Remove(string file, string text, int row)
    {
        var table = new Table(text);
        if (table.Refusal(file) is { } refused)
        {
            return refused;
        }

        return table.Row(row) is { } record
            ? table.Spliced(table.LineStart(record), table.NextLine(record), "")
            : Edit.Refused(text, new SourcePlace(file, 0, 0), $"there is no row {row + 1}", $"the table has {Rows(text)} rows");
    }

    /// <summary>A text with the places of its fields.</summary>
    private sealed class Table
    {
        private readonly FaultList _faults = new();
        private readonly string _text;

        public Table(string text)
        {
            _text = text;
            Front = text.StartsWith(Mark, StringComparison.Ordinal) ? Mark : "";
            Body = text[Front.Length..];
            Records = CsvText.Split(new FileText("", Body), _faults);
            Records.RemoveAll(record => record.TrueForAll(field => field.Text.Length == 0));
            Names = Records.Count == 0 ? [] : [.. Records[0].Select(field => CsvTable.NameOf(field.Text))];
        }

        public string Front { get; }

        public string Body { get; }

        public List<List<CsvField>> Records { get; }

        public List<string> Names { get; }

        public char Separator => Records[0].Count > 1 ? Body[Records[0][0].End] : ',';

        public string LineEnd =>
            Body.AsSpan(Records[0][^1].End) switch
            {
                ['\r', '\n', ..] => "\r\n",
                ['\r', ..] => "\r",
                _ => "\n",
            };

        public List<CsvField>? Row(int row) => row >= 0 && row + 1 < Records.Count ? Records[row + 1] : null;

        public Edit? Refusal(string file)
        {
            if (_faults.Count > 0)
            {
                var fault = _faults.Faults[0];
                return new Edit(_text, fault with { Place = fault.Place with { File = file } });
            }

            return Records.Count > 0
                ? null
                : Edit.Refused(_text, new SourcePlace(file, 1, 1), "the file is empty", "begin with a line of column names");
        }

        public Edit Spliced(int start, int end, string part) => new(Front + Body[..start] + part + Body[end..], null);

        // A cell that was quoted stays quoted; another is where it must be.
        public string Written(string value, string before)
        {
            var mustBe =
                value.Contains(Separator)
                || value.AsSpan().ContainsAny("\"\r\n")
                || value.Trim().Length < value.Length
                || before.StartsWith('"');
            return mustBe ? new StringBuilder(value).Replace("\"", "\"\"").Insert(0, '"').Append('"').ToString() : value;
        }

        public int LineStart(List<CsvField> record) => Body.AsSpan(0, record[0].Start).LastIndexOfAny('\r', '\n') + 1;

        public int NextLine(List<CsvField> record)
        {
            var end = record[^1].End;
            return end == Body.Length ? end
                : Body.AsSpan(end).StartsWith("\r\n", StringComparison.Ordinal) ? end + 2
                : end + 1;
        }
    }
}
