using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report;
using BenchSim.Report.Words;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>The first screen of a sweep: how many plans fit, and the folders that fit least.</summary>
internal static class SweepScreen
{
    private const int LongestCell = 40;

    public static FirstScreen Of(SweepAnswer answer)
    {
        var result = answer.Result;
        return new FirstScreen(SweepSentences.Headline(result))
        {
            Facts = [.. SweepSentences.Facts(result)],
            Next = NextStep.Of(
                "See every plan",
                "sweep",
                [answer.File, "--merge", .. answer.Out is { } place ? ["--out", place] : Array.Empty<string>(), "--all"]
            ),
            Table = Table(result),
            Footnote = Footnote(answer),
            Written = $"Page and tables: {answer.Folder}",
        };
    }

    /// <summary>Heads of the columns.</summary>
    public static ImmutableArray<string> Heads(SweepResult result, bool isOfAll) =>
        [
            "folder",
            isOfAll || result.Folders.Length == 1 ? "plan" : "best plan",
            ">fits",
            .. result.ValueSets > 0 ? [">over sets of values"] : Array.Empty<string>(),
            .. IsWide(result, isOfAll) ? [">in time"] : Array.Empty<string>(),
            "trays wait most for",
        ];

    /// <summary>The cells of a plan.</summary>
    public static IEnumerable<string> Cells(SweepResult result, SweptFolder folder, SweptPlan plan, bool isOfAll)
    {
        yield return isOfAll ? folder.Name : ShortName(result, folder);
        yield return SweepWords.Plan(plan) + (isOfAll && folder.Plans.Length > 1 && ReferenceEquals(folder.Best, plan) ? " (best)" : "");
        yield return isOfAll ? ChanceWords.Cell(plan.Fits) : ChanceWords.Brief(plan.Fits);
        if (result.ValueSets > 0)
        {
            yield return SweepWords.OverSets(plan);
        }

        if (IsWide(result, isOfAll))
        {
            yield return ChanceWords.Percent(plan.ShareInTime);
        }

        yield return SweepWords.Tightest(plan);
    }

    // With ranges beside it the share of plants has no room on a screen.
    private static bool IsWide(SweepResult result, bool isOfAll) => isOfAll || result.ValueSets == 0;

    // The last part of the name, where that tells the folders apart.
    private static string ShortName(SweepResult result, SweptFolder folder)
    {
        var last = Last(folder);
        return result.Folders.Count(other => string.Equals(Last(other), last, StringComparison.Ordinal)) == 1 ? last : folder.Name;

        static string Last(SweptFolder folder) => folder.Name[(folder.Name.LastIndexOf('/') + 1)..];
    }

    // A row a folder, or of a single folder a row a plan.
    private static Table Table(SweepResult result)
    {
        var table = new Table(Heads(result, isOfAll: false), LongestCell);
        foreach (var folder in result.WorstFirst)
        {
            IEnumerable<SweptPlan> plans = result.Folders.Length == 1 ? folder.Plans : [folder.Best];
            foreach (var plan in plans)
            {
                table.Add([.. Cells(result, folder, plan, isOfAll: false)]);
            }
        }

        return table;
    }

    private static string Footnote(SweepAnswer answer) =>
        $"{SweepWords.Played(answer.Result)}"
        + (answer.Played is { Found: > 0 } played ? $" {SweepSentences.Tasks(played)}" : "")
        + $" All plans: {SweepFolder.Table}.";
}
