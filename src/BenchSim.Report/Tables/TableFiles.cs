using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV tables of a report. Every column is described in docs/report.md.</summary>
internal static class TableFiles
{
    /// <summary>Places by date and space.</summary>
    public static byte[] Daily(StudyResult result)
    {
        string[] figures = ["mean", "p10", "p50", "p90", "p95", "most"];
        string[] header =
        [
            "date",
            "space",
            "places",
            .. figures.Select(figure => "held_" + figure),
            .. figures.Select(figure => "wanted_" + figure),
            .. figures.Select(figure => "waiting_" + figure),
        ];
        var table = new CsvTable(header);
        for (var day = 0; day < result.Plan.Days; day++)
        {
            foreach (var space in result.Spaces)
            {
                table.Date(result.Plan.FirstDay.AddDays(day)).Text(space.Space.Id).Number(space.Places[day]);
                Spread(table, space.Held[day]);
                Spread(table, space.Wanted[day]);
                Spread(table, space.Waiting[day]);
            }
        }

        return table.ToBytes();
    }

    /// <summary>One row a space.</summary>
    public static byte[] Spaces(StudyResult result)
    {
        string[] header =
        [
            "space",
            "name",
            "kind",
            "house",
            "places_first_day",
            "places_most",
            .. EstimateColumns("peak"),
            .. DateColumns("peak_on"),
            .. EstimateColumns("days_full"),
            .. EstimateColumns("tray_days"),
            .. EstimateColumns("waited_tray_days"),
            "seasons",
        ];
        var table = new CsvTable(header);
        foreach (var space in result.Spaces)
        {
            table.Text(space.Space.Id).Text(space.Space.Name).Text(Trade.Code(space.Space.Kind)).Text(space.Space.HouseId ?? "");
            table.Number(space.Space.Places).Number(space.Places.DefaultIfEmpty(0).Max());
            Estimate(table, space.Peak);
            Date(table, space.PeakOn);
            Estimate(table, space.DaysFull);
            Estimate(table, space.TrayDays);
            Estimate(table, space.WaitedDays);
            table.Number(result.Seasons);
        }

        return table.ToBytes();
    }

    /// <summary>One row a grower.</summary>
    public static byte[] Growers(StudyResult result)
    {
        string[] header =
        [
            "grower",
            "batches",
            "share",
            "fuel_share",
            "cost_mean",
            "cost_share",
            .. EstimateColumns("tray_days"),
            .. EstimateColumns("peak"),
            .. result.Spaces.Select((_, index) => $"tray_days_mean_space_{index + 1}"),
            "seasons",
        ];
        var table = new CsvTable(header);
        foreach ((var grower, var cost) in result.Growers.Zip(GrowerCost.Of(result)))
        {
            table
                .Text(grower.Grower)
                .Number(grower.Batches)
                .Number(grower.Share)
                .Number(grower.FuelShare)
                .Number(cost.Amount)
                .Number(cost.Share);
            Estimate(table, grower.TrayDays);
            Estimate(table, grower.Peak);
            foreach (var days in grower.TrayDaysBySpace)
            {
                table.Number(days);
            }

            table.Number(result.Seasons);
        }

        return table.ToBytes();
    }

    internal static string[] EstimateColumns(string name) =>
        [name + "_mean", name + "_half_width", name + "_p10", name + "_p50", name + "_p90", name + "_p95", name + "_most"];

    internal static string[] DateColumns(string name) => [name + "_p10", name + "_p50", name + "_p90", name + "_seasons"];

    internal static void Estimate(CsvTable table, Estimate estimate) =>
        table
            .Number(estimate.Mean)
            .Number(estimate.HalfWidth)
            .Number(estimate.P10)
            .Number(estimate.P50)
            .Number(estimate.P90)
            .Number(estimate.P95)
            .Number(estimate.Most);

    internal static void Date(CsvTable table, DateSpread spread) =>
        table.Date(spread.P10).Date(spread.P50).Date(spread.P90).Number(spread.Happened);

    private static void Spread(CsvTable table, DaySpread spread) =>
        table.Number(spread.Mean).Number(spread.P10).Number(spread.P50).Number(spread.P90).Number(spread.P95).Number(spread.Most);
}
