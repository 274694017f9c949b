using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Words;
using CsvHelper;

namespace BenchSim.Report.Tables;

/// <summary>
/// A table that CsvHelper writes after RFC 4180: commas, CRLF, quotes doubled. Text that a spreadsheet would take for a formula gets a
/// leading apostrophe; numbers and dates are written by their own methods and stay what they are.
/// </summary>
internal sealed class CsvTable
{
    private static readonly SearchValues<char> s_otherSeparators = SearchValues.Create(";\t");

    private static readonly CsvWriterOptions s_form = new() { WriteByteOrderMark = true, Quoting = CsvQuoting.WhenNeededOrWhitespace };

    private readonly int _columns;
    private readonly List<string> _cells;

    /// <summary>Starts a table with its columns.</summary>
    public CsvTable(params IEnumerable<Column> columns)
    {
        Columns = [.. columns];
        _cells = [.. Columns.SelectMany(column => column.Each).Select(column => column.Name)];
        _columns = _cells.Count;
    }

    /// <summary>The columns, families in one.</summary>
    public ImmutableArray<Column> Columns { get; }

    /// <summary>The table so far as a file has it.</summary>
    public static implicit operator byte[](CsvTable table) => table.ToBytes();

    /// <summary>The table so far as UTF-8 with a byte order mark, without which spreadsheets misread names with accents.</summary>
    public byte[] ToBytes()
    {
        using var bytes = new MemoryStream();
        using (var csv = CsvWriter.Create(bytes, s_form, leaveOpen: true))
        {
            foreach (var row in _cells.Chunk(_columns))
            {
                foreach (var cell in row)
                {
                    csv.WriteField(cell, QuotingOf(cell));
                }

                csv.EndRecord();
            }
        }

        return bytes.ToArray();
    }

    /// <summary>A cell of text.</summary>
    public CsvTable Text(string text)
    {
        var valid = PlainText.Valid(text);
        _cells.Add(IsFormula(valid) ? "'" + valid : valid);
        return this;
    }

    /// <summary>A cell with a whole number.</summary>
    public CsvTable Number(long value)
    {
        _cells.Add(value.ToString(CultureInfo.InvariantCulture));
        return this;
    }

    /// <summary>A cell with a number, at most six decimals; blank when there is none (NaN).</summary>
    public CsvTable Number(double value)
    {
        _cells.Add(double.IsFinite(value) ? Rounded(value) : "");
        return this;
    }

    /// <summary>A cell with an ISO date; blank when there is none.</summary>
    public CsvTable Date(DateOnly? date)
    {
        _cells.Add(Dates.Iso(date));
        return this;
    }

    /// <summary>At most six decimals, without trailing zeros and without a negative zero.</summary>
    public static string Rounded(double value)
    {
        var text = value.ToString("0.######", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    // Where the comma is the decimal mark, spreadsheets part cells at a semicolon, others at a tab.
    private static CsvQuoting QuotingOf(string cell) => cell.AsSpan().ContainsAny(s_otherSeparators) ? CsvQuoting.Always : s_form.Quoting;

    private static bool IsFormula(string text)
    {
        if (text.Length == 0)
        {
            return false;
        }

        // Some programs skip blanks before they look for the sign, and take the full-width forms for the plain ones.
        var leads = text[0] is '\t' or '\r' or '\n' || text.TrimStart() is ['=' or '+' or '-' or '@' or '＝' or '＋' or '－' or '＠', ..];
        return leads && !IsPlainNumber(text);
    }

    private static bool IsPlainNumber(string text) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);
}
