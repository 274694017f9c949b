using System.Globalization;
using System.Text;
using System.Xml;

namespace BenchSim.Folder.Sheets;

/// <summary>Reads the cells of one sheet. Only cells that hold something are kept, wherever they stand.</summary>
internal sealed class SheetReader(WorkbookParts parts, bool isFrom1904)
{
    private const int MostCells = 2_000_000;

    // Cells further out stay at the end of their row, at their own place.
    private const int MostColumns = 1001;
    private const int MostMergedCells = 100_000;

    private readonly List<string> _texts = [];
    private readonly SheetStyles _styles = SheetStyles.Of(parts);
    private readonly SortedDictionary<int, SortedDictionary<int, SheetField>> _cells = [];
    private readonly List<string> _merged = [];
    private int _count;

    /// <summary>The rows of a sheet, blank ones left out.</summary>
    public List<SheetRow> Read(string part)
    {
        ReadTexts();
        using (var sheet = parts.Open(part))
        {
            ReadCells(sheet);
        }

        MarkMerged();
        var widest = Widest;
        return
        [
            .. _cells.Where(row => row.Value.Values.Any(field => field.Text.Length > 0)).Select(row => Row(row.Key, row.Value, widest)),
        ];
    }

    // The last column within reach that holds something in any row.
    private int Widest => _cells.Values.SelectMany(row => row.Keys).Where(column => column <= MostColumns).DefaultIfEmpty(0).Max();

    // A cell out of reach comes behind all others, so that it is in no column of the table.
    private static SheetRow Row(int number, SortedDictionary<int, SheetField> cells, int widest)
    {
        var near = cells.Keys.Max() > MostColumns ? widest : cells.Keys.Max();
        var fields = Enumerable
            .Range(1, near)
            .Select(column => cells.TryGetValue(column, out var field) ? field : new SheetField("", number, column, 0, 0))
            .Concat(cells.Where(cell => cell.Key > MostColumns).Select(cell => cell.Value));
        return new SheetRow([.. fields], number);
    }

    private void ReadTexts()
    {
        const string Part = "xl/sharedStrings.xml";
        if (!parts.Has(Part))
        {
            return;
        }

        using var texts = parts.Open(Part);
        while (texts.Read())
        {
            if (texts is { NodeType: XmlNodeType.Element, LocalName: "si" })
            {
                _texts.Add(TextIn(texts));
            }
        }
    }

    private void ReadCells(XmlReader sheet)
    {
        var (row, column) = (0, 0);
        while (sheet.Read())
        {
            if (sheet.NodeType != XmlNodeType.Element)
            {
                continue;
            }

            if (sheet.LocalName is "row")
            {
                row = sheet.GetAttribute("r") is { } number ? Whole(number) : row + 1;
                column = 0;
            }
            else if (sheet.LocalName is "c")
            {
                (row, column) = sheet.GetAttribute("r") is { } address ? AddressOf(address) : (row, column + 1);
                ReadCell(sheet, row, column);
            }
            else if (sheet.LocalName is "mergeCell" && sheet.GetAttribute("ref") is { } range)
            {
                _merged.Add(range);
            }
        }
    }

    private void ReadCell(XmlReader sheet, int row, int column)
    {
        var (kind, style) = (sheet.GetAttribute("t"), sheet.GetAttribute("s"));
        var (value, inline) = ("", "");
        if (!sheet.IsEmptyElement)
        {
            var depth = sheet.Depth;
            sheet.Read();
            while (sheet.Depth > depth)
            {
                if (sheet is { NodeType: XmlNodeType.Element, LocalName: "v" })
                {
                    value = sheet.ReadElementContentAsString();
                }
                else if (sheet is { NodeType: XmlNodeType.Element, LocalName: "is" })
                {
                    inline = TextIn(sheet);
                    sheet.Read();
                }
                else
                {
                    sheet.Skip();
                }
            }
        }

        var text = kind switch
        {
            "s" => value.Length == 0
                ? ""
                : _texts.ElementAtOrDefault(Whole(value)) ?? throw new InvalidDataException("a text that is not there"),
            "inlineStr" => inline,
            "b" => value is "1" ? "yes" : "no",
            "str" or "e" or "d" => value,
            _ => value.Length == 0 ? "" : _styles.Write(Number(value), style is null ? 0 : Whole(style), isFrom1904),
        };
        if (text.Trim() is not { Length: > 0 } written)
        {
            return;
        }

        if (++_count > MostCells)
        {
            throw new UnreadableWorkbookException(
                $"the sheet has more than {MostCells.ToString("#,##0", CultureInfo.InvariantCulture)} cells and was not read",
                "check that it is the right file"
            );
        }

        Put(row, column, new SheetField(written, row, column, 0, 0) { Flaw = kind is "e" ? CellFlaw.Error : CellFlaw.None });
    }

    // A merged cell has its value in its first cell alone: the others look empty, and are not.
    private void MarkMerged()
    {
        var (marked, widest) = (0, Widest);
        foreach (var range in _merged)
        {
            if (range.Split(':') is not [var from, var to])
            {
                continue;
            }

            var (first, last) = (AddressOf(from), AddressOf(to));
            foreach (var row in _cells.Keys.Where(row => row >= first.Row && row <= last.Row).ToArray())
            {
                for (var column = first.Column; column <= Math.Min(last.Column, widest) && ++marked < MostMergedCells; column++)
                {
                    if (!_cells[row].ContainsKey(column))
                    {
                        Put(row, column, new SheetField("", row, column, 0, 0) { Flaw = CellFlaw.Merged });
                    }
                }
            }
        }
    }

    private void Put(int row, int column, SheetField field)
    {
        if (!_cells.TryGetValue(row, out var cells))
        {
            _cells[row] = cells = [];
        }

        cells[column] = field;
    }

    // The text of an element, its runs joined; how letters are spoken (rPh) is no part of it.
    private static string TextIn(XmlReader reader)
    {
        var text = new StringBuilder();
        if (reader.IsEmptyElement)
        {
            return "";
        }

        var depth = reader.Depth;
        reader.Read();
        while (reader.Depth > depth)
        {
            if (reader is { NodeType: XmlNodeType.Element, LocalName: "rPh" })
            {
                reader.Skip();
            }
            else if (reader is { NodeType: XmlNodeType.Element, LocalName: "t" })
            {
                text.Append(reader.ReadElementContentAsString());
            }
            else
            {
                reader.Read();
            }
        }

        return text.ToString();
    }

    private static (int Row, int Column) AddressOf(string address)
    {
        var letters = address.TakeWhile(char.IsAsciiLetterUpper).Count();
        if (letters is 0 or > 3)
        {
            throw new InvalidDataException("no address of a cell");
        }

        return (Whole(address[letters..]), address[..letters].Aggregate(0, (column, letter) => column * 26 + letter - 'A' + 1));
    }

    private static int Whole(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
