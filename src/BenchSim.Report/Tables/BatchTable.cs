using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of batches: what was planned and what came of it.</summary>
internal static class BatchTable
{
    /// <summary>The reasons for throwing out, by the names the result uses, with their column names.</summary>
    internal static readonly (string Reason, string Column)[] Reasons =
    [
        (nameof(DiscardReason.FlatOverHeld), "flat_over_held"),
        (nameof(DiscardReason.NeverCameUp), "never_came_up"),
        (nameof(DiscardReason.OverHeld), "over_held"),
        (nameof(DiscardReason.Surplus), "surplus"),
    ];

    /// <summary>One row a batch, in the order of the plan.</summary>
    public static byte[] Write(StudyResult result)
    {
        string[] header =
        [
            "batch",
            "crop",
            "grower",
            "method",
            "tray",
            "trays",
            "flats",
            "seeds",
            "plants_wanted",
            "germination",
            "relative_germination",
            "stand_chance",
            "plan_sow",
            "plan_emerge",
            "plan_off_mat",
            "plan_pot_up",
            "plan_table",
            "plan_ready",
            "plan_set_out",
            .. Dates().SelectMany(TableFiles.DateColumns),
            "complete_share",
            "complete_low",
            "complete_high",
            .. Amounts().SelectMany(TableFiles.EstimateColumns),
            .. Reasons.SelectMany(reason => TableFiles.EstimateColumns("discarded_" + reason.Column)),
            .. result.Spaces.Select((_, index) => $"blocked_tray_days_mean_space_{index + 1}"),
            "seasons",
        ];
        var table = new CsvTable(header);
        foreach (var batch in result.Batches)
        {
            Row(table, batch, result);
        }

        return table.ToBytes();
    }

    private static string[] Dates() =>
        ["sown_first", "sown_last", "off_mat", "potted_up", "on_table", "out_first", "out_median", "out_last"];

    private static string[] Amounts() =>
        ["plants_out", "plants_in_time", "plants_short", "late_plant_days", "days_late", "over_held", "given_up", "hold_tray_days"];

    private static void Row(CsvTable table, BatchResult batch, StudyResult result)
    {
        var plan = batch.Plan;
        table.Text(plan.Order.Id).Text(plan.Crop.Id).Text(plan.Order.Grower).Text(Trade.Code(plan.Order.Method)).Text(plan.Tray.Id);
        table.Number(plan.Trays).Number(plan.Flats).Number(plan.Seeds).Number(plan.Order.Plants);
        table.Number(plan.Germination).Number(plan.RelativeGermination).Number(plan.StandChance);
        foreach (
            var date in new DateOnly?[]
            {
                plan.SowOn,
                plan.EmergeOn,
                plan.OffMatOn,
                plan.PotUpOn,
                plan.TableOn,
                plan.ReadyOn,
                plan.SetOutOn,
            }
        )
        {
            table.Date(date);
        }

        foreach (
            var spread in new[]
            {
                batch.SownFirst,
                batch.SownLast,
                batch.OffMat,
                batch.PottedUp,
                batch.OnTable,
                batch.OutFirst,
                batch.OutMedian,
                batch.OutLast,
            }
        )
        {
            TableFiles.Date(table, spread);
        }

        table.Number(batch.Complete.Share).Number(batch.Complete.Low).Number(batch.Complete.High);
        foreach (
            var estimate in new[]
            {
                batch.PlantsOut,
                batch.PlantsInTime,
                batch.PlantsShort,
                batch.LatePlantDays,
                batch.DaysLate,
                batch.OverHeld,
                batch.GivenUp,
                batch.HoldTrayDays,
            }
        )
        {
            TableFiles.Estimate(table, estimate);
        }

        foreach ((var reason, _) in Reasons)
        {
            TableFiles.Estimate(table, batch.Discarded.GetValueOrDefault(reason));
        }

        foreach (var estimate in batch.BlockedTrayDays)
        {
            table.Number(estimate.Mean);
        }

        table.Number(result.Seasons);
    }
}
