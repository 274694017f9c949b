using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Mending;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Mend;

/// <summary>Tells what the first screen leaves out: what the changes gain together, what else helps alone, and how it was sought.</summary>
internal static class MendTelling
{
    public static void Tell(Passages words, MendAnswer answer)
    {
        var result = answer.Result;
        if (result.IsMetBefore)
        {
            return;
        }

        TellOthers(words, result);
        foreach (var space in result.FullForNothing.Skip(1))
        {
            words.Sentence(MendSentences.FullForNothing(space));
        }

        foreach (var caution in MendCautions.Of(result.Singles.Select(option => option.Change)))
        {
            words.Sentence(caution);
        }

        words.Gap();
        words.Sentence(MendSentences.Method(result));
    }

    private static void TellOthers(Passages words, MendResult result)
    {
        if (!result.Steps.IsEmpty)
        {
            words.Heading("What the changes gain together, against the plan as it is");
            var table = words.Table(["with", ">fits", ">points", ">interval", ">plants late", ">interval", ">usual", ">bad year"]);
            for (var at = 0; at < result.Steps.Length; at++)
            {
                Add(table, $"change{(at == 0 ? " 1" : $"s 1 to {at + 1}")}", result.Steps[at].After, result.Steps[at].Gain);
            }
        }

        TellMoves(words, result);
        TellOptions(words, result, "One change alone", [.. result.Singles]);
        TellOptions(words, result, "Changes of the order itself, each alone: for whoever may promise less", [.. result.OfTheOrder]);
    }

    private static void TellMoves(Passages words, MendResult result)
    {
        SowingMove[] moves = [.. result.Steps.Select(step => step.Change).OfType<SowChange>().SelectMany(sow => sow.Moves)];
        if (moves.Length < 2)
        {
            return;
        }

        words.Heading("Sowings moved; their set-out dates stay");
        var table = words.Table(["line", "grower", "planned", "sow on", ">days"]);
        foreach (var move in moves)
        {
            table.Add(
                move.Line,
                move.Grower,
                Dates.Iso(move.From),
                Dates.Iso(move.To),
                $"{Numbers.Whole(Math.Abs(move.Days))} {(move.Days < 0 ? "earlier" : "later")}"
            );
        }
    }

    private static void TellOptions(Passages words, MendResult result, string heading, MendOption[] options)
    {
        if (options.Length == 0)
        {
            return;
        }

        words.Heading(heading);
        foreach (var option in options)
        {
            words.Point(MendSentences.Option(result, option));
        }

        words.Gap();
        var table = words.Table(["", ">fits", ">points", ">interval", ">plants late", ">interval", ">usual", ">bad year"]);
        var sentences = new MendWords(result.Plan);
        foreach (var option in options)
        {
            Add(table, sentences.Short(option.Change), option.After, option.Gain);
        }
    }

    private static void Add(Table table, string name, MendFigures after, MendGain gain) =>
        table.Add(
            name,
            ChanceWords.Fine(after.Fits.Share),
            ChanceWords.SignedPoints(gain.Fits.Difference),
            ChanceWords.SignedPoints(gain.Fits),
            Numbers.Tenths(gain.Late.Difference),
            Interval(gain.Late),
            Numbers.Whole(after.LateUsual),
            Numbers.Whole(after.LateBad)
        );

    private static string Interval(MeasureChange change) =>
        double.IsNaN(change.HalfWidth) ? "-" : $"{Numbers.Tenths(change.Low)} to {Numbers.Tenths(change.High)}";
}
