using BenchSim.Report.Tables;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Report.Papers;

/// <summary>The work list and the nights on the table as CSV.</summary>
internal static class WorkTable
{
    /// <summary>One line a job.</summary>
    public static byte[] Work(PaperContent content)
    {
        var table = new CsvTable("week_from", "date", "job", "batch", "crop", "grower", "pieces", "unit", "hours", "detail");
        foreach (var task in content.Tasks)
        {
            table
                .Date(TableNights.MondayOf(task.On))
                .Date(task.On)
                .Text(TaskWords.Job(task.Kind))
                .Text(task.Batch.Order.Id)
                .Text(task.Batch.Crop.Name)
                .Text(task.Batch.Order.Grower)
                .Number(task.Pieces)
                .Text(task.AreFlats ? "flats" : "trays")
                .Number(task.Hours ?? double.NaN)
                .Text(TaskWords.Detail(content.Plan, task));
        }

        return table.ToBytes();
    }

    /// <summary>One line a crop, table and night.</summary>
    public static byte[] Nights(PaperContent content)
    {
        var units = content.Plan.Scenario.Units;
        var unit = units == UnitSystem.Imperial ? "f" : "c";
        double Degrees(double celsius) => UnitWords.Degrees(celsius, units);
        var table = new CsvTable(
            "week_from",
            "evening",
            "crop",
            "table",
            "trays",
            $"cold_below_{unit}",
            "years",
            "cold_years",
            "cold_share",
            $"carry_in_below_{unit}",
            "carry_in_years"
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
                    .Number(Degrees(week.Crop.HardenAboveC))
                    .Number(week.Years)
                    .Number(night.ColdYears)
                    .Number((double)night.ColdYears / week.Years)
                    .Number(Degrees(week.Crop.DamageBelowC))
                    .Number(night.DamagingYears);
            }
        }

        return table.ToBytes();
    }
}
