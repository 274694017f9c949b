using BenchSim.Answers.Compare;
using BenchSim.Answers.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Levelling;

namespace BenchSim.Answers.Level;

/// <summary>Tells the moves, the peaks before and after, the differences, and what to do.</summary>
internal static class LevelTelling
{
    public static void Tell(Passages words, LevelResult result, string? written)
    {
        words.Sentence(
            $"{SafeText.Short(result.Plan.Scenario.Name, 60)}: {Figures.Count(result.Plan.Batches.Length, "sowing", "sowings")}, "
                + $"of which {Figures.Whole(result.Movable)} may move."
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
            var use = result.Verdict == LevelVerdict.Adopt ? ". To use it, put it in the place of plan.csv." : ", as asked with --out.";
            words.Sentence($"The levelled plan is in {written}{use}");
        }
        else if (result.Levelled is not null)
        {
            words.Sentence("No file was written; --out FILE writes the levelled plan all the same.");
        }
    }

    private static void TellMoves(Passages words, LevelResult result)
    {
        if (result.Moves.IsEmpty)
        {
            return;
        }

        words.Heading($"Sowings moved: {Figures.Whole(result.Moves.Length)}, by {Figures.Count(result.ShiftDays, "day", "days")} in all");
        var table = words.Table(["batch", "planned", "levelled", ">days", "set out"]);
        foreach (var move in result.Moves)
        {
            table.Add(
                move.Batch,
                Figures.Date(move.From),
                Figures.Date(move.To),
                LevelWords.Days(move),
                move.SetOutFrom == move.SetOutTo
                    ? Figures.Date(move.SetOutTo)
                    : $"{Figures.Date(move.SetOutFrom)} becomes {Figures.Date(move.SetOutTo)}"
            );
        }

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
                + $"{Figures.Count(result.Options.ExpectedSeasons, "season", "seasons")} without limits of place"
        );
        string[] columns = [">peak as planned", "on", ">place-days over", "most over on"];
        string[] levelled = [">peak levelled", "on", ">place-days over", "most over on"];
        var table = words.Table(["", ">places", .. columns, .. hasMoves ? levelled : []]);
        foreach (var group in result.Groups)
        {
            string[] cells = [LevelWords.Group(group.Group, result.Plan.Scenario), LevelWords.Places(group.Group), .. Cells(group.Before)];
            table.Add([.. cells, .. hasMoves ? Cells(group.After) : []]);
        }

        var limit = result.Options.Fill < 1 ? $"{Figures.Percent(result.Options.Fill)} of the places" : "the places";
        words.Sentence(
            $"Place-days over are places wanted beyond {limit} of the day, added up over the days: "
                + $"{Figures.Tenths(result.OverBefore)} in all as planned"
                + (hasMoves ? $", {Figures.Tenths(result.OverAfter)} levelled. " : ". ")
                + (result.Movable > 0 && result.OverBefore > 0 ? LevelWords.Proof(result) : ""),
            2
        );
    }

    private static string[] Cells(ExpectedPeak peak) =>
        [Figures.Tenths(peak.Places), Figures.Date(peak.On), Figures.Tenths(peak.OverPlaceDays), Figures.Date(peak.WorstOn)];

    private static void TellTrial(Passages words, LevelResult result, CompareResult trial)
    {
        words.Heading(
            $"Played: both plans in {Figures.Count(trial.Seasons, "other season", "other seasons")} on the same luck, seed {trial.Seed}"
        );
        var table = words.Table(["most places wanted on any day", ">as planned", ">levelled", ">difference", ">interval"]);
        foreach (var group in result.Groups)
        {
            var peak = group.Played!;
            table.Add(
                LevelWords.Group(group.Group, result.Plan.Scenario),
                Figures.Tenths(peak.Before),
                Figures.Tenths(peak.After),
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
        var text = Figures.Tenths(Math.Abs(places));
        return text is "0.0" ? "0" : (places < 0 ? "-" : "+") + text;
    }
}
