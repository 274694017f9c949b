using System.Globalization;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Sheets;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Csv;

/// <summary>
/// A CSV text with a header: columns by name, blank rows left out. Names are matched whatever their case, and spaces and hyphens in them
/// count as underscores ("Set out" is set_out).
/// </summary>
internal sealed class CsvTable
{
    /// <summary>Most rows of a plan, and of crops or trays; a plan may have as many batches.</summary>
    public const int MostRows = 10_000;

    private const int MostColumns = 1000;

    private readonly FileText _file;
    private readonly FieldTable _fields;
    private readonly CellReader _cells;
    private readonly FaultList _faults;
    private readonly UnitSystem _units;
    private readonly CsvColumns _known;
    private readonly List<string?> _columns = [];
    private readonly List<bool> _hasNoName = [];

    private CsvTable(FileText file, FieldTable fields, CellReader cells, UnitSystem units)
    {
        (_file, _fields, _cells, _faults, _units) = (file, fields, cells, cells.Faults, units);
        _known = new CsvColumns(fields);
    }

    /// <summary>Rows that hold anything.</summary>
    public List<CsvRow> Rows { get; } = [];

    /// <summary>Whether a column is in the header.</summary>
    public bool Has(string column) => _columns.Contains(column);

    /// <summary>Where the header begins.</summary>
    public SourcePlace Header { get; private set; }

    /// <summary>Reads a table; faults are unknown, doubled and missing columns, and cells outside the columns.</summary>
    /// <param name="file">The text.</param>
    /// <param name="fields">Columns the file may have.</param>
    /// <param name="mostRows">Most rows the file may have.</param>
    /// <param name="cells">Takes the faults, and knows how dates are written.</param>
    /// <param name="units">Units of numbers that say none.</param>
    public static CsvTable Read(FileText file, FieldTable fields, int mostRows, CellReader cells, UnitSystem units)
    {
        var faults = cells.Faults;
        var table = new CsvTable(file, fields, cells, units);
        var before = faults.Count;
        List<SheetRow> records =
        [
            .. (file.Rows ?? CsvText.Split(file, faults).Select((fields, index) => new SheetRow(fields, index + 1))).Where(record =>
                !record.IsBlank
            ),
        ];
        if (records.Count == 0 && faults.Count > before)
        {
            return table;
        }

        if (records.Count == 0)
        {
            faults.Add(
                new SourcePlace(file.Name, 1, 1),
                "the file is empty",
                $"begin with a line of column names: {string.Join(',', fields.Names.Take(6))}"
            );
            return table;
        }

        if (records.Count - 1 > mostRows || records[0].Fields.Count > MostColumns)
        {
            var (count, things, most) =
                records[0].Fields.Count > MostColumns
                    ? (records[0].Fields.Count, "columns", MostColumns)
                    : (records.Count - 1, "rows", mostRows);
            faults.Add(
                table.PlaceOf(records[0].Fields[0]),
                $"the file has {count.ToString(CultureInfo.InvariantCulture)} {things} and was not read",
                $"it may have up to {most.ToString(CultureInfo.InvariantCulture)}: check that it is the right file"
            );
            return table;
        }

        table.ReadHeader(records[0].Fields);
        foreach (var (record, number) in records.Skip(1))
        {
            table.AddRow(record, number);
        }

        table.SettleDates();
        return table;
    }

    /// <summary>The name of a column as it is looked up.</summary>
    public static string NameOf(string heading) =>
        string.Concat(heading.ToLowerInvariant().Select(character => character is ' ' or '-' ? '_' : character));

    private void ReadHeader(List<SheetField> header)
    {
        Header = PlaceOf(header[0]);
        foreach (var field in header)
        {
            var name = NameOf(Curly.Unwrapped(field.Text));
            _hasNoName.Add(name.Length == 0);
            _columns.Add(
                name.Length == 0 ? null
                : IsGood(field, name) ? name
                : _fields.Former.TryGetValue(name, out var former) && !header.Exists(each => NameOf(each.Text) == former.Now) ? former.Now
                : null
            );
        }

        foreach (var column in _fields.Fields.Where(field => field.IsRequired && !_columns.Contains(field.Name)))
        {
            _faults.Add(Header, $"there is no column \"{column.Name}\"", $"add a column named {column.Name} to the first line");
        }
    }

    private bool IsGood(SheetField field, string name)
    {
        if (_known[name] < 0)
        {
            var near = Spelling.Nearest(name, _fields.Names);
            _faults.Add(
                PlaceOf(field),
                $"there is no column {Words.Quote(field.Text)} in this file",
                _fields.Former.TryGetValue(name, out var former) ? former.Instead
                    : near is null ? $"the columns are {Words.List(_fields.Names)}"
                    : $"did you mean {Words.Quote(near)}"
            );
            return false;
        }

        if (_columns.Contains(name))
        {
            _faults.Add(PlaceOf(field), $"the column \"{name}\" is here a second time", "keep one of the two");
            return false;
        }

        return true;
    }

    private void SettleDates()
    {
        foreach (var field in _fields.Fields.Where(field => DateColumn.Is(field) && Has(field.Name)))
        {
            new DateColumn(_fields, field.Name, SourcePlace.Letters(_columns.IndexOf(field.Name) + 1), _cells).Settle(Rows);
        }
    }

    private void AddRow(List<SheetField> record, int number)
    {
        var row = new CsvRow(record[0].Line, _known, number);
        for (var index = 0; index < Math.Max(record.Count, _columns.Count); index++)
        {
            var field = index < record.Count ? record[index] : record[^1] with { Text = "" };
            if (index >= _columns.Count)
            {
                RefuseOutside(field, "is past the last column of the header");
            }
            else if (_columns[index] is { } column)
            {
                row.Put(new Cell(Curly.Unwrapped(field.Text), PlaceOf(field), column, _units) { IsTold = RefuseFlaw(field, column) });
            }
            else if (_hasNoName[index])
            {
                RefuseOutside(field, "stands in a column without a name");
            }
        }

        Rows.Add(row);
    }

    // Of a merged cell the first tells; here is one of the others.
    private bool RefuseFlaw(SheetField field, string column)
    {
        if (field.Flaw == CellFlaw.Error)
        {
            _faults.Add(
                PlaceOf(field),
                $"{column} is {Words.Quote(field.Text)}, the error of a formula",
                "mend the formula, or write the value"
            );
        }
        else if (field.Flaw == CellFlaw.Merged)
        {
            _faults.Add(
                PlaceOf(field),
                $"{column} is merged with another cell, and only the first of them has the value",
                "unmerge the cells and fill each of them"
            );
        }

        return field.Flaw != CellFlaw.None;
    }

    private void RefuseOutside(SheetField field, string why)
    {
        if (field.Text.Length > 0)
        {
            _faults.Add(
                PlaceOf(field),
                $"this cell {why}: {Words.Quote(field.Text)}",
                "clear it; a text that holds the separator goes in quotation marks"
            );
        }
    }

    private SourcePlace PlaceOf(SheetField field) => new(_file.Name, field.Line, field.Column);
}
