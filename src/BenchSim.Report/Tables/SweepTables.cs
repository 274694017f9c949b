using System.Collections.Immutable;
using BenchSim.Study.Sweeps;

namespace BenchSim.Report.Tables;

/// <summary>The tables of a sweep. Shares from 0 to 1; blank where there is no figure.</summary>
internal static class SweepTables
{
    /// <summary>Where the table of the plans stands in the folder.</summary>
    public const string PlansFile = "tables/plans.csv";

    /// <summary>Where the table of the spaces stands.</summary>
    public const string SpacesFile = "tables/spaces.csv";

    private static readonly Column s_folder = new("folder", "text", "scenario folder, as the file of the sweep has it");
    private static readonly Column s_variant = new("variant", "text", "name of the variant; blank for the plan itself");

    private static readonly ImmutableArray<Column> s_plans =
    [
        s_folder,
        s_variant,
        new("site", "text", "name of the site or case"),
        new("best", "yes or no", "whether it is the plan of its folder that fits most often"),
        new("seasons", "seasons", "seasons played at the values as given"),
        new("seed", "text", "seed number of all draws"),
        new("fits", "share", "seasons that fit"),
        new("fits_low", "share", "low end of the 95 % Wilson interval"),
        new("fits_high", "share", "high end"),
        new("fits_weather_counted", "share", "seasons that fit, every late day counted"),
        new("fits_sets_low", "share", "5 % of the sets of values bring a share below it"),
        new("fits_sets_middle", "share", "half of them do"),
        new("fits_sets_high", "share", "5 % of them bring a share above it"),
        new("plants_wanted", "plants", "plants that the plan wants"),
        new("plants_in_time", "plants", "wanted plants out in time, mean"),
        new("plants_in_time_half", "plants", "half the width of the 95 % interval of that mean"),
        new("plants_sets_low", "plants", "5 % of the sets of values bring a mean below it"),
        new("plants_sets_middle", "plants", "half of them do"),
        new("plants_sets_high", "plants", "5 % of them bring a mean above it"),
        new("late_plant_days", "plant-days", "late plant-days, mean"),
        new("late_plant_days_half", "plant-days", "half the width of the 95 % interval of that mean"),
        new("tightest_space", "text", "id of the space that trays most often wait for; blank where they wait for none"),
        new("tightest_share", "share", "seasons in which they wait for it"),
    ];

    private static readonly ImmutableArray<Column> s_spaces =
    [
        s_folder,
        s_variant,
        new("space", "text", "space id"),
        new("name", "text", "its name"),
        new("short", "share", "seasons in which trays wait for a place in it"),
        new("short_low", "share", "low end of the 95 % Wilson interval"),
        new("short_high", "share", "high end"),
        new("worst_short", "places", "places missing on the worst day of a season, mean"),
    ];

    /// <summary>A row a plan, in the order of the file.</summary>
    public static CsvTable Plans(SweepResult result)
    {
        var table = new CsvTable(s_plans);
        foreach (var (folder, plan) in All(result))
        {
            var row = plan.Row;
            table
                .Text(folder.Name)
                .Text(plan.Variant ?? "")
                .Text(folder.Site)
                .Text(ReferenceEquals(folder.Best, plan) ? "yes" : "no")
                .Number(row.Fits.Seasons)
                .Text(FormattableString.Invariant($"{folder.Seed}"))
                .Number(row.Fits.Share)
                .Number(row.Fits.Low)
                .Number(row.Fits.High)
                .Number(row.FitsWeatherCounted.Share);
            Range(table, row.FitsOverSets);
            table.Number(row.PlantsWanted).Number(row.PlantsInTime.Mean).Number(row.PlantsInTime.HalfWidth);
            Range(table, row.PlantsOverSets);
            table
                .Number(row.LatePlantDays.Mean)
                .Number(row.LatePlantDays.HalfWidth)
                .Text(row.Tightest < 0 ? "" : plan.Spaces[row.Tightest].Id)
                .Number(row.Tightest < 0 ? double.NaN : row.Short[row.Tightest].Share);
        }

        return table;
    }

    /// <summary>A row a plan and space.</summary>
    public static CsvTable Spaces(SweepResult result)
    {
        var table = new CsvTable(s_spaces);
        foreach (var (folder, plan) in All(result))
        {
            for (var space = 0; space < plan.Spaces.Length; space++)
            {
                var waits = plan.Row.Short[space];
                table
                    .Text(folder.Name)
                    .Text(plan.Variant ?? "")
                    .Text(plan.Spaces[space].Id)
                    .Text(plan.Spaces[space].Name)
                    .Number(waits.Share)
                    .Number(waits.Low)
                    .Number(waits.High)
                    .Number(plan.Row.WorstShort[space]);
            }
        }

        return table;
    }

    private static IEnumerable<(SweptFolder Folder, SweptPlan Plan)> All(SweepResult result) =>
        result.Folders.SelectMany(folder => folder.Plans.Select(plan => (folder, plan)));

    private static void Range(CsvTable table, SweepRange? range) =>
        table.Number(range?.Low ?? double.NaN).Number(range?.Middle ?? double.NaN).Number(range?.High ?? double.NaN);
}
