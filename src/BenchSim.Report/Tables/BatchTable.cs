using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of batches: what was planned and what came of it.</summary>
internal static class BatchTable
{
    /// <summary>The reasons for throwing out, by the names the result uses, with their columns.</summary>
    internal static readonly (string Reason, string Column, string Unit, string Meaning)[] Reasons =
    [
        (nameof(DiscardReason.FlatOverHeld), "flat_over_held", "flats", "too long past the pot-up stage"),
        (nameof(DiscardReason.NeverCameUp), "never_came_up", "trays or flats", "never came up"),
        (nameof(DiscardReason.OverHeld), "over_held", "trays", "too long past due"),
        (nameof(DiscardReason.Surplus), "surplus", "flats", "left over when all trays were filled"),
    ];

    /// <summary>One row a batch, in the order of the plan.</summary>
    public static CsvTable Write(StudyResult result)
    {
        var table = new CsvTable([
            new("batch", "text", "batch id"),
            new("crop", "text", "crop id"),
            new("variety", "text", "variety; blank where the plan names none"),
            new("grower", "text", "grower"),
            new("method", "text", "`direct` or `pot-up`"),
            new("tray", "text", "tray type it goes to the field in"),
            new("trays", "trays", "trays planned"),
            new("flats", "flats", "flats sown; 0 for direct"),
            new("seeds", "seeds", "seeds sown"),
            new("plants_wanted", "plants", "plants wanted in the field"),
            new(
                "germination",
                "0 to 1",
                "germination of the packet at sowing, aged where the seed's storage, test date and life are known"
            ),
            new("relative_germination", "0 to 1", "germination at the planned temperature relative to the crop's best"),
            new("stand_chance", "0 to 1", "chance that the trays bring the wanted plants"),
            new("plan", "date", "planned date, in normal weather and with room")
            {
                Endings =
                [
                    new("sow", "sown"),
                    new("emerge", "half of the seedlings up"),
                    new("off_mat", "off the mat"),
                    new("pot_up", "potted up"),
                    new("table", "to the hardening table"),
                    new("ready", "ready for the field"),
                    new("set_out", "set out"),
                ],
            },
            .. FigureColumns.Of(BatchFigures.All, result.Spaces),
            FigureColumns.Seasons,
        ]);
        foreach (var batch in result.Batches)
        {
            Row(table, batch, result);
        }

        return table;
    }

    private static void Row(CsvTable table, BatchResult batch, StudyResult result)
    {
        var plan = batch.Plan;
        table
            .Text(plan.Order.Id)
            .Text(plan.Crop.Id)
            .Text(plan.Order.Variety)
            .Text(plan.Order.Grower)
            .Text(Trade.Code(plan.Order.Method))
            .Text(plan.Tray.Id);
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
