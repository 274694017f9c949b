using System.Collections.Immutable;
using BenchSim.Study.Sizing;

namespace BenchSim.Report.Tables;

/// <summary>
/// The CSV table of a curve: a row a number of places played, then the space without limit and every space without limit.
/// </summary>
internal static class SizeTable
{
    private static readonly ImmutableArray<Column> s_columns =
    [
        new("space", "text", "space id; `every space` in the last row"),
        new("places", "places", "places on the first day; `no limit` in the last two rows"),
        new("fits", "0 to 1", "chance that a season fits, weather holds excepted"),
        new("fits_low", "0 to 1", "lower end of its Wilson interval at the confidence"),
        new("fits_high", "0 to 1", "upper end"),
        new("plants_in_time_mean", "plants", "plants out in time in a season, mean"),
        new("late_plant_days_mean", "plant-days", "late plant-days of a season, mean"),
        new("late_plant_days_half_width", "plant-days", "half the width of the Student interval of that mean at the confidence"),
        new("goal", "0 to 1", "chance of fit asked for"),
        new("confidence", "0 to 1", "confidence asked for"),
        new("meets_goal", "yes or no", "the whole interval of the chance of fit is at or above the goal"),
        FigureColumns.Seasons,
    ];

    public static CsvTable Write(SizeResult result)
    {
        var table = new CsvTable(s_columns);
        foreach (var point in result.Curve)
        {
            Row(table, result, point, result.Space.Id, null);
        }

        Row(table, result, result.Unlimited, result.Space.Id, "no limit");
        Row(table, result, result.Everywhere, "every space", "no limit");
        return table;
    }

    private static void Row(CsvTable table, SizeResult result, SizePoint point, string space, string? word)
    {
        table.Text(space);
        _ = word is null ? table.Number(point.Places ?? 0) : table.Text(word);
        table
            .Number(point.Fits.Share)
            .Number(point.Fits.Low)
            .Number(point.Fits.High)
            .Number(point.PlantsInTime)
            .Number(point.LatePlantDays)
            .Number(point.HalfWidth)
            .Number(result.Goal.Share)
            .Number(result.Goal.Confidence)
            .Text(point.IsMet ? "yes" : "no")
            .Number(result.Seasons);
    }
}
