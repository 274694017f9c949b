using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Weather;

/// <summary>
/// Checks the rows of a daily weather file: every fault in one pass, and what is mended is said. Faults: values no weather can have,
/// highest below lowest, Fahrenheit under the name of Celsius, two different rows of one date, gaps longer than three days. Mended and
/// said: rows out of order, the same row twice, gaps of up to three days (a missing 29 February among them).
/// </summary>
public static class WeatherRecordCheck
{
    /// <summary>Longest gap that is filled, days.</summary>
    public const int LongestFilledGap = 3;

    /// <summary>Highest air temperature recognised by the World Meteorological Organization, 56.7 C (1913), rounded up.</summary>
    public const double HottestC = 57;

    /// <summary>Lowest air temperature recognised by the World Meteorological Organization, -89.2 C (1983), rounded down.</summary>
    public const double ColdestC = -90;

    /// <summary>Most rain of a day recognised by the World Meteorological Organization, 1,825 mm (1966).</summary>
    public const double MostRainMm = 1825;

    /// <summary>No place on earth has a year's mean temperature above 35 C; a record whose days average more than this is in
    /// Fahrenheit.</summary>
    public const double HottestMeanC = 40;

    /// <summary>Checks the rows.</summary>
    /// <param name="rows">Rows in the order of the file.</param>
    /// <param name="file">Name of the file, for the places of faults.</param>
    /// <param name="ofFahrenheit">What would be right where the temperatures look like Fahrenheit: how a unit is stated in this
    /// file.</param>
    /// <param name="temperature">Units in which the file writes temperatures; faults are told in them.</param>
    /// <param name="rain">Units in which the file writes rain.</param>
    public static WeatherRecordFindings Check(
        IReadOnlyList<WeatherRow> rows,
        string file,
        string ofFahrenheit = "degrees Celsius, or the unit F stated in the column's name",
        UnitSystem temperature = UnitSystem.Metric,
        UnitSystem rain = UnitSystem.Metric
    )
    {
        ArgumentNullException.ThrowIfNull(rows);
        var faults = new List<Fault>();
        var repairs = new List<Fault>();
        if (rows.Count == 0)
        {
            faults.Add(new Fault(new SourcePlace(file, 0, 0), "there is no day in the file", "one row a day, a year or more"));
        }

        var valued = CheckValues(rows, new RecordFile(file, temperature, rain), ofFahrenheit, faults);
        var ordered = Order(valued, file, repairs);
        var single = DropRepeats(ordered, file, faults, repairs);
        var refused = rows.Select(row => row.Date).Except(single.Select(row => row.Date)).ToHashSet();
        var days = FillGaps(single, refused, file, faults, repairs);
        return new WeatherRecordFindings(days, ByLine(faults), ByLine(repairs));
    }

    private static ImmutableArray<Fault> ByLine(List<Fault> faults) =>
        [.. faults.OrderBy(fault => fault.Place.Line).ThenBy(fault => fault.Place.Column)];

    private static List<WeatherRow> CheckValues(IReadOnlyList<WeatherRow> rows, RecordFile record, string ofFahrenheit, List<Fault> faults)
    {
        var crossed = rows.Count(row => row.TminC > row.TmaxC);
        var columnsCrossed = crossed * 2 > rows.Count;
        var fahrenheit = record.Temperature == UnitSystem.Metric && LooksFahrenheit(rows, columnsCrossed);
        if (columnsCrossed)
        {
            faults.Add(
                new Fault(
                    new SourcePlace(record.Name, rows[0].Line, rows[0].TminColumn),
                    $"the lowest temperature is above the highest in {crossed} of {rows.Count} rows",
                    "the two columns are exchanged: name the lower one tmin and the higher one tmax"
                )
            );
        }

        if (fahrenheit)
        {
            faults.Add(
                new Fault(
                    new SourcePlace(record.Name, rows[0].Line, rows[0].TminColumn),
                    "the temperatures are too high for degrees Celsius and look like Fahrenheit",
                    ofFahrenheit
                )
            );
        }

        var good = new List<WeatherRow>(rows.Count);
        foreach (var row in rows)
        {
            var before = faults.Count;
            CheckRow(row, record, columnsCrossed, fahrenheit, faults);
            if (faults.Count == before && !columnsCrossed && !fahrenheit)
            {
                good.Add(row);
            }
        }

        return good;
    }

    private static bool LooksFahrenheit(IReadOnlyList<WeatherRow> rows, bool columnsCrossed)
    {
        var numbers = rows.Where(row => double.IsFinite(row.TminC) && double.IsFinite(row.TmaxC)).ToList();
        if (numbers.Count == 0)
        {
            return false;
        }

        var tooHot = numbers.Count(row => Math.Max(row.TminC, row.TmaxC) > HottestC);
        var lowest = numbers.Min(row => columnsCrossed ? row.TmaxC : row.TminC);

        // One mistyped row is a fault of that row; one row in twenty, or a mean no place has, is a wrong unit.
        return (tooHot * 20 >= numbers.Count && lowest > ColdestC) || numbers.Average(row => (row.TminC + row.TmaxC) / 2) > HottestMeanC;
    }

    private static void CheckRow(in WeatherRow row, RecordFile record, bool columnsCrossed, bool fahrenheit, List<Fault> faults)
    {
        var line = row.Line;
        CheckTemperature(row.TminC, row.TminColumn, "lowest");
        CheckTemperature(row.TmaxC, row.TmaxColumn, "highest");
        if (row.TminC > row.TmaxC && !columnsCrossed)
        {
            faults.Add(
                new Fault(
                    new SourcePlace(record.Name, line, row.TminColumn),
                    $"the lowest temperature {record.Degrees(row.TminC)} is above the highest {record.Degrees(row.TmaxC)}",
                    "the lowest first; exchange the two if they are swapped"
                )
            );
        }

        if (!(row.RainMm is >= 0 and <= MostRainMm))
        {
            faults.Add(
                new Fault(
                    new SourcePlace(record.Name, line, row.RainColumn),
                    $"a day's rain of {record.Depth(row.RainMm)} is not possible",
                    $"0 or more, at most {record.Depth(MostRainMm)}"
                )
            );
        }

        void CheckTemperature(double value, int column, string which)
        {
            if (!fahrenheit && !(value is >= ColdestC and <= HottestC))
            {
                faults.Add(
                    new Fault(
                        new SourcePlace(record.Name, line, column),
                        $"a {which} temperature of {record.Degrees(value)} has never been measured on earth",
                        $"between {record.Degrees(ColdestC)} and {record.Degrees(HottestC)}"
                    )
                );
            }
        }
    }

    private static List<WeatherRow> Order(List<WeatherRow> rows, string file, List<Fault> repairs)
    {
        var latest = 0;
        for (var i = 1; i < rows.Count; i++)
        {
            if (rows[i].Date < rows[latest].Date)
            {
                repairs.Add(
                    new Fault(
                        new SourcePlace(file, rows[i].Line, rows[i].DateColumn),
                        $"{rows[i].Date:yyyy-MM-dd} comes after {rows[latest].Date:yyyy-MM-dd} in the file",
                        "the rows were put in order of date"
                    )
                );
            }
            else
            {
                latest = i;
            }
        }

        // OrderBy keeps the order of the file among equal dates.
        return [.. rows.OrderBy(row => row.Date)];
    }

    private static List<WeatherRow> DropRepeats(List<WeatherRow> rows, string file, List<Fault> faults, List<Fault> repairs)
    {
        var single = new List<WeatherRow>(rows.Count);
        foreach (var row in rows)
        {
            if (single.Count == 0 || single[^1].Date != row.Date)
            {
                single.Add(row);
                continue;
            }

            var kept = single[^1];
            var place = new SourcePlace(file, row.Line, row.DateColumn);
            if ((kept.TminC, kept.TmaxC, kept.RainMm) == (row.TminC, row.TmaxC, row.RainMm))
            {
                repairs.Add(
                    new Fault(
                        place,
                        $"{row.Date:yyyy-MM-dd} is in line {kept.Line} too, with the same values",
                        "the second row was left out"
                    )
                );
            }
            else
            {
                faults.Add(new Fault(place, $"{row.Date:yyyy-MM-dd} is in line {kept.Line} too, with other values", "one row a date"));
            }
        }

        return single;
    }

    private static ImmutableArray<DailyWeather> FillGaps(
        List<WeatherRow> rows,
        HashSet<DateOnly> refused,
        string file,
        List<Fault> faults,
        List<Fault> repairs
    )
    {
        var days = ImmutableArray.CreateBuilder<DailyWeather>(rows.Count);
        for (var i = 0; i < rows.Count; i++)
        {
            if (i > 0 && !AllRefused(rows[i - 1].Date, rows[i].Date, refused))
            {
                Bridge(rows[i - 1], rows[i], file, days, faults, repairs);
            }

            days.Add(new DailyWeather(rows[i].Date, rows[i].TminC, rows[i].TmaxC, rows[i].RainMm));
        }

        return days.ToImmutable();
    }

    // Days between whose rows are in the file and were refused have their fault already.
    private static bool AllRefused(DateOnly before, DateOnly after, HashSet<DateOnly> refused)
    {
        for (var date = before.AddDays(1); date < after; date = date.AddDays(1))
        {
            if (!refused.Contains(date))
            {
                return false;
            }
        }

        return true;
    }

    private static void Bridge(
        in WeatherRow before,
        in WeatherRow after,
        string file,
        ImmutableArray<DailyWeather>.Builder days,
        List<Fault> faults,
        List<Fault> repairs
    )
    {
        var missing = after.Date.DayNumber - before.Date.DayNumber - 1;
        if (missing == 0)
        {
            return;
        }

        var first = before.Date.AddDays(1);
        var last = after.Date.AddDays(-1);
        var which =
            missing == 1 ? $"{first:yyyy-MM-dd} is missing" : $"{missing} days are missing, {first:yyyy-MM-dd} to {last:yyyy-MM-dd}";
        var place = new SourcePlace(file, after.Line, after.DateColumn);
        if (missing > LongestFilledGap)
        {
            faults.Add(new Fault(place, which, $"a row for each day; gaps of up to {LongestFilledGap} days are filled"));
            return;
        }

        for (var day = 1; day <= missing; day++)
        {
            var share = (double)day / (missing + 1);
            days.Add(
                new DailyWeather(
                    before.Date.AddDays(day),
                    before.TminC + (share * (after.TminC - before.TminC)),
                    before.TmaxC + (share * (after.TmaxC - before.TmaxC)),
                    before.RainMm + (share * (after.RainMm - before.RainMm))
                )
            );
        }

        repairs.Add(new Fault(place, which, "filled on a straight line between the days before and after"));
    }

    private readonly record struct RecordFile(string Name, UnitSystem Temperature, UnitSystem Rain)
    {
        public string Degrees(double celsius) =>
            Temperature == UnitSystem.Imperial ? $"{(celsius * 1.8) + 32:0.##} F" : $"{celsius:0.##} C";

        public string Depth(double millimetres) => Rain == UnitSystem.Imperial ? $"{millimetres / 25.4:0.##} in" : $"{millimetres:0.##} mm";
    }
}
