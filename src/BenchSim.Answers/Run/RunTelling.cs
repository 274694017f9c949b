using BenchSim.Answers.Bottlenecks;
using BenchSim.Answers.Words;

namespace BenchSim.Answers.Run;

/// <summary>Tells the answer of a run.</summary>
internal static class RunTelling
{
    public static void Tell(Passages words, RunAnswer answer)
    {
        var result = answer.Result;
        words.Sentence($"{SafeText.Short(result.Plan.Scenario.Name, 60)}: {answer.Verdict.Headline}");
        words.Gap();
        foreach (var sentence in answer.Verdict.Sentences)
        {
            words.Point(sentence);
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
        if (answer.Directory is { } directory && result.Plan.Warnings.Length is > 0 and var warnings)
        {
            words.Sentence(
                $"{Figures.Count(warnings, "thing", "things")} in the files you should know: "
                    + $"{Shell.Program} check {Shell.Word(directory)} lists {(warnings == 1 ? "it" : "them")}."
            );
        }
    }

    private static string Requirement(RunAnswer answer, double required)
    {
        var fits = answer.Result.Fits;
        var asked =
            $"Asked for: the plan fits in at least {Figures.Setting(required)} of seasons. "
            + $"It fits in {Figures.Percent(fits.Share)}: {(answer.IsRequirementMissed ? "not met" : "met")}.";
        return answer.IsRequirementClose
            ? $"{asked} The 95 % interval is {Figures.Interval(fits)}, so more seasons could turn the answer."
            : asked;
    }
}
