using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
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
            .. FigureColumns.Names(BatchFigures.All, result.Spaces.Length),
            "seasons",
        ];
        var table = new CsvTable(header);
        foreach (var batch in result.Batches)
        {
            Row(table, batch, result);
        }

        return table.ToBytes();
    }

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

        FigureColumns.Write(table, BatchFigures.All, batch);
        table.Number(result.Seasons);
    }
}
