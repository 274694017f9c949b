using BenchSim.Folder.Csv;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Logbook;

/// <summary>A row of log.csv after reading.</summary>
/// <param name="Row">The row.</param>
/// <param name="Entry">What it says. What had a fault is as if it were not written.</param>
internal sealed record LogRow(CsvRow Row, LogEntry Entry)
{
    /// <summary>Whether it had no fault.</summary>
    public bool IsGood { get; init; }

    /// <summary>The batch that it is of, or that is probably meant; null for none.</summary>
    public string? Batch { get; init; }

    /// <summary>The cell of a column; where the file has no such column, a blank one at the start of the row.</summary>
    public Cell At(string column)
    {
        var cell = Row[column];
        return cell.Place.File is null ? cell with { Place = Row.Cells.FirstOrDefault().Place } : cell;
    }
}
