using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of who waits for whom: a row a week and pair that ever waits, and one for the season.</summary>
internal static class WaitTable
{
    /// <summary>What stands in the column of the space for trays that are not sown yet.</summary>
    public const string NotSown = "not sown";

    public static byte[] Write(StudyResult result)
    {
        var table = new CsvTable(
            "week_from",
            "from",
            "by",
            "tray_days_mean",
            "tray_days_p10",
            "tray_days_p50",
            "tray_days_p90",
            "tray_days_p95",
            "tray_days_most",
            "seasons"
        );
        foreach (var wait in result.Waits.Where(wait => wait.TrayDays.Most > 0))
        {
            for (var week = 0; week < wait.ByWeek.Length; week++)
            {
                var days = wait.ByWeek[week];
                table.Date(result.Plan.FirstDay.AddDays(7 * week));
                Names(table, wait)
                    .Number(days.Mean)
                    .Number(days.P10)
                    .Number(days.P50)
                    .Number(days.P90)
                    .Number(days.P95)
                    .Number(days.Most)
                    .Number(result.Seasons);
            }

            var season = wait.TrayDays;
            table.Text(FuelTable.WholeSeason);
            Names(table, wait)
                .Number(season.Mean)
                .Number(season.P10)
                .Number(season.P50)
                .Number(season.P90)
                .Number(season.P95)
                .Number(season.Most)
                .Number(result.Seasons);
        }

        return table.ToBytes();
    }

    private static CsvTable Names(CsvTable table, WaitResult wait) => table.Text(wait.From?.Id ?? NotSown).Text(wait.By.Id);
}
