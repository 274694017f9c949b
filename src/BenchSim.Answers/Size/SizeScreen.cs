using System.Globalization;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Sizing;

namespace BenchSim.Answers.Size;

/// <summary>The first screen of a size: how many places are enough, or from which to which it is open.</summary>
internal static class SizeScreen
{
    private const int MostSeasons = 1_000_000;
    private const int MoreSeasons = 4;
    private const int LongestCell = 24;

    public static FirstScreen Of(SizeAnswer answer)
    {
        var result = answer.Result;
        var sentences = SizeSentences.Of(result);
        return new FirstScreen($"{FirstScreen.Subject(result.Plan.Scenario.Name, answer.Variant, answer.From?.Today)}: {sentences[0]}")
        {
            Facts = [.. sentences.Skip(1).Take(2)],
            Warnings = [Rooms.Caution],
            Next = answer.ScenarioFolder is { } folder ? Next(answer, folder) : null,
            Table = Table(result),
            Footnote =
                $"The same {Numbers.Count(result.Seasons, "season", "seasons")} of each number of places; "
                + $"ranges hold in {ChanceWords.Setting(result.Goal.Confidence)} of cases.",
            Written = answer.Folder is { } place ? $"Chart and tables: {place}" : null,
        };
    }

    private static NextStep? Next(SizeAnswer answer, string folder)
    {
        var result = answer.Result;
        string[] asked = ["--space", result.Space.Id, .. answer.Variant is { } name ? new[] { "--with", name } : []];
        if (SizeSentences.OpenPoints(result).IsEmpty)
        {
            return result.Answer is null
                ? NextStep.Of("See what else to change", "mend", folder)
                : NextStep.Of("Play the plan", "run", folder);
        }

        var seasons = Math.Min(MostSeasons, (long)result.Seasons * MoreSeasons);
        return NextStep.Of(
            "Play more seasons to tell",
            "size",
            [folder, .. asked, "--goal", result.Goal.Share.ToString("0.####", CultureInfo.InvariantCulture), "--seasons", $"{seasons}"]
        );
    }

    // As it is, the largest number that is too few, the smallest that is enough or else the best for plants, and no limit.
    private static Table Table(SizeResult result)
    {
        var table = new Table([">places", ">plan fits", ">range", ">plants in time", ""], LongestCell);
        foreach (var point in result.Curve.Where(point => IsTold(result, point)))
        {
            table.Add(
                Numbers.Whole(point.Places ?? 0),
                ChanceWords.Fine(point.Fits.Share),
                ChanceWords.FineInterval(point.Fits),
                Numbers.Whole(point.PlantsInTime),
                SizeSentences.Word(result, point) + (point.Places == result.Space.Places ? ", as it is" : "")
            );
        }

        table.Add(
            "no limit",
            ChanceWords.Fine(result.Unlimited.Fits.Share),
            ChanceWords.FineInterval(result.Unlimited.Fits),
            Numbers.Whole(result.Unlimited.PlantsInTime),
            SizeSentences.Word(result, result.Unlimited)
        );
        return table;
    }

    private static bool IsTold(SizeResult result, SizePoint point) =>
        point.Places == result.Space.Places
        || point == result.Answer
        || (result.Answer is null && point == SizeSentences.MostInTime(result))
        || point == result.Curve.LastOrDefault(each => each.Fits.High < result.Goal.Share && !(each.Places > result.Answer?.Places));
}
