using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace BenchSim.Report.Tests.Papers;

/// <summary>A small reader of workbooks, written from ECMA-376 part 1 and not from the writer: a zip file with
/// a part for each sheet.</summary>
internal sealed class SmallWorkbook
{
    private static readonly XNamespace s_main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace s_links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static readonly XNamespace s_package = "http://schemas.openxmlformats.org/package/2006/relationships";

    private readonly Dictionary<string, XDocument> _parts = new(StringComparer.Ordinal);
    private readonly string[] _formats;

    public SmallWorkbook(byte[] bytes)
    {
        using var zip = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
        foreach (var entry in zip.Entries)
        {
            using var stream = entry.Open();
            _parts.Add(entry.FullName, XDocument.Load(stream));
        }

        var styles = _parts["xl/styles.xml"].Root!;
        var custom = styles
            .Descendants(s_main + "numFmt")
            .ToDictionary(
                format => format.Attribute("numFmtId")!.Value,
                format => format.Attribute("formatCode")!.Value,
                StringComparer.Ordinal
            );
        _formats =
        [
            .. styles
                .Element(s_main + "cellXfs")!
                .Elements()
                .Select(style => custom.GetValueOrDefault(style.Attribute("numFmtId")?.Value ?? "", "")),
        ];
        var targets = _parts["xl/_rels/workbook.xml.rels"]
            .Root!.Elements(s_package + "Relationship")
            .ToDictionary(
                link => link.Attribute("Id")!.Value,
                link => link.Attribute("Target")!.Value.TrimStart('/'),
                StringComparer.Ordinal
            );
        Sheets = _parts["xl/workbook.xml"]
            .Descendants(s_main + "sheet")
            .ToDictionary(
                sheet => sheet.Attribute("name")!.Value,
                sheet =>
                    _parts[
                        targets[sheet.Attribute(s_links + "id")!.Value] is var target && _parts.ContainsKey(target)
                            ? target
                            : "xl/" + target
                    ].Root!,
                StringComparer.Ordinal
            );
    }

    /// <summary>Sheets by name.</summary>
    public Dictionary<string, XElement> Sheets { get; }

    public static bool IsFrozenBelowHeader(XElement sheet) =>
        sheet
            .Descendants(s_main + "pane")
            .Any(pane => pane.Attribute("state")?.Value == "frozen" && pane.Attribute("ySplit")?.Value == "1");

    public static string? Filter(XElement sheet) => sheet.Element(s_main + "autoFilter")?.Attribute("ref")?.Value;

    public static bool HasFormula(XElement sheet) => sheet.Descendants(s_main + "f").Any();

    /// <summary>Rows of a sheet, header first: texts as text, numbers as numbers, dates as dates by their format, blanks as null.</summary>
    public object?[][] Rows(string name) =>
        [.. Sheets[name].Descendants(s_main + "row").Select(row => row.Elements(s_main + "c").Select(Value).ToArray())];

    private object? Value(XElement cell)
    {
        var text = cell.Element(s_main + "v")?.Value;
        switch (cell.Attribute("t")?.Value)
        {
            case "str":
                // ST_Xstring, part 1, 22.9.2.19: _xHHHH_ is the letter with that number.
                return Regex.Replace(
                    text ?? "",
                    "_x(?<number>[0-9A-Fa-f]{4})_",
                    match =>
                        (
                            (char)int.Parse(match.Groups["number"].Value, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)
                        ).ToString(),
                    RegexOptions.ExplicitCapture,
                    TimeSpan.FromSeconds(1)
                );
            case "inlineStr":
                return string.Concat(cell.Descendants(s_main + "t").Select(part => part.Value));
            case "s":
                var shared = _parts["xl/sharedStrings.xml"]
                    .Root!.Elements(s_main + "si")
                    .ElementAt(int.Parse(text!, CultureInfo.InvariantCulture));
                return string.Concat(shared.Descendants(s_main + "t").Select(part => part.Value));
        }

        if (string.IsNullOrEmpty(text))
        {
            return null;
        }

        var number = double.Parse(text, CultureInfo.InvariantCulture);
        var format = cell.Attribute("s") is { } style ? _formats[int.Parse(style.Value, CultureInfo.InvariantCulture)] : "";

        // Day 1 of a workbook is 1 January 1900, and 29 February 1900 is counted though it never was: so from
        // March 1900 on, day 0 is 30 December 1899.
        return format.Contains("yyyy", StringComparison.Ordinal) ? new DateOnly(1899, 12, 30).AddDays((int)number) : number;
    }
}
