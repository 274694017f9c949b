using BenchSim.Study.Sizing;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of a curve: a row a number of places played, then the space without limit and every space without limit.</summary>
internal static class SizeTable
{
    public static byte[] Write(SizeResult result)
    {
        var table = new CsvTable(
            "space",
            "places",
            "fits",
            "fits_low",
            "fits_high",
            "late_plant_days_mean",
            "late_plant_days_half_width",
            "goal",
            "confidence",
            "meets_goal",
            "seasons"
        );
        foreach (var point in result.Curve)
        {
            Row(table, result, point, result.Space.Id, null);
        }

        Row(table, result, result.Unlimited, result.Space.Id, "no limit");
        Row(table, result, result.Everywhere, "every space", "no limit");
        return table.ToBytes();
    }

    private static void Row(CsvTable table, SizeResult result, SizePoint point, string space, string? word)
    {
        table.Text(space);
        _ = word is null ? table.Number(point.Places ?? 0) : table.Text(word);
        table
            .Number(point.Fits.Share)
            .Number(point.Fits.Low)
            .Number(point.Fits.High)
            .Number(point.LatePlantDays)
            .Number(point.HalfWidth)
            .Number(result.Goal.Share)
            .Number(result.Goal.Confidence)
            .Text(point.IsMet ? "yes" : "no")
            .Number(result.Seasons);
    }
}
