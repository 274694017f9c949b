using System.Buffers;
using System.Globalization;
using System.Text;
using BenchSim.Report.Words;

namespace BenchSim.Report.Tables;

/// <summary>
/// Writes a table after RFC 4180: commas, CRLF, quotes doubled. Text that a spreadsheet would take for a formula gets a leading
/// apostrophe; numbers and dates are written by their own methods and stay what they are.
/// </summary>
internal sealed class CsvTable
{
    private static readonly SearchValues<char> s_quoted = SearchValues.Create("\",;\t\r\n");

    private readonly StringBuilder _text = new();
    private readonly int _columns;
    private int _column;

    /// <summary>Starts a table with its header.</summary>
    public CsvTable(params ReadOnlySpan<string> header)
    {
        _columns = header.Length;
        foreach (var name in header)
        {
            Append(name);
        }
    }

    /// <summary>The table so far as UTF-8 with a byte order mark, without which spreadsheets misread names with accents.</summary>
    public byte[] ToBytes() => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(_text.ToString())];

    /// <summary>A cell of text.</summary>
    public CsvTable Text(string text)
    {
        var valid = PlainText.Valid(text);
        Append(Quoted(IsFormula(valid) ? "'" + valid : valid));
        return this;
    }

    /// <summary>A cell with a whole number.</summary>
    public CsvTable Number(long value)
    {
        Append(value.ToString(CultureInfo.InvariantCulture));
        return this;
    }

    /// <summary>A cell with a number, at most six decimals; blank when there is none (NaN).</summary>
    public CsvTable Number(double value)
    {
        Append(double.IsFinite(value) ? Rounded(value) : "");
        return this;
    }

    /// <summary>A cell with an ISO date; blank when there is none.</summary>
    public CsvTable Date(DateOnly? date)
    {
        Append(Dates.Iso(date));
        return this;
    }

    /// <summary>At most six decimals, without trailing zeros and without a negative zero.</summary>
    public static string Rounded(double value)
    {
        var text = value.ToString("0.######", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(s_quoted) >= 0 || text.StartsWith(' ') || text.EndsWith(' ')
            ? "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
            : text;

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

    private void Append(string cell)
    {
        if (_column > 0)
        {
            _text.Append(',');
        }

        _text.Append(cell);
        _column++;
        if (_column < _columns)
        {
            return;
        }

        _text.Append("\r\n");
        _column = 0;
    }
}
