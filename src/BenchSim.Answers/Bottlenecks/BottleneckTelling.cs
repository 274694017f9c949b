using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Bottlenecks;

/// <summary>Tells what more room in each space would save, then who waits for whom by week.</summary>
internal static class BottleneckTelling
{
    private const int LongestName = 30;

    public static void Tell(Passages words, BottleneckResult result)
    {
        words.Sentence(
            $"{PlainText.Short(result.Plan.Scenario.Name, 60)}: what more room would save, "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")} of each trial, the same ones, seed {result.Seed}. "
                + AsItIs(result)
        );
        words.Gap();
        TellFindings(words, result);
        words.Gap();
        words.Sentence("Who waits for whom. " + WaitSentences.Reading(result.Waits, result.Plan));
        TellWaits(words, result);
    }

    /// <summary>The table of trials and its sentences.</summary>
    public static void TellFindings(Passages words, BottleneckResult result)
    {
        var table = words.Table(
            [
                "space",
                ">more room",
                ">more plants in time",
                ">interval",
                ">late plant-days saved",
                ">interval",
                ">plan fits",
                ">points",
                ">interval",
            ],
            (2 * LongestName) + 5
        );
        foreach (var trial in result.Unlimited)
        {
            Add(table, PlainText.Short(trial.Space.Name, LongestName), "no limit", trial.PlantsInTime, trial.LatePlantDays, trial.Fits);
        }

        foreach (var trial in result.Larger)
        {
            Add(
                table,
                PlainText.Short(trial.Space.Name, LongestName),
                Numbers.Count(trial.PlacesAdded ?? 0, "place", "places"),
                trial.PlantsInTime,
                trial.LatePlantDays,
                trial.Fits
            );
        }

        foreach (var pair in result.Pairs.Where(pair => pair.HelpsTogether))
        {
            Add(
                table,
                $"{PlainText.Short(pair.First.Name, LongestName)} and {PlainText.Short(pair.Second.Name, LongestName)}",
                "no limit on both",
                null,
                pair.LatePlantDays,
                pair.Fits
            );
        }

        words.Gap();
        foreach (var sentence in BottleneckSentences.Of(result))
        {
            words.Point(sentence);
        }

        words.Gap();
        words.Sentence(BottleneckSentences.Basis(result));
        words.Sentence(Rooms.Caution);
    }

    private static string AsItIs(BottleneckResult result) =>
        result.Seasons == 1
            ? $"As it is, the plan {(result.Fits.Hits == 1 ? "fits in that season" : "does not fit in that season")}, "
                + $"which has {Numbers.Short(result.LatePlantDays)} late plant-days."
            : $"As it is, the plan fits in {ChanceWords.Fine(result.Fits.Share)} of seasons (95 % interval "
                + $"{ChanceWords.FineInterval(result.Fits)}) and has {Numbers.Short(result.LatePlantDays)} late plant-days a season.";

    private static void Add(Table table, string name, string room, MeasureChange? plants, MeasureChange late, FitChange fits) =>
        table.Add(
            name,
            room,
            plants is null ? "" : Signed(plants.Difference),
            plants is null ? ""
                : double.IsNaN(plants.HalfWidth) ? "-"
                : $"{Signed(plants.Low)} to {Signed(plants.High)}",
            Signed(-late.Difference),
            double.IsNaN(late.HalfWidth) ? "-" : $"{Signed(-late.High)} to {Signed(-late.Low)}",
            ChanceWords.Fine(fits.Variant.Share),
            ChanceWords.SignedPoints(fits.Difference),
            double.IsNaN(late.HalfWidth) ? "-" : ChanceWords.SignedPoints(fits)
        );

    private static string Signed(double amount)
    {
        var text = Numbers.Short(amount);
        return text.Any(character => character is >= '1' and <= '9') ? text : "0";
    }

    private static void TellWaits(Passages words, BottleneckResult result)
    {
        ImmutableArray<WaitResult> waits = [.. result.Waits.Where(wait => wait.TrayDays.Most > 0)];
        if (waits.IsEmpty)
        {
            return;
        }

        words.Line("Tray-days refused by week, mean of a season (trays there, for a place here):");
        words.Gap();
        var table = words.Table(
            ["week from", .. waits.Select(wait => ">" + PlainText.OneLine(WaitSentences.Heading(wait, 20)))],
            LongestName
        );
        for (var week = 0; week < waits[0].ByWeek.Length; week++)
        {
            if (waits.Any(wait => wait.ByWeek[week].Most > 0))
            {
                table.Add([Dates.Iso(result.Plan.FirstDay.AddDays(7 * week)), .. waits.Select(wait => Cell(wait.ByWeek[week].Mean))]);
            }
        }

        table.Add(["season", .. waits.Select(wait => Cell(wait.TrayDays.Mean))]);
    }

    private static string Cell(double mean) =>
        mean switch
        {
            0 => "-",
            < 0.05 => "under 0.1",
            _ => Numbers.Short(mean),
        };
}
