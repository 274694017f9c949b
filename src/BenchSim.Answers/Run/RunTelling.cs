using BenchSim.Answers.Bottlenecks;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Answers.Run;

/// <summary>Tells the answer of a run.</summary>
internal static class RunTelling
{
    public static void Tell(Passages words, RunAnswer answer)
    {
        var result = answer.Result;
        foreach (var sentence in answer.Verdict.Sentences)
        {
            words.Point(sentence);
        }

        if (answer.Since is { } since)
        {
            words.Heading("What has changed:");
            foreach (var sentence in SinceWords.Of(since))
            {
                words.Point(sentence);
            }
        }

        if (result.Bottlenecks is { } bottlenecks)
        {
            words.Heading("What holds the plan back:");
            words.Gap();
            BottleneckTelling.TellFindings(words, bottlenecks);
        }

        if (answer.Required is { } required)
        {
            words.Gap();
            words.Sentence(Requirement(answer, required));
        }

        if (answer.Precision is { } precision)
        {
            words.Gap();
            words.Sentence(PrecisionWords.WhyItStopped(precision));
        }

        if (!answer.Verdict.LeavesOut.IsEmpty)
        {
            words.Heading("What these figures leave out:");
            foreach (var sentence in answer.Verdict.LeavesOut)
            {
                words.Point(sentence);
            }
        }

        words.Gap();
        if (result.Plan.Scenario.Rules.Reliefs.Contains(Relief.Aisle))
        {
            words.Sentence(Rooms.Aisle);
        }
    }

    /// <summary>What was asked for, and whether it is met.</summary>
    public static string Asked(RunAnswer answer, double required) =>
        $"Asked for: the plan fits in at least {ChanceWords.Setting(required)} of seasons. "
        + $"It fits in {ChanceWords.Fine(answer.Result.Fits.Share)}, {Numbers.Whole(answer.Result.Fits.Hits)} of "
        + $"{Numbers.Whole(answer.Result.Fits.Seasons)}: {(answer.IsRequirementMissed ? "not met" : "met")}.";

    private static string Requirement(RunAnswer answer, double required)
    {
        var fits = answer.Result.Fits;
        var asked = Asked(answer, required);
        return answer.IsRequirementClose
            ? $"{asked} The 95 % interval is {ChanceWords.FineInterval(fits)}, so more seasons could turn the answer."
            : asked;
    }
}
