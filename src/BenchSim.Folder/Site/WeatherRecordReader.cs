using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Folder.Site;

/// <summary>Reads a daily weather record.</summary>
internal sealed class WeatherRecordReader(CellReader cells)
{
    // Three centuries, the span of the dates that are read.
    private const int MostDays = 110_000;

    // A file in reverse order would say so on every line.
    private const int MostRepairsShown = 20;

    /// <summary>Reads the record; null when it had a fault.</summary>
    public WeatherInput? Read(FileText file, WeatherDraft draft)
    {
        var before = cells.Faults.Count;
        var table = CsvTable.Read(file, RecordFields.Table, MostDays, cells, UnitSystem.Metric);
        var isWholeTable = RecordFields.Table.Names.All(table.Has);
        var rows = new List<WeatherRow>();
        foreach (var row in table.Rows)
        {
            if (ReadRow(row, draft) is { } day)
            {
                rows.Add(day);
            }
        }

        var days = isWholeTable && rows.Count > 0 ? Check(rows, draft, file.Name, table, cells.Faults.Count > before) : [];
        if (cells.Faults.Count == before && TemperatureUnit.Problem(days, draft.TemperatureUnits) is { } cold)
        {
            cells.Faults.Add(table.Rows[0]["tmin"].Place, cold, "write temperature_unit = \"C\" in [weather]");
        }

        if (cells.Faults.Count == before && RainUnit.Problem(days, draft.RainUnits) is { } problem)
        {
            var other = draft.RainUnits == UnitSystem.Imperial ? "mm" : "in";
            cells.Faults.Add(table.Rows[0]["rain"].Place, problem, $"write rain_unit = \"{other}\" in [weather]");
        }

        if (cells.Faults.Count > before)
        {
            return null;
        }

        return draft.Keys.Kind == WeatherKind.Generated ? Fit(days, file.Name, table, draft) : Record(days, file.Name, table, draft);
    }

    // A row with a value that had a fault stands in for its date with values that cannot have another: its day is not missing.
    private WeatherRow? ReadRow(CsvRow row, WeatherDraft draft)
    {
        var date = cells.Date(Written(row, "date"));
        var low = cells.Recorded(Written(row, "tmin") with { Units = draft.TemperatureUnits }, Quantity.Temperature);
        var high = cells.Recorded(Written(row, "tmax") with { Units = draft.TemperatureUnits }, Quantity.Temperature);
        var rain = cells.Recorded(Written(row, "rain") with { Units = draft.RainUnits }, Quantity.Rain);
        return date is null
            ? null
            : new WeatherRow(row.Line, date.Value, low ?? high ?? 0, high ?? low ?? 0, rain ?? 0)
            {
                DateColumn = row["date"].Place.Column,
                TminColumn = row["tmin"].Place.Column,
                TmaxColumn = row["tmax"].Place.Column,
                RainColumn = row["rain"].Place.Column,
            };
    }

    // What is mended is said, but not while other faults may be the reason.
    private ImmutableArray<DailyWeather> Check(List<WeatherRow> rows, WeatherDraft draft, string name, CsvTable table, bool hasFaults)
    {
        var findings = WeatherRecordCheck.Check(
            rows,
            name,
            "write temperature_unit = \"F\" in [weather], or degrees Celsius",
            draft.TemperatureUnits,
            draft.RainUnits
        );
        foreach (var fault in findings.Faults)
        {
            cells.Faults.Add(fault.Place, fault.What, fault.Instead);
        }

        if (!hasFaults)
        {
            foreach (var repair in findings.Repairs.Take(MostRepairsShown))
            {
                cells.Faults.Warn(repair.Place, repair.What, repair.Instead);
            }

            if (findings.Repairs.Length > MostRepairsShown)
            {
                cells.Faults.Warn(
                    table.Header,
                    $"{findings.Repairs.Length} things in this record were mended, and the first {MostRepairsShown} are shown",
                    "look through the dates of the record"
                );
            }
        }

        return findings.Days;
    }

    private RecordedWeather? Record(ImmutableArray<DailyWeather> days, string name, CsvTable table, WeatherDraft draft) =>
        HasYears(table, days, draft) ? new RecordedWeather(days, draft.Keys.Year, name) { Written = draft.Keys } : null;

    private GeneratedWeather? Fit(ImmutableArray<DailyWeather> days, string name, CsvTable table, WeatherDraft draft)
    {
        if (WeatherFit.WhyNot(days) is { } reason)
        {
            cells.Faults.Add(
                table.Header,
                $"no weather can be made after this record: {reason}",
                "give whole years, ten or more if you can"
            );
            return null;
        }

        var fitted = WeatherFit.Fit(days, $"the daily record {name}");
        if (fitted.Years < WeatherFitReport.ShortRecordYears)
        {
            cells.Faults.Warn(
                draft.File.Place,
                $"the record has {fitted.Years.ToString("0.0", CultureInfo.InvariantCulture)} years of days, "
                    + "and a cold spring that comes once in ten years may not be in it",
                "give ten years or more if you can; with fewer, chances of frost may be off either way"
            );
        }

        return new GeneratedWeather(fitted.Model, fitted) { Written = draft.Keys };
    }

    private Cell Written(CsvRow row, string column)
    {
        var cell = row[column];
        if (cell.IsBlank && row.Has(column))
        {
            cells.Refuse(cell, "is empty", RecordFields.Table.Find(column)!.Example);
        }

        return cell;
    }

    private bool HasYears(CsvTable table, ImmutableArray<DailyWeather> days, WeatherDraft draft)
    {
        var whole = days.GroupBy(day => day.Date.Year)
            .Where(year => year.Count() == (DateTime.IsLeapYear(year.Key) ? 366 : 365))
            .Select(year => year.Key)
            .ToImmutableArray();
        if (draft.Keys.Year is { } year && !whole.Contains(year))
        {
            var years = whole.Length == 0 ? "none" : Words.List([.. whole.Select(each => $"{each}")]);
            cells.Refuse(
                draft.YearCell,
                $"is {year}, which the record does not hold from January to December",
                $"the whole years in it are: {years}"
            );
            return false;
        }

        if (whole.Length == 0)
        {
            cells.Faults.Add(
                table.Header,
                "the record holds no whole calendar year",
                "give at least one year from 1 January to 31 December"
            );
            return false;
        }

        return true;
    }
}
