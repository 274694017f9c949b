using BenchSim.Answers.Words;
using BenchSim.Cli.Words;
using BenchSim.Study.Dense;
using BenchSim.Study.Figures;

namespace BenchSim.Cli.Printing;

/// <summary>Prints direct against dense sowing: a table of all crops, then what it means for each.</summary>
internal static class DensePrinter
{
    public static void Print(Desk desk, DenseResult result, string? folder)
    {
        desk.SayWrapped(
            $"{SafeText.Short(result.Base.Scenario.Name, 60)}: each crop of the heat mats sown directly, and sown dense in open flats and potted up, all else as planned; "
                + $"{Figures.Count(result.Seasons, "season", "seasons")} of each on the same luck, seed {result.Seed}."
        );
        desk.Say();
        if (result.Crops.IsEmpty)
        {
            desk.SayWrapped(
                result.Skipped.IsEmpty
                    ? "No crop of the plan stands on a heat mat, so dense sowing frees none."
                    : "No crop can be sown both ways."
            );
        }
        else
        {
            PrintTable(desk, result);
        }

        foreach (var crop in result.Crops)
        {
            PrintCrop(desk, crop);
        }

        foreach (var skip in result.Skipped)
        {
            desk.SayWrapped($"Left out: {SafeText.Quote(skip.CropId)} cannot be sown {skip.Way}: {skip.Why}.");
        }

        if (!result.Crops.IsEmpty)
        {
            PrintBasis(desk, result);
        }

        if (folder is not null)
        {
            desk.SayWrapped($"Chart and tables: {folder}");
        }
    }

    private static void PrintTable(Desk desk, DenseResult result)
    {
        desk.SayWrapped("Dense less direct, means of a season; minus is less:");
        desk.Say();
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
        var table = new TextTable([
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
                SafeText.Short(crop.Crop.Name, 24),
                DenseWords.Density(crop),
                .. kinds.Select(kind => DenseWords.Cell(crop.Of(kind))),
            ]);
        }

        table.Print(desk);
        desk.Say();
    }

    private static void PrintCrop(Desk desk, DenseCrop crop)
    {
        var asItStands = crop.IsPlannedDirect switch
        {
            true => "the plan sows it directly",
            false => "the plan pots it up",
            null => "the plan sows some of it directly and pots some up",
        };
        desk.SayWrapped($"{SafeText.Short(crop.Crop.Name, 40)} ({Figures.Count(crop.Direct.Length, "sowing", "sowings")}; {asItStands}):");
        desk.Say();
        Bullet(desk, DenseWords.Trade(crop));
        Bullet(desk, DenseWords.Late(crop));
        Bullet(desk, DenseWords.MatBreakEven(crop.BreakEven));
        Bullet(desk, DenseWords.LabourBreakEven(crop.BreakEven));
        desk.Say();
    }

    private static void PrintBasis(Desk desk, DenseResult result)
    {
        desk.SayWrapped(
            $"Each interval allows for all {Figures.Whole(result.Comparisons)} comparisons made here (Bonferroni): with 95 % confidence every one of them holds at once. "
                + "Mats, benches, hours and plants not in time are those of the whole site; flats, trays, mix and seeds those of the crop. The field wants a crop on the same day either way."
        );
        desk.SayWrapped("Where it breaks even is worked out from planned dates and numbers, not played; docs/dense.md has the formulas.");
        desk.SayWrapped(
            "Whether a crop stands being potted up is for you to judge: melons, cucumbers and squashes dislike it. What it loses and how long it stands still are pot_up_loss and pot_up_check_days of its row."
        );
        desk.SayWrapped("Minutes of each job are those of [work_minutes]; time your own before you decide on hours.");
    }

    private static void Bullet(Desk desk, string sentence)
    {
        var mark = "* ";
        foreach (var line in Paragraph.Lines(SafeText.OneLine(sentence), 76))
        {
            desk.Say($"  {mark}{line}");
            mark = "  ";
        }
    }
}
