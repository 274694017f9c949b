using System.Collections.Immutable;
using BenchSim.Report.Tables;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Report.Papers;

/// <summary>The work list and the nights on the table as CSV.</summary>
internal static class WorkTable
{
    private static readonly ImmutableArray<Column> s_work =
    [
        new("week_from", "date", "Monday of the week"),
        new("date", "date", "planned date"),
        new("job", "text", "what is done"),
        new("batch", "text", "batch id"),
        new("crop", "text", "crop"),
        new("variety", "text", "variety; blank where the plan names none"),
        new("grower", "text", "grower"),
        new("pieces", "see unit", "how many trays or flats"),
        new("unit", "text", "trays or flats"),
        new("hours", "hours", "work; blank where the site gives no time for it"),
        new("detail", "text", "from where to where, and how"),
    ];

    /// <summary>One line a job.</summary>
    public static CsvTable Work(PaperContent content)
    {
        var table = new CsvTable(s_work);
        foreach (var task in content.Tasks)
        {
            table
                .Date(TableNights.MondayOf(task.On))
                .Date(task.On)
                .Text(TaskWords.Job(task.Kind))
                .Text(task.Batch.Order.Id)
                .Text(task.Batch.Crop.Name)
                .Text(task.Batch.Order.Variety)
                .Text(task.Batch.Order.Grower)
                .Number(task.Pieces)
                .Text(task.AreFlats ? "flats" : "trays")
                .Number(task.Hours ?? double.NaN)
                .Text(TaskWords.Detail(content.Plan, task));
        }

        return table;
    }

    /// <summary>One line a crop, table and night.</summary>
    public static CsvTable Nights(PaperContent content)
    {
        var units = content.Plan.Scenario.Units;
        var unit = units == UnitSystem.Imperial ? "f" : "c";
        var degrees = unit.ToUpperInvariant();
        double Degrees(double celsius) => UnitWords.Degrees(celsius, units);
        var table = new CsvTable(
            new("week_from", "date", "Monday of the week"),
            new("evening", "date", "evening; the night after it is the next day's lowest"),
            new("crop", "text", "crop"),
            new("table", "text", "hardening table"),
            new("trays", "trays", "trays of the crop that stand there"),
            new($"cold_below_{unit}", degrees, "trays are covered when the night is colder"),
            new("years", "years", "years of weather counted"),
            new("cold_years", "years", "years in which the night is colder than cold_below"),
            new("cold_share", "0 to 1", "share of the years"),
            new($"carry_in_below_{unit}", degrees, "trays are carried in when it is colder under the cover"),
            new("carry_in_years", "years", "years in which the night is so cold, under the cover, that trays are carried in")
        );
        foreach (var week in content.Nights)
        {
            foreach (var night in week.Nights)
            {
                table
                    .Date(week.Monday)
                    .Date(night.On)
                    .Text(week.Crop.Name)
                    .Text(week.Table.Name)
                    .Number(night.Trays)
                    .Number(Degrees(week.Crop.TableAboveC))
                    .Number(week.Years)
                    .Number(night.ColdYears)
                    .Number((double)night.ColdYears / week.Years)
                    .Number(Degrees(week.Crop.DamageBelowC))
                    .Number(night.DamagingYears);
            }
        }

        return table;
    }
}
