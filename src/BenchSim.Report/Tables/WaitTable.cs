using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of who waits for whom: a row a week and pair that ever waits, and one for the season.</summary>
internal static class WaitTable
{
    /// <summary>What stands in the column of the space for trays that are not sown yet.</summary>
    public const string NotSown = "not sown";

    public static CsvTable Write(StudyResult result)
    {
        var table = new CsvTable([
            new("week_from", "date", "first day of the week, weeks counting from day 0; `season` for the whole"),
            new("from", "text", "id of the space the trays stand in; `not sown` for sowings that wait"),
            new("by", "text", "id of the space they would take first"),
            FigureColumns.Spread("tray_days", "tray-days", "tray-days refused"),
            FigureColumns.Seasons,
        ]);
        foreach (var wait in result.Waits.Where(wait => wait.TrayDays.Most > 0))
        {
            for (var week = 0; week < wait.ByWeek.Length; week++)
            {
                table.Date(result.Plan.FirstDay.AddDays(7 * week));
                Names(table, wait);
                FigureColumns.Write(table, wait.ByWeek[week]);
                table.Number(result.Seasons);
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

        return table;
    }

    private static CsvTable Names(CsvTable table, WaitResult wait) => table.Text(wait.From?.Id ?? NotSown).Text(wait.By.Id);
}
