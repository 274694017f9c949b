using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Learning;

namespace BenchSim.Answers.Learn;

/// <summary>The first screen of what logs teach: how many values, which move a date, what is in the way of more, and a table.</summary>
internal static class LearnScreen
{
    private const int LongestName = 22;

    public static FirstScreen Of(LearnAnswer answer)
    {
        var result = answer.Result;
        return new FirstScreen($"{FirstScreen.Subject(result.Plan.Scenario.Name, null)}: {LearnWords.Headline(result)}")
        {
            Facts =
            [
                .. new[] { LearnWords.Houses(result), result.Volunteered > 0 ? LearnWords.Volunteered(result) : null }.OfType<string>(),
            ],
            Warnings = [.. Warnings(result)],
            Next = Next(answer),
            Table = result.Values.Any() ? Table(result) : null,
            Written = answer.Written is { } written ? LearnTelling.Written(written) : null,
        };
    }

    private static IEnumerable<string> Warnings(LearnResult result)
    {
        if (result.Crops.Any(crop => !crop.Lessons.NotGrown.IsEmpty))
        {
            yield return LearnWords.NotGrown(result);
        }

        if (result.LackingDays > 0)
        {
            yield return LearnWords.Lacking(result);
        }
    }

    private static NextStep? Next(LearnAnswer answer)
    {
        if (answer.ScenarioFolder is not { } folder || !answer.Result.Values.Any())
        {
            return null;
        }

        return answer.Written is null
            ? NextStep.Of(
                "Write the values into crops.csv",
                "learn",
                [.. answer.Scenarios.Select(source => source.Directory).OfType<string>(), "--write"]
            )
            : NextStep.Of("See the plan with them", "check", folder);
    }

    // What moves a date first.
    private static Table Table(LearnResult result)
    {
        var table = new Table(["crop", "value", ">old", ">new", "90 % interval", "moves a date"], LongestName);
        foreach (var (crop, value) in result.Values.OrderByDescending(each => each.Value.Anew.Matters))
        {
            var (kind, learned) = (value.Learned.Kind, value.Learned.Value);
            table.Add(
                LearnWords.Crop(crop),
                LearnWords.Value(kind),
                kind.InForce(learned.Old),
                kind.Text(learned.New),
                LearnWords.Interval(kind, learned),
                LearnWords.Days(value.Anew)
            );
        }

        return table;
    }
}
