using BenchSim.Answers.Words;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Trust;

/// <summary>The first screen of what hangs on values: how sure the answer is, and what to measure first.</summary>
internal static class TrustScreen
{
    private const int MostRows = 6;
    private const int LongestName = 36;

    public static FirstScreen Of(TrustAnswer answer)
    {
        var result = answer.Result;
        var list = TrustList.Of(result, MostRows);
        return new FirstScreen($"{FirstScreen.Subject(result.Plan.Scenario.Name, null, answer.From?.Today)}: {list.Headline}")
        {
            Facts = list.Facts,
            Next = answer.ScenarioFolder is { } folder && !result.Values.IsEmpty ? Next(answer, folder) : null,
            Table = result.Values.IsEmpty ? null : Table(list),
            Footnote = list.Played,
            Written = answer.Folder is { } written ? $"Picture and tables: {written}" : null,
        };
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

    private static Table Table(TrustList list)
    {
        var table = new Table([.. list.Columns], LongestName);
        foreach (var row in list.Rows)
        {
            table.Add([.. row]);
        }

        return table;
    }
}
