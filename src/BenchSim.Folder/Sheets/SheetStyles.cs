using System.Globalization;
using System.Xml;

namespace BenchSim.Folder.Sheets;

/// <summary>How the numbers of a workbook are shown: which of them are dates, and times of the day (ECMA-376 part 1, 18.8.30).</summary>
internal sealed class SheetStyles
{
    private readonly List<bool> _isDate = [];

    private SheetStyles() { }

    /// <summary>Reads the styles of a workbook.</summary>
    public static SheetStyles Of(WorkbookParts parts)
    {
        const string Part = "xl/styles.xml";
        var styles = new SheetStyles();
        if (!parts.Has(Part))
        {
            return styles;
        }

        var forms = new Dictionary<string, string>(StringComparer.Ordinal);
        var isInCells = false;
        using var reader = parts.Open(Part);
        while (reader.Read())
        {
            if (reader.LocalName is "cellXfs")
            {
                isInCells = reader is { NodeType: XmlNodeType.Element, IsEmptyElement: false };
            }
            else if (reader is { NodeType: XmlNodeType.Element, LocalName: "numFmt" })
            {
                forms[reader.GetAttribute("numFmtId") ?? ""] = reader.GetAttribute("formatCode") ?? "";
            }
            else if (isInCells && reader is { NodeType: XmlNodeType.Element, LocalName: "xf" })
            {
                var id = reader.GetAttribute("numFmtId") ?? "0";
                styles._isDate.Add(forms.TryGetValue(id, out var form) ? IsDateForm(form) : IsBuiltInDate(id));
            }
        }

        return styles;
    }

    /// <summary>A number as it is written in a table: dates year-month-day, times hours and minutes, no exponents.</summary>
    /// <param name="number">The number.</param>
    /// <param name="style">Number of its style.</param>
    /// <param name="isFrom1904">Whether days are counted from 1904.</param>
    public string Write(double number, int style, bool isFrom1904)
    {
        if (style < _isDate.Count && _isDate[style] && Moment(number, isFrom1904) is { } moment)
        {
            var time = moment.TimeOfDay == TimeSpan.Zero ? "" : FormattableString.Invariant($" {moment:HH:mm}");
            return number is > 0 and < 1
                ? FormattableString.Invariant($"{moment:HH:mm}")
                : FormattableString.Invariant($"{moment:yyyy-MM-dd}{time}");
        }

        // A spreadsheet keeps fifteen digits: what is behind them comes from its arithmetic.
        return Math.Abs(number) < 1e15
            ? ((decimal)number).ToString(CultureInfo.InvariantCulture)
            : number.ToString("R", CultureInfo.InvariantCulture);
    }

    // Days from the last of December 1899, with a 29 February 1900 that never was; or from the first of January 1904.
    private static DateTime? Moment(double number, bool isFrom1904)
    {
        var days =
            isFrom1904 ? number + 1462
            : number < 60 ? number + 1
            : number;
        return days is > 0 and < 2_958_466 ? DateTime.FromOADate(Math.Round(days * 86_400) / 86_400) : null;
    }

    private static bool IsBuiltInDate(string id) =>
        int.TryParse(id, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && number is (>= 14 and <= 22) or (>= 27 and <= 36) or (>= 45 and <= 47) or (>= 50 and <= 58);

    // Letters of a date outside quotation marks, brackets and behind no backslash.
    private static bool IsDateForm(string form)
    {
        var (isQuoted, isBracketed) = (false, false);
        for (var at = 0; at < form.Length; at++)
        {
            var letter = form[at];
            if (letter is '\\' or '_' or '*')
            {
                at++;
            }
            else if (letter is '"')
            {
                isQuoted = !isQuoted;
            }
            else if (!isQuoted && letter is '[' or ']')
            {
                isBracketed = letter is '[';
            }
            else if (!isQuoted && !isBracketed && letter is 'd' or 'D' or 'm' or 'M' or 'y' or 'Y' or 'h' or 'H')
            {
                return true;
            }
        }

        return false;
    }
}
