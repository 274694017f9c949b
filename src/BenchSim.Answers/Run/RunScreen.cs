using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Run;

/// <summary>The first screen of a run.</summary>
internal static class RunScreen
{
    public static FirstScreen Of(RunAnswer answer)
    {
        var (result, verdict) = (answer.Result, answer.Verdict);
        var subject = FirstScreen.Subject(result.Plan.Scenario.Name, result.Variant, answer.From?.Today);
        return new FirstScreen($"{subject}: {verdict.Headline} {verdict.Chance}")
        {
            Facts =
            [
                .. answer.Required is { } required ? [RunTelling.Asked(answer, required)] : Array.Empty<string>(),
                .. answer.Since is { } since ? [SinceWords.Short(since)] : Array.Empty<string>(),
                .. verdict.Decides,
            ],
            Warnings = [.. Warnings(answer)],
            Next =
                answer.ScenarioFolder is not { } directory ? null
                : answer.From is { } from
                    ? NextStep.Of("See what stands where, and what is due", "check", directory, "--today", Dates.Iso(from.Today))
                : Next(result, directory),
            Footnote = answer.Known is { } known ? $"{answer.Verdict.Spread} {known.Sentence}".TrimStart() : answer.Verdict.Spread,
        };
    }

    private static IEnumerable<string> Warnings(RunAnswer answer)
    {
        var result = answer.Result;
        if (result.Seasons < Numbers.EnoughSeasons)
        {
            yield return result.Seasons == 1
                ? "One season says nothing about another: play at least 30, better 1,000."
                : $"{result.Seasons} seasons are a rough guide: play at least 30, better 1,000.";
        }

        if (answer.Precision is { IsReached: false })
        {
            yield return "The interval is still wider than you asked: play more with --most, or ask for less.";
        }

        if (result.Plan.Scenario.Rules.Reliefs.Contains(Relief.Aisle))
        {
            yield return Rooms.Aisle;
        }

        if (result.Plan.Scenario.Rules.Reliefs.IsEmpty && result.Groups.Any(group => group.RunsOut.Hits > 0))
        {
            yield return "Here nobody squeezes trays in. If you do, list your ways under [relief]: the plan then fails less often.";
        }

        // "check" looks at the folder as it is; what there is to know of a variant stands in its report.
        var where = result.Variant is not null
            ? answer.PageFile is null
                ? null
                : "the report"
            : answer.ScenarioFolder is { } directory
                ? $"{Shell.Program} check {Shell.Word(directory)}"
                : null;
        if (where is not null && result.Plan.Warnings.Length is > 0 and var warnings)
        {
            yield return $"{Numbers.Count(warnings, "thing", "things")} in the files to know: "
                + $"{where} lists {(warnings == 1 ? "it" : "them")}.";
        }
    }

    private static NextStep Next(StudyResult result, string directory) =>
        result.Variant is { } variant ? NextStep.Of("See what it changes", "compare", directory, "--with", variant)
        : result.Fits.Low < Verdict.ReliableFrom ? NextStep.Of("See what to change", "mend", directory)
        : result.PlantsLate.P90 > 0 ? NextStep.Of("See how many days each batch has in hand", "check", directory, "--all")
        : NextStep.Of("Print the work list, the labels and the order", "print", directory);
}
