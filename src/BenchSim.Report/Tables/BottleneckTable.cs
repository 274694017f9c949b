using System.Collections.Immutable;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of bottlenecks: a row a trial, pairs and warmer houses included. Only where they were asked for.</summary>
internal static class BottleneckTable
{
    private static readonly ImmutableArray<Column> s_columns =
    [
        new("space", "text", "space id"),
        new("second_space", "text", "the other space of a pair; blank for one alone"),
        new("places_added", "places", "places more; `no limit` for no limit"),
        new("plants_more_in_time", "plants", "plants more out in time a season, mean; blank for a pair"),
        new("plants_more_in_time_low", "plants", "lower end of its interval; blank for one season"),
        new("plants_more_in_time_high", "plants", "upper end"),
        new("plants_more_in_time_real", "yes or no", "the interval leaves out 0"),
        new("late_plant_days_saved", "plant-days", "late plant-days saved a season, mean"),
        new("late_plant_days_saved_low", "plant-days", "lower end of its interval; blank for one season"),
        new("late_plant_days_saved_high", "plant-days", "upper end"),
        new("late_plant_days_saved_real", "yes or no", "the interval leaves out 0"),
        new("saved_beyond_sum", "plant-days", "what a pair saves beyond what its two save alone, added up; blank for one alone"),
        new("saved_beyond_sum_low", "plant-days", "lower end of its interval"),
        new("saved_beyond_sum_high", "plant-days", "upper end"),
        new("helps_together", "yes or no", "a pair really saves more than its two alone added up, and than either alone"),
        new("fits", "0 to 1", "chance that a season fits in the trial"),
        new("fits_low", "0 to 1", "lower end of its 95 % Wilson interval"),
        new("fits_high", "0 to 1", "upper end"),
        new("fits_change", "-1 to 1", "change of that chance, trial less base"),
        new("fits_change_low", "-1 to 1", "lower end of its interval"),
        new("fits_change_high", "-1 to 1", "upper end"),
        new("fits_change_real", "yes or no", "the interval leaves out 0"),
        FigureColumns.Seasons,
    ];

    public static CsvTable Write(BottleneckResult result)
    {
        var table = new CsvTable(s_columns);
        foreach (var trial in result.Unlimited.Concat(result.Larger))
        {
            table.Text(trial.Space.Id).Text("");
            _ = trial.PlacesAdded is { } places ? table.Number(places) : table.Text("no limit");
            Brought(table, trial.PlantsInTime);
            Saved(table, trial.LatePlantDays).Text(Word(trial.LatePlantDays.IsReal));
            table.Text("").Text("").Text("").Text("");
            Fits(table, trial.Fits, result.Seasons);
        }

        foreach (var pair in result.Pairs)
        {
            table.Text(pair.First.Id).Text(pair.Second.Id).Text("no limit");
            table.Text("").Text("").Text("").Text("");
            Saved(table, pair.LatePlantDays).Text(Word(pair.LatePlantDays.IsReal));
            Saved(table, pair.BeyondSum).Text(Word(pair.HelpsTogether));
            Fits(table, pair.Fits, result.Seasons);
        }

        foreach (var trial in result.Warmer)
        {
            table.Text(trial.House.Id).Text("").Text("as warm as the warmest house");
            Brought(table, trial.PlantsInTime);
            Saved(table, trial.LatePlantDays).Text(Word(trial.LatePlantDays.IsReal));
            table.Text("").Text("").Text("").Text("");
            Fits(table, trial.Fits, result.Seasons);
        }

        return table;
    }

    private static void Brought(CsvTable table, MeasureChange plants) =>
        table.Number(plants.Difference).Number(plants.Low).Number(plants.High).Text(Word(plants.IsReal));

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
