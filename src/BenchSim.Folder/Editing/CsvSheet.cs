using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Sheets;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Editing;

/// <summary>A CSV text with the places of its fields, blank rows left out.</summary>
internal sealed class CsvSheet
{
    private const string Mark = "\uFEFF";

    private readonly FaultList _faults = new();

    /// <summary>Splits a text.</summary>
    public CsvSheet(string text)
    {
        Front = text.StartsWith(Mark, StringComparison.Ordinal) ? Mark : "";
        Body = text[Front.Length..];
        Records = CsvText.Split(new FileText("", Body), _faults);
        Records.RemoveAll(record => record.TrueForAll(field => field.Text.Length == 0));
        Names = Records.Count == 0 ? [] : [.. Records[0].Select(field => CsvTable.NameOf(field.Text))];
    }

    /// <summary>The byte order mark, or nothing.</summary>
    public string Front { get; }

    /// <summary>The text behind it.</summary>
    public string Body { get; }

    /// <summary>The column names and the rows below them.</summary>
    public List<List<SheetField>> Records { get; }

    /// <summary>The column names as they are read.</summary>
    public List<string> Names { get; }

    /// <summary>The first fault; null where there is none.</summary>
    public Fault? Fault => _faults.Count > 0 ? _faults.Faults[0] : null;

    /// <summary>What separates the columns.</summary>
    public char Separator => Records[0].Count > 1 ? Body[Records[0][0].End] : ',';

    /// <summary>What ends the first line that is not blank.</summary>
    public string LineEnd =>
        Body.AsSpan(Records[0][^1].End) switch
        {
            ['\r', '\n', ..] => "\r\n",
            ['\r', ..] => "\r",
            _ => "\n",
        };

    /// <summary>How many rows there are below the column names.</summary>
    public int Rows => Math.Max(0, Records.Count - 1);

    /// <summary>A row, from 0; null where there is none.</summary>
    public List<SheetField>? Row(int row) => row >= 0 && row < Rows ? Records[row + 1] : null;

    /// <summary>The text of a cell as it is read; empty where the row stops early, null where there is no such row or column.</summary>
    public string? Cell(int row, string column)
    {
        var (record, at) = (Row(row), Names.IndexOf(column));
        return record is null || at < 0 ? null
            : at < record.Count ? record[at].Text
            : "";
    }

    /// <summary>Where the line begins in which a row begins.</summary>
    public int LineStart(List<SheetField> record) => Body.AsSpan(0, record[0].Start).LastIndexOfAny('\r', '\n') + 1;

    /// <summary>Where the line behind a row begins.</summary>
    public int NextLine(List<SheetField> record)
    {
        var end = record[^1].End;
        return end == Body.Length ? end
            : Body.AsSpan(end).StartsWith("\r\n", StringComparison.Ordinal) ? end + 2
            : end + 1;
    }
}
