using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Dense;
using BenchSim.Study.Figures;

namespace BenchSim.Answers.Dense;

/// <summary>Tells direct against dense sowing: a table of all crops, then what it means for each.</summary>
internal static class DenseTelling
{
    public static void Tell(Passages words, DenseResult result, string? folder)
    {
        words.Sentence(
            $"{PlainText.Short(result.Base.Scenario.Name, 60)}: each crop of the heat mats sown directly, "
                + "and sown dense in open flats and potted up, all else as planned; "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")} of each, the same ones, seed {result.Seed}."
        );
        words.Gap();
        if (result.Crops.IsEmpty)
        {
            words.Sentence(
                result.Skipped.IsEmpty
                    ? "No crop of the plan stands on a heat mat, so dense sowing frees none."
                    : "No crop can be sown both ways."
            );
        }
        else
        {
            TellTable(words, result);
        }

        foreach (var crop in result.Crops)
        {
            TellCrop(words, crop);
        }

        foreach (var skip in result.Skipped)
        {
            words.Sentence($"Left out: {PlainText.Quote(skip.CropId)} cannot be sown {skip.Way}: {skip.Why}.");
        }

        if (!result.Crops.IsEmpty)
        {
            TellBasis(words, result);
        }

        if (folder is not null)
        {
            words.Sentence($"Chart and tables: {folder}");
        }
    }

    private static void TellTable(Passages words, DenseResult result)
    {
        words.Sentence("Dense less direct, means of a season; minus is less:");
        words.Gap();
        Measure[] kinds =
        [
            Measures.MatTrayDays,
            Measures.BenchTrayDays,
            Measures.Flats,
            Measures.Trays,
            Measures.LabourHours,
            Measures.MixLitres,
            Measures.Seeds,
            Measures.PlantsLate,
        ];
        var table = words.Table([
            "crop",
            ">seeds a flat",
            ">mat tray-days",
            ">bench tray-days",
            ">flats",
            ">trays",
            ">hours",
            ">litres of mix",
            ">seeds",
            ">not in time",
        ]);
        foreach (var crop in result.Crops)
        {
            table.Add([
                PlainText.Short(crop.Crop.Name, 24),
                DenseWords.Density(crop),
                .. kinds.Select(kind => DenseWords.Cell(crop.Of(kind))),
            ]);
        }

        words.Gap();
    }

    private static void TellCrop(Passages words, DenseCrop crop)
    {
        var asItStands = crop.IsPlannedDirect switch
        {
            true => "the plan sows it directly",
            false => "the plan pots it up",
            null => "the plan sows some of it directly and pots some up",
        };
        words.Sentence($"{PlainText.Short(crop.Crop.Name, 40)} ({Numbers.Count(crop.Direct.Length, "sowing", "sowings")}; {asItStands}):");
        words.Gap();
        words.Point(DenseWords.Trade(crop), isSure: true);
        words.Point(DenseWords.Late(crop), isSure: true);
        words.Point(DenseWords.MatBreakEven(crop.BreakEven), isSure: true);
        words.Point(DenseWords.LabourBreakEven(crop.BreakEven), isSure: true);
        words.Gap();
    }

    private static void TellBasis(Passages words, DenseResult result)
    {
        words.Sentence(
            CompareSentences.Allowance(result.Comparisons)
                + " Mats, benches, hours and plants not in time are those of the whole site; flats, trays, "
                + "mix and seeds those of the crop. The field wants a crop on the same day either way."
        );
        words.Sentence("Where it breaks even is worked out from planned dates and numbers, not played; docs/dense.md has the formulas.");
        words.Sentence(
            "Whether a crop can take being potted up is for you to judge: melons, cucumbers and squashes do badly. "
                + "What it loses, and how long it stops growing, are pot_up_loss and pot_up_check_days of its row."
        );
        words.Sentence("Minutes of each job are those of [work_minutes] and [work_seconds]; time your own before you decide on hours.");
    }
}
