using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Folder.Site;

/// <summary>Reads days that were observed or are forecast: each must be good by itself, and days may be missing.</summary>
internal sealed class SeenWeatherReader(CellReader cells, UnitSystem temperature, UnitSystem rain)
{
    private const int MostDays = 10_000;

    /// <summary>Reads a file; the days in order.</summary>
    public ImmutableArray<DailyWeather> Read(FileText file)
    {
        var table = CsvTable.Read(file, RecordFields.Table, MostDays, cells, UnitSystem.Metric);
        var seen = new Dictionary<DateOnly, int>();
        var days = new List<DailyWeather>();
        foreach (var row in table.Rows)
        {
            if (ReadDay(row) is not { } day)
            {
                continue;
            }

            if (!seen.TryAdd(day.Date, row.Line))
            {
                cells.Refuse(row["date"], $"{Words.Date(day.Date)} is on line {seen[day.Date]} already", "keep one row for a day");
                continue;
            }

            days.Add(day);
        }

        return [.. days.OrderBy(day => day.Date)];
    }

    private DailyWeather? ReadDay(CsvRow row)
    {
        var before = cells.Faults.Count;
        var date = cells.Date(Written(row, "date"));
        var low = cells.Temperature(Written(row, "tmin") with { Units = temperature });
        var high = cells.Temperature(Written(row, "tmax") with { Units = temperature });
        var depth = cells.Measured(Written(row, "rain") with { Units = rain }, Quantity.Rain, 0, WeatherRecordCheck.MostRainMm);
        if (low > high)
        {
            cells.Refuse(
                row["tmin"],
                $"is {Words.Quote(row["tmin"].Text)}, above tmax",
                "write the lowest in tmin and the highest in tmax"
            );
        }

        return cells.Faults.Count > before || date is null || low is null || high is null || depth is null
            ? null
            : new DailyWeather(date.Value, low.Value, high.Value, depth.Value);
    }

    private Cell Written(CsvRow row, string column)
    {
        var cell = row[column];
        if (cell.IsBlank && row.Has(column))
        {
            cells.Refuse(cell, "is empty", "fill it in, or leave the whole row out");
        }

        return cell;
    }
}
