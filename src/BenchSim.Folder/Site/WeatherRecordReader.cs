using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Site;

/// <summary>Reads a daily weather record.</summary>
internal sealed class WeatherRecordReader(CellReader cells)
{
    /// <summary>Reads the record; null when it had a fault.</summary>
    public RecordedWeather? Read(FileText file, WeatherDraft draft)
    {
        var before = cells.Faults.Count;
        var columns = FolderReference.ColumnsOf(FolderReference.WeatherRecord);
        var table = CsvTable.Read(file, columns, columns, cells.Faults, UnitSystem.Metric);
        var days = new List<DailyWeather>();
        var lastLine = 0;
        foreach (var row in table.Rows)
        {
            if (ReadDay(row, draft) is { } day)
            {
                CheckOrder(row, days, day, lastLine);
                days.Add(day);
                lastLine = row.Line;
            }
        }

        if (cells.Faults.Count == before)
        {
            CheckYears(table, days, draft);
        }

        return cells.Faults.Count == before ? new RecordedWeather([.. days], draft.Year, file.Name) : null;
    }

    private DailyWeather? ReadDay(CsvRow row, WeatherDraft draft)
    {
        var date = cells.Date(Written(row, "date"));
        var low = cells.Temperature(Written(row, "tmin") with { Units = draft.TemperatureUnits });
        var highCell = Written(row, "tmax") with { Units = draft.TemperatureUnits };
        var high = cells.Temperature(highCell);
        var rain = cells.Rain(Written(row, "rain") with { Units = draft.RainUnits });
        if (high < low)
        {
            cells.Refuse(highCell, $"is {Words.Quote(highCell.Text)}, below tmin", "write the lowest temperature in tmin and the highest in tmax");
            return null;
        }

        return date is null || low is null || high is null || rain is null ? null : new DailyWeather(date.Value, low.Value, high.Value, rain.Value);
    }

    private Cell Written(CsvRow row, string column)
    {
        var cell = row[column];
        if (cell.IsBlank && row.Has(column))
        {
            cells.Refuse(cell, "is empty", "fill in every day of the record");
        }

        return cell;
    }

    private void CheckOrder(CsvRow row, List<DailyWeather> days, DailyWeather day, int lastLine)
    {
        if (days.Count == 0 || day.Date == days[^1].Date.AddDays(1))
        {
            return;
        }

        var after = $"follows {Words.Date(days[^1].Date)} on line {lastLine}";
        cells.Refuse(row["date"], $"is {Words.Date(day.Date)} and {after}", "a record has every day once, in order");
    }

    private void CheckYears(CsvTable table, List<DailyWeather> days, WeatherDraft draft)
    {
        var whole = days.GroupBy(day => day.Date.Year).Where(year => year.Count() == (DateTime.IsLeapYear(year.Key) ? 366 : 365)).Select(year => year.Key).ToImmutableArray();
        if (draft.Year is { } year && !whole.Contains(year))
        {
            var years = whole.Length == 0 ? "none" : Words.List([.. whole.Select(each => $"{each}")]);
            cells.Refuse(draft.YearCell, $"is {year}, which the record does not hold from January to December", $"the whole years in it are: {years}");
        }
        else if (whole.Length == 0)
        {
            cells.Faults.Add(table.Header, "the record holds no whole calendar year", "give at least one year from 1 January to 31 December");
        }
    }
}
