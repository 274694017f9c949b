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
    // Three centuries, the span of the dates that are read.
    private const int MostDays = 110_000;

    /// <summary>Reads the record; null when it had a fault.</summary>
    public RecordedWeather? Read(FileText file, WeatherDraft draft)
    {
        var before = cells.Faults.Count;
        var columns = FolderReference.ColumnsOf(FolderReference.WeatherRecord);
        var table = CsvTable.Read(file, columns, columns, MostDays, cells.Faults, UnitSystem.Metric);
        var days = new List<DailyWeather>();
        CsvRow? last = null;
        DateOnly? lastDate = null;
        foreach (var row in table.Rows)
        {
            var date = cells.Date(Written(row, "date"));
            if (date is not null && lastDate is not null && date != lastDate.Value.AddDays(1))
            {
                cells.Refuse(
                    row["date"],
                    $"is {Words.Date(date.Value)} and follows {Words.Date(lastDate.Value)} on line {last!.Line}",
                    "a record has every day once, in order");
            }

            (last, lastDate) = (row, date);
            if (ReadDay(row, date, draft) is { } day)
            {
                days.Add(day);
            }
        }

        if (cells.Faults.Count == before)
        {
            CheckYears(table, days, draft);
        }

        return cells.Faults.Count == before ? new RecordedWeather([.. days], draft.Year, file.Name) : null;
    }

    private DailyWeather? ReadDay(CsvRow row, DateOnly? date, WeatherDraft draft)
    {
        var low = cells.Temperature(Written(row, "tmin") with { Units = draft.TemperatureUnits });
        var highCell = Written(row, "tmax") with { Units = draft.TemperatureUnits };
        var high = cells.Temperature(highCell);
        var rain = cells.Rain(Written(row, "rain") with { Units = draft.RainUnits });
        if (high < low)
        {
            cells.Refuse(
                highCell,
                $"is {Words.Quote(highCell.Text)}, below tmin",
                "write the lowest temperature in tmin and the highest in tmax");
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

    private void CheckYears(CsvTable table, List<DailyWeather> days, WeatherDraft draft)
    {
        var whole = days.GroupBy(day => day.Date.Year).Where(year => year.Count() == (DateTime.IsLeapYear(year.Key) ? 366 : 365)).Select(year => year.Key).ToImmutableArray();
        if (draft.Year is { } year && !whole.Contains(year))
        {
            var years = whole.Length == 0 ? "none" : Words.List([.. whole.Select(each => $"{each}")]);
            cells.Refuse(
                draft.YearCell,
                $"is {year}, which the record does not hold from January to December",
                $"the whole years in it are: {years}");
        }
        else if (whole.Length == 0)
        {
            cells.Faults.Add(
                table.Header,
                "the record holds no whole calendar year",
                "give at least one year from 1 January to 31 December");
        }
    }
}
