using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Folder.Logbook;

/// <summary>Reads log.csv, row by row and then as a whole: whether what it says can have happened.</summary>
internal sealed class LogReader(CellReader cells, SiteDraft site, LogNames names)
{
    /// <summary>Most rows of a log.</summary>
    public const int MostRows = 20_000;

    /// <summary>Reads the rows.</summary>
    /// <param name="table">The table.</param>
    /// <param name="scenario">Site and plan, as far as they could be read.</param>
    public ImmutableArray<LogEntry> Read(CsvTable table, Scenario scenario)
    {
        var reader = new LogRowReader(cells, site, names);
        LogRow[] rows = [.. table.Rows.Select(reader.Read)];
        if (table.Has("date") && table.Has("what"))
        {
            RefuseAlike(rows);
            CheckLedger(rows, scenario);
        }

        return [.. rows.Select(row => row.Entry)];
    }

    private void RefuseAlike(IEnumerable<LogRow> rows)
    {
        var seen = new Dictionary<LogEntry, LogRow>();
        foreach (var row in rows.Where(row => row.IsGood))
        {
            var said = row.Entry with { By = "", Entered = null, Minutes = null, Note = "", Place = default };
            if (!seen.TryAdd(said, row))
            {
                cells.Faults.Add(
                    row.At("date").Place,
                    $"this row says the same as line {seen[said].Row.Line}",
                    "delete one of them; where it was done twice, write one row for both"
                );
            }
        }
    }

    // Of a batch with a fault in one of its rows nothing more is said: what comes after may follow from it.
    private void CheckLedger(LogRow[] rows, Scenario scenario)
    {
        if (!names.IsWhole)
        {
            return;
        }

        var unsure = rows.Where(row => !row.IsGood && row.Batch is not null).Select(row => row.Batch!).ToHashSet(StringComparer.Ordinal);
        LogRow[] sure = [.. rows.Where(row => row.IsGood && (row.Batch is null || !unsure.Contains(row.Batch)))];
        foreach (var fault in BenchLedger.Of(scenario, [.. sure.Select(row => row.Entry)]).Faults)
        {
            cells.Refuse(sure[fault.Entry].At(fault.Column), fault.What, fault.Instead);
        }
    }
}
