using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Trust;

namespace BenchSim.Answers.Trust;

/// <summary>The first screen of what hangs on values: how sure the answer is, and what to measure first.</summary>
internal static class TrustScreen
{
    private const int MostRows = 6;
    private const int LongestName = 36;

    public static FirstScreen Of(TrustAnswer answer)
    {
        var result = answer.Result;
        return new FirstScreen(
            $"{FirstScreen.Subject(result.Plan.Scenario.Name, null, answer.From?.Today)}: {TrustSentences.Headline(result)}"
        )
        {
            Facts = result.Values.IsEmpty ? [] : [.. Facts(result).OfType<string>()],
            Next = answer.ScenarioFolder is { } folder && !result.Values.IsEmpty ? Next(answer, folder) : null,
            Table = result.Values.IsEmpty ? null : Table(result),
            Footnote = result.Values.IsEmpty ? null : TrustSentences.Played(result),
            Written = answer.Folder is { } written ? $"Picture and tables: {written}" : null,
        };
    }

    private static IEnumerable<string?> Facts(TrustResult result)
    {
        yield return TrustSentences.First(result) ?? "No value moves the answer much when it alone is wrong.";
        yield return result.Choice is { } choice ? TrustSentences.Choice(choice) : null;
        yield return TrustSentences.Widths(result);
    }

    private static NextStep Next(TrustAnswer answer, string folder) =>
        NextStep.Of(
            "See every value",
            "trust",
            [
                folder,
                .. answer.From is { } from ? ["--today", Dates.Iso(from.Today)] : Array.Empty<string>(),
                .. answer.Result.Choice is { } choice ? ["--with", choice.Variant] : Array.Empty<string>(),
                "--all",
            ]
        );

    private static Table Table(TrustResult result)
    {
        var table = new Table(
            ["wrong alone", result.IsFitStill ? "plants in time at the low end" : "fits at the low end", "at the high end"],
            LongestName
        );
        var measure = result.Decides.Measure;
        foreach (var value in result.InOrder.Take(MostRows))
        {
            var of = value.Value;
            table.Add(
                TrustTelling.Name(of),
                $"{DoubtWords.Figure(measure, value.AtLow[result.DecidesAt])} ({of.At(0.05)})",
                $"{DoubtWords.Figure(measure, value.AtHigh[result.DecidesAt])} ({of.At(0.95)})"
            );
        }

        return table;
    }
}
