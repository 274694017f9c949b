using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Levelling;

namespace BenchSim.Answers.Level;

/// <summary>The first screen of levelling: whether to use the levelled plan, whose sowings move, and what to do.</summary>
internal static class LevelScreen
{
    private const int LongestName = 24;

    public static FirstScreen Of(LevelAnswer answer)
    {
        var result = answer.Result;
        return new FirstScreen($"{FirstScreen.Subject(result.Plan.Scenario.Name, null, answer.From?.Today)}: {LevelWords.Verdict(result)}")
        {
            Facts = result.Moves.IsEmpty ? [] : [LevelWords.ByGrower(result)],
            Warnings = answer.File is { } file ? [$"The levelled plan is in {file}; your plan.csv is as it was."] : [],
            Next = answer.ScenarioFolder is { } folder ? Next(answer, folder) : null,
            Table = result.Moves.IsEmpty ? null : Table(result),
        };
    }

    private static NextStep Next(LevelAnswer answer, string folder) =>
        answer.Result.Verdict != LevelVerdict.Adopt ? NextStep.Of("See what else to change", "mend", folder)
        : answer.File is null ? NextStep.Of("Write the levelled plan beside plan.csv", "level", folder, "--write")
        : NextStep.Of("Put it in the place of plan.csv, then play it", "run", folder);

    private static Table Table(LevelResult result)
    {
        var table = new Table(["batch", "planned", "levelled", ">days", "set out"], LongestName);
        foreach (var move in result.Moves)
        {
            table.Add(move.Batch, Dates.Iso(move.From), Dates.Iso(move.To), ReplanWords.Days(move), Dates.Iso(move.SetOutTo));
        }

        return table;
    }
}
