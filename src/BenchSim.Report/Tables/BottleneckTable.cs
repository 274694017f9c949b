using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of bottlenecks: a row a trial, pairs included. Only where they were asked for.</summary>
internal static class BottleneckTable
{
    public static byte[] Write(BottleneckResult result)
    {
        var table = new CsvTable(
            "space",
            "second_space",
            "places_added",
            "late_plant_days_saved",
            "late_plant_days_saved_low",
            "late_plant_days_saved_high",
            "late_plant_days_saved_real",
            "saved_beyond_sum",
            "saved_beyond_sum_low",
            "saved_beyond_sum_high",
            "helps_together",
            "fits",
            "fits_low",
            "fits_high",
            "fits_change",
            "fits_change_low",
            "fits_change_high",
            "fits_change_real",
            "seasons"
        );
        foreach (var trial in result.Unlimited.Concat(result.Larger))
        {
            table.Text(trial.Space.Id).Text("");
            _ = trial.PlacesAdded is { } places ? table.Number(places) : table.Text("no limit");
            Saved(table, trial.LatePlantDays).Text(Word(trial.LatePlantDays.IsReal));
            table.Text("").Text("").Text("").Text("");
            Fits(table, trial.Fits, result.Seasons);
        }

        foreach (var pair in result.Pairs)
        {
            table.Text(pair.First.Id).Text(pair.Second.Id).Text("no limit");
            Saved(table, pair.LatePlantDays).Text(Word(pair.LatePlantDays.IsReal));
            Saved(table, pair.BeyondSum).Text(Word(pair.HelpsTogether));
            Fits(table, pair.Fits, result.Seasons);
        }

        return table.ToBytes();
    }

    private static CsvTable Saved(CsvTable table, MeasureChange late) =>
        table.Number(-late.Difference).Number(-late.High).Number(-late.Low);

    private static void Fits(CsvTable table, FitChange fits, int seasons) =>
        table
            .Number(fits.Variant.Share)
            .Number(fits.Variant.Low)
            .Number(fits.Variant.High)
            .Number(fits.Difference)
            .Number(fits.Low)
            .Number(fits.High)
            .Text(Word(fits.IsReal))
            .Number(seasons);

    private static string Word(bool isSo) => isSo ? "yes" : "no";
}
