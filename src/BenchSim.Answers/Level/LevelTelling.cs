using BenchSim.Answers.Compare;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Levelling;

namespace BenchSim.Answers.Level;

/// <summary>Tells the moves, the peaks before and after, the differences, and what to do.</summary>
internal static class LevelTelling
{
    public static void Tell(Passages words, LevelResult result, string? written)
    {
        words.Sentence(
            $"{PlainText.Short(result.Plan.Scenario.Name, 60)}: {Numbers.Count(result.Plan.Batches.Length, "sowing", "sowings")}, "
                + $"of which {Numbers.Whole(result.Movable)} may move."
        );
        TellMoves(words, result);
        TellExpected(words, result);
        if (result.Trial is { } trial)
        {
            TellTrial(words, result, trial);
        }

        words.Gap();
        words.Sentence(LevelWords.Verdict(result));
        if (written is not null)
        {
            var use = result.Verdict == LevelVerdict.Adopt ? ". To use it, put it in the place of plan.csv." : ", as asked.";
            words.Sentence($"The levelled plan is in {written}{use}");
        }
        else if (result.Levelled is not null)
        {
            words.Sentence(
                $"No file was written: --write writes the levelled plan to {LevelledPlanFile.UsualName} in the scenario folder."
            );
        }
    }

    private static void TellMoves(Passages words, LevelResult result)
    {
        if (result.Moves.IsEmpty)
        {
            return;
        }

        words.Heading($"Sowings moved: {Numbers.Whole(result.Moves.Length)}, by {Numbers.Count(result.ShiftDays, "day", "days")} in all");
        var table = words.Table(["batch", "grower", "planned", "levelled", ">days", "set out"]);
        foreach (var move in result.Moves)
        {
            table.Add(
                move.Batch,
                PlainText.Short(move.Grower, 30),
                Dates.Iso(move.From),
                Dates.Iso(move.To),
                ReplanWords.Days(move),
                move.SetOutFrom == move.SetOutTo
                    ? Dates.Iso(move.SetOutTo)
                    : $"{Dates.Iso(move.SetOutFrom)} becomes {Dates.Iso(move.SetOutTo)}"
            );
        }

        words.Sentence(LevelWords.ByGrower(result), 2);
        if (result.Moves.Any(move => move.SetOutFrom != move.SetOutTo))
        {
            words.Sentence(
                "Where the plan asks for no set-out date, it follows from the sow date and moves with it; "
                    + "lateness is then counted from the new date.",
                2
            );
        }
    }

    private static void TellExpected(Passages words, LevelResult result)
    {
        var hasMoves = !result.Moves.IsEmpty;
        words.Heading(
            "Expected places wanted: the mean of "
                + $"{Numbers.Count(result.Options.ExpectedSeasons, "season", "seasons")} without limits of place"
        );
        string[] columns = [">peak as planned", "on", ">place-days over", "most over on"];
        string[] levelled = [">peak levelled", "on", ">place-days over", "most over on"];
        var table = words.Table(["", ">places", .. columns, .. hasMoves ? levelled : []]);
        foreach (var group in result.Groups)
        {
            string[] cells = [LevelWords.Group(group.Group, result.Plan.Scenario), LevelWords.Places(group.Group), .. Cells(group.Before)];
            table.Add([.. cells, .. hasMoves ? Cells(group.After) : []]);
        }

        var limit = result.Options.Fill < 1 ? $"{ChanceWords.Setting(result.Options.Fill)} of the places" : "the places";
        words.Sentence(
            $"Place-days over are places wanted beyond {limit} of the day, added up over the days: "
                + $"{Numbers.Tenths(result.OverBefore)} in all as planned"
                + (hasMoves ? $", {Numbers.Tenths(result.OverAfter)} levelled. " : ". ")
                + (result.Movable > 0 && result.OverBefore > 0 ? LevelWords.Proof(result) : ""),
            2
        );
    }

    private static string[] Cells(ExpectedPeak peak) =>
        [Numbers.Tenths(peak.Places), Dates.Iso(peak.On), Numbers.Tenths(peak.OverPlaceDays), Dates.IsoOrDash(peak.WorstOn)];

    private static void TellTrial(Passages words, LevelResult result, CompareResult trial)
    {
        words.Heading($"Played: both plans in the same {Numbers.Count(trial.Seasons, "other season", "other seasons")}, seed {trial.Seed}");
        var table = words.Table(["most places wanted on any day", ">as planned", ">levelled", ">difference", ">interval"]);
        foreach (var group in result.Groups)
        {
            var peak = group.Played!;
            table.Add(
                LevelWords.Group(group.Group, result.Plan.Scenario),
                Numbers.Tenths(peak.Before),
                Numbers.Tenths(peak.After),
                Signed(peak.Difference),
                double.IsNaN(peak.HalfWidth) ? "-" : $"{Signed(peak.Low)} to {Signed(peak.High)}"
            );
        }

        words.Gap();
        CompareTelling.TellVariant(words, trial, trial.Variants[0]);
        words.Gap();
        words.Sentence("The intervals of the first table hold together with 95 % confidence, and so do those of the second (Bonferroni).");
    }

    private static string Signed(double places)
    {
        var text = Numbers.Tenths(Math.Abs(places));
        return text is "0.0" ? "0" : (places < 0 ? "-" : "+") + text;
    }
}
