using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Folder;

/// <summary>A daily weather record that stands alone, with the columns date, tmin, tmax and rain.</summary>
public static class WeatherFile
{
    // Three centuries, the span of the dates that are read.
    private const int MostDays = 110_000;

    /// <summary>Reads and checks a record: every fault in one pass, and what was put right is said.</summary>
    /// <param name="path">The file. Faults name it as it is written here.</param>
    /// <param name="temperature">Units of temperatures that say none.</param>
    /// <param name="rain">Units of rain that says none.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    public static WeatherRecordFindings Read(string path, UnitSystem temperature, UnitSystem rain)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var faults = new FaultList();
        if (LoneFile.Read(path, "name the CSV file of the weather record itself", faults) is not { } file)
        {
            return new WeatherRecordFindings([], faults.Faults, []);
        }

        var cells = new CellReader(faults) { TakesDateOrder = false };
        var table = CsvTable.Read(file, RecordFields.Table, MostDays, cells, UnitSystem.Metric);
        if (faults.Count > 0 && (table.Rows.Count == 0 || !RecordFields.Table.Names.All(table.Has)))
        {
            return new WeatherRecordFindings([], faults.Faults, []);
        }

        var rows = new List<WeatherRow>(table.Rows.Count);
        foreach (var row in table.Rows)
        {
            if (ReadDay(row, cells, temperature, rain) is { } day)
            {
                rows.Add(day);
            }
        }

        var findings = Merge(
            faults,
            WeatherRecordCheck.Check(rows, file.Name, "give --temperature-unit F, or degrees Celsius", temperature, rain),
            allDated: rows.Count == table.Rows.Count,
            table
        );
        if (!findings.Faults.IsEmpty)
        {
            return findings;
        }

        if (TemperatureUnit.Problem(findings.Days, temperature) is { } cold)
        {
            faults.Add(table.Rows[0]["tmin"].Place, cold, "give --temperature-unit C");
        }

        if (RainUnit.Problem(findings.Days, rain) is { } problem)
        {
            faults.Add(table.Rows[0]["rain"].Place, problem, $"give --rain-unit {(rain == UnitSystem.Imperial ? "mm" : "in")}");
        }

        return findings with
        {
            Faults = faults.Faults,
        };
    }

    // A value that cannot be read is not a number here; its fault is already known.
    private static WeatherRow? ReadDay(CsvRow row, CellReader cells, UnitSystem temperature, UnitSystem rain)
    {
        var date = Written(row, "date", cells);
        var day = cells.Date(date);
        var low = cells.Recorded(Written(row, "tmin", cells) with { Units = temperature }, Quantity.Temperature);
        var high = cells.Recorded(Written(row, "tmax", cells) with { Units = temperature }, Quantity.Temperature);
        var depth = cells.Recorded(Written(row, "rain", cells) with { Units = rain }, Quantity.Rain);
        return day is not { } known
            ? null
            : new WeatherRow(row.Line, known, low ?? double.NaN, high ?? double.NaN, depth ?? double.NaN)
            {
                DateColumn = date.Place.Column,
                TminColumn = row["tmin"].Place.Column,
                TmaxColumn = row["tmax"].Place.Column,
                RainColumn = row["rain"].Place.Column,
            };
    }

    private static Cell Written(CsvRow row, string column, CellReader cells)
    {
        var cell = row[column];
        if (cell.IsBlank)
        {
            cells.Refuse(cell, "is empty", "fill in every day of the record, or leave the whole row out");
        }

        return cell;
    }

    // Each cell has one fault, the first found. Days whose date cannot be read are not missing, so nothing is said of gaps then.
    private static WeatherRecordFindings Merge(FaultList faults, WeatherRecordFindings findings, bool allDated, CsvTable table)
    {
        var known = faults.Faults.Select(fault => fault.Place).ToHashSet();
        var dates = table.Rows.Select(row => row["date"].Place).ToHashSet();
        foreach (
            var fault in findings.Faults.Where(fault =>
                !known.Contains(fault.Place) && (allDated || (fault.Place.Line > 0 && !dates.Contains(fault.Place)))
            )
        )
        {
            faults.Add(fault.Place, fault.What, fault.Instead);
        }

        return findings with
        {
            Faults = faults.Faults,
        };
    }
}
