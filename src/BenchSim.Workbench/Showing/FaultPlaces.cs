using System.Collections.Immutable;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Showing;

/// <summary>A fault, with the cell or the field it belongs to where it has one.</summary>
/// <param name="File">File.</param>
/// <param name="Line">Line; 0 for the file as a whole.</param>
/// <param name="Column">Column; 0 for the line as a whole.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Instead">What would be right.</param>
/// <param name="Row">Row of a table, from 0; null for none.</param>
/// <param name="Cell">Column of a table; null for the row as a whole.</param>
/// <param name="Section">Section of site.toml; null for none.</param>
/// <param name="Entry">Number of its entry.</param>
/// <param name="Key">Key; null for the section as a whole.</param>
internal sealed record FaultDocument(
    string File,
    int Line,
    int Column,
    string What,
    string Instead,
    int? Row,
    string? Cell,
    string? Section,
    int? Entry,
    string? Key
);

/// <summary>Finds the cells and fields that faults belong to.</summary>
/// <param name="texts">The texts that were read.</param>
/// <param name="workbook">The table of a workbook by the name of its file; null where there is none.</param>
internal sealed class FaultPlaces(ImmutableSortedDictionary<string, string> texts, Func<string, CsvOutline?> workbook)
{
    private readonly Dictionary<string, CsvOutline?> _tables = new(StringComparer.Ordinal);
    private TomlOutline? _site;

    /// <summary>The sections of site.toml.</summary>
    public TomlOutline Site => _site ??= TomlOutline.Of(texts.Of(FileNames.Site) ?? "");

    /// <summary>A fault with its cell or field.</summary>
    public FaultDocument Of(Fault fault)
    {
        var place = fault.Place;
        var cell = TableOf(place.File)?.Find(place);
        var field = place.File is FileNames.Site ? Site.Find(place) : null;
        return new FaultDocument(
            place.File,
            place.Line,
            place.Column,
            fault.What,
            fault.Instead,
            cell?.Row,
            cell?.Column,
            field?.Part.Section,
            field?.Part.Entry,
            field?.Key
        );
    }

    /// <summary>The row of the plan that a place means; -1 for none.</summary>
    public int RowOf(SourcePlace place) => TableOf(place.File)?.Find(place)?.Row ?? -1;

    /// <summary>What is written in a column of the row that a place means; nothing where there is no such cell.</summary>
    public string CellOf(SourcePlace place, string column) =>
        TableOf(place.File) is { } table && RowOf(place) is >= 0 and var row && table.Columns.IndexOf(column) is >= 0 and var at
            ? table.Rows[row][at]
            : "";

    private CsvOutline? TableOf(string file)
    {
        if (_tables.TryGetValue(file, out var table))
        {
            return table;
        }

        foreach (var name in FileNames.Tables.Where(name => FileNames.WorkbookOf(name) == file || name == file))
        {
            table =
                name != file ? workbook(file)
                : texts.Of(file) is { } text ? CsvOutline.Of(text)
                : null;
        }

        _tables.Add(file, table);
        return table;
    }
}
