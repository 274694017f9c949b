using BenchSim.Answers.Mend;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Bottlenecks;

/// <summary>The first screen of the bottlenecks: which space, what a little more room gives, and how to size it.</summary>
internal static class BottleneckScreen
{
    private const int MostFacts = 2;
    private const int LongestName = 24;

    public static FirstScreen Of(BottleneckAnswer answer)
    {
        var result = answer.Result;
        var sentences = BottleneckSentences.Of(result);
        return new FirstScreen($"{FirstScreen.Subject(result.Plan.Scenario.Name, null, answer.From?.Today)}: {sentences[0]}")
        {
            Facts = [.. sentences.Skip(1).Take(MostFacts)],
            Warnings = [Rooms.Caution],
            Next = answer.ScenarioFolder is { } folder ? Next(result, folder) : null,
            Table = Table(result),
            Footnote =
                $"The same {Numbers.Count(result.Seasons, "season", "seasons")} of each; "
                + $"each range allows for {Numbers.Count(result.Comparisons, "comparison", "comparisons")}.",
        };
    }

    private static NextStep Next(BottleneckResult result, string folder) =>
        BottleneckSentences.Bottleneck(result) is { } first && !result.Pairs.Any(pair => pair.HelpsTogether)
            ? NextStep.Of("See how much of it is enough", "size", folder, "--space", first.Space.Id)
            : NextStep.Of("See what else to change", "mend", folder);

    private static Table Table(BottleneckResult result)
    {
        var table = new Table(["space", ">more room", ">more plants in time", ">plan then fits"], LongestName);
        foreach (var trial in result.Larger.Concat(result.Unlimited))
        {
            table.Add(
                trial.Space.Name,
                trial.PlacesAdded is { } added ? Numbers.Count(added, "place", "places") : "no limit",
                trial.PlantsInTime switch
                {
                    { Differing: 0 } => "0",
                    { IsReal: true } plants => Numbers.Short(plants.Difference),
                    _ => "unclear",
                },
                ChanceWords.Fine(trial.Fits.Variant.Share)
            );
        }

        return table;
    }
}
