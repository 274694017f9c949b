using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Learning;

namespace BenchSim.Answers.Learn;

/// <summary>Tells what logs teach: crop by crop, packet by packet, job by job, and what they do not teach.</summary>
internal static class LearnTelling
{
    private const int LongestDates = 60;

    public static void Tell(Passages words, LearnAnswer answer)
    {
        var result = answer.Result;
        words.Sentence(
            $"{PlainText.Short(result.Plan.Scenario.Name, 60)}: {LearnWords.Headline(result)} "
                + $"{Numbers.Count(result.Seasons.Sum(season => season.Batches.Length), "batch is", "batches are")} in the "
                + $"{(result.Seasons.Length == 1 ? "log" : "logs")}."
        );
        TellValues(words, result);
        TellPackets(words, result);
        TellWork(words, result);
        TellHouses(words, result);
        TellNotLearned(words, result);
        TellBefore(words, result.Deviations);
        words.Gap();
        if (answer.Written is { } written)
        {
            words.Sentence(Written(written));
        }
        else if (result.Values.Any())
        {
            words.Sentence("No file was written: --write writes the values into crops.csv of the last folder.");
        }
    }

    /// <summary>What was written, in a sentence.</summary>
    public static string Written(WrittenCrops written) =>
        written switch
        {
            { Crops.IsEmpty: true } => $"Nothing was learned that {written.File} could hold, so nothing was written.",
            { IsChanged: false } => $"{written.File} holds these values already, and is as it was.",
            _ => $"{written.File} now holds the values of {Numbers.Count(written.Crops.Length, "crop", "crops")}, with their source.",
        };

    private static void TellValues(Passages words, LearnResult result)
    {
        foreach (var crop in result.Crops.Where(crop => !crop.Values.IsEmpty))
        {
            words.Heading($"{LearnWords.Crop(crop)}, from {Numbers.Count(crop.Lessons.Batches, "batch", "batches")}");
            var table = words.Table(
                ["value", "column", ">old", ">new", ">90 % interval", ">batches", ">seeds or plants", "moves a planned date"],
                LongestDates
            );
            foreach (var (learned, anew) in crop.Values)
            {
                table.Add(
                    learned.Kind == LearnedKind.EmergeHeat
                        ? LearnWords.Value(learned.Kind) + ", degree-days C"
                        : LearnWords.Value(learned.Kind),
                    learned.Kind.Column(),
                    learned.Kind.InForce(learned.Value.Old),
                    learned.Kind.Text(learned.Value.New),
                    LearnWords.Interval(learned.Kind, learned.Value),
                    Numbers.Whole(learned.Batches),
                    learned.Counted == 0 ? "-" : Numbers.Whole(learned.Counted),
                    LearnWords.Dates(anew)
                );
            }

            foreach (var value in crop.Values.Where(value => value.Anew.Matters))
            {
                words.Sentence($"{PlainText.Capital(LearnWords.Value(value.Learned.Kind))}: {LearnWords.AllDates(value.Anew)}.", 2);
            }
        }
    }

    private static void TellPackets(Passages words, LearnResult result)
    {
        var packets = result.Crops.SelectMany(crop => crop.Lessons.Packets, (crop, packet) => (crop, packet)).ToList();
        if (packets.Count == 0)
        {
            return;
        }

        words.Heading("Germination of packets against their test");
        words.Sentence("These are of the packets, not of the crop: write them into plan.csv where a packet is sown again.", 2);
        var table = words.Table(["season", "packet", "crop", ">test", ">counted", ">90 % interval", ">seeds"]);
        foreach (var (crop, packet) in packets)
        {
            const LearnedKind Kind = LearnedKind.Germination;
            table.Add(
                packet.Season,
                packet.Packet,
                LearnWords.Crop(crop),
                Kind.Text(packet.Tested),
                Kind.Text(packet.Seen.New),
                LearnWords.Interval(Kind, packet.Seen),
                Numbers.Whole(packet.Seen.Seen)
            );
        }
    }

    private static void TellWork(Passages words, LearnResult result)
    {
        if (result.Work.IsEmpty)
        {
            return;
        }

        words.Heading("Minutes a tray");
        words.Sentence("They stand in [work_minutes] of site.toml, which is yours to change.", 2);
        var table = words.Table(["job", "key", ">old", ">new", ">90 % interval", ">rows", ">trays"]);
        foreach (var work in result.Work)
        {
            table.Add(
                LearnWords.Job(work.Key),
                work.Key,
                Numbers.Plain(work.Value.Old),
                Numbers.Short(work.Value.New),
                $"{Numbers.Short(work.Value.Low)} to {Numbers.Short(work.Value.High)}",
                Numbers.Whole(work.Value.Seen),
                Numbers.Whole(work.Trays)
            );
        }
    }

    private static void TellHouses(Passages words, LearnResult result)
    {
        (House House, int Stretches, Learned Loss)[] learned = [.. LearnWords.WithLoss(result)];
        if (learned.Length == 0)
        {
            return;
        }

        words.Heading("Heat loss of houses, by their fuel");
        words.Sentence(
            "Fuel counted from one line to the next, over what the house takes by its faces, its trays and the weather. Whether it loses "
                + "more or its heater gives less, fuel does not tell: divide its efficiency in site.toml by the factor, or mend its "
                + "covering or air changes.",
            2
        );
        var table = words.Table(["house", ">times that worked out", ">90 % interval", ">stretches", ">efficiency", ">with it"]);
        foreach (var (house, stretches, loss) in learned)
        {
            table.Add(
                house.Name,
                Numbers.Hundredths(loss.New),
                $"{Numbers.Hundredths(loss.Low)} to {Numbers.Hundredths(loss.High)}",
                Numbers.Whole(stretches),
                Numbers.Hundredths(house.Heat!.Efficiency),
                Numbers.Hundredths(house.Heat.Efficiency / loss.New)
            );
        }
    }

    private static void TellNotLearned(Passages words, LearnResult result)
    {
        var judged = result.Crops.SelectMany(crop => crop.Lessons.NotGrown).ToList();
        var houses = result.Houses.Where(house => house.Loss is null).ToList();
        if (judged.Count == 0 && houses.Count == 0 && result.Volunteered == 0 && result.LackingDays == 0)
        {
            return;
        }

        words.Heading("What the logs do not teach");
        if (result.Volunteered > 0)
        {
            words.Point(LearnWords.Volunteered(result));
        }

        foreach (var batch in judged)
        {
            words.Point(
                $"Growth of {PlainText.Short(batch.Batch, 40)} in {batch.Season}: {LearnWords.Why(batch, result.Plan.Scenario.Units)}."
            );
        }

        foreach (var house in houses)
        {
            words.Point(LearnWords.TooFew(house));
        }

        if (result.LackingDays > 0)
        {
            words.Point(LearnWords.Lacking(result));
        }
    }

    private static void TellBefore(Passages words, Deviations deviations)
    {
        words.Heading("How much the old values count");
        words.Sentence(
            "A value in force may be off by a standard deviation, of its logarithm or of the log odds of a share, of "
                + $"{Numbers.Hundredths(deviations.Read)} where it was read in a source, "
                + $"{Numbers.Hundredths(deviations.Remembered)} where it is from memory, common practice or your own, "
                + $"{Numbers.Hundredths(deviations.Assumed)} where it is an assumption or a relative's. These three are assumptions; "
                + "--prior sets others. Batches spread about the crop by its own emerge_cv, growth_cv and stand_loss_correlation.",
            2
        );
    }
}
