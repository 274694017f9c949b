using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Dense;
using BenchSim.Study.Figures;

namespace BenchSim.Answers.Dense;

/// <summary>The first screen of dense sowing: for which crops it frees mats, and at what price.</summary>
internal static class DenseScreen
{
    private const int MostNamed = 3;
    private const int LongestName = 18;

    public static FirstScreen Of(DenseAnswer answer)
    {
        var result = answer.Result;
        return new FirstScreen($"{FirstScreen.Subject(result.Base.Scenario.Name, null, answer.From?.Today)}: {Headline(result)}")
        {
            Facts = [.. Facts(result)],
            Warnings = result.Crops.IsEmpty
                ? []
                : ["Melons, cucumbers and squashes dislike being potted up: whether a crop stands it is for you to judge."],
            Next =
                answer.ScenarioFolder is { } folder && Best(result) is { } best
                    ? NextStep.Of("See one crop in full", "dense", folder, "--crop", best.Crop.Id, "--all")
                    : null,
            Table = result.Crops.IsEmpty ? null : Table(result),
            Written = answer.Folder is { } place ? $"Chart and tables: {place}" : null,
            Footnote = result.Crops.IsEmpty
                ? null
                : $"Dense less direct, means of the same {Numbers.Count(result.Seasons, "season", "seasons")}; allows for "
                    + $"{Numbers.Count(result.Comparisons, "comparison", "comparisons")}.",
        };
    }

    private static bool FreesMats(DenseCrop crop) => crop.Of(Measures.MatTrayDays) is { IsReal: true, Difference: < 0 };

    private static bool IsLater(DenseCrop crop) => crop.Of(Measures.PlantsLate) is { IsReal: true, Difference: > 0 };

    private static DenseCrop? Best(DenseResult result) =>
        result.Crops.OrderBy(IsLater).ThenBy(crop => crop.Of(Measures.MatTrayDays).Difference).FirstOrDefault();

    private static string Headline(DenseResult result)
    {
        if (result.Crops.IsEmpty)
        {
            return result.Skipped.IsEmpty
                ? "No crop of the plan stands on a heat mat, so dense sowing frees none."
                : "No crop can be sown both ways.";
        }

        DenseCrop[] gain = [.. result.Crops.Where(crop => FreesMats(crop) && !IsLater(crop)).OrderBy(MatDays)];
        if (gain.Length > 0)
        {
            return $"Dense sowing with later potting up frees heat mats, and makes no more plants late, for {Names(gain, MatDays)}.";
        }

        DenseCrop[] sooner =
        [
            .. result.Crops.Where(crop => crop.Of(Measures.PlantsLate) is { IsReal: true, Difference: < 0 }).OrderBy(Late),
        ];
        return sooner.Length == 0
            ? "Dense sowing gains nothing here: it frees heat mats for no crop without making more plants late."
            : "Dense sowing with later potting up frees no heat mats here, but more plants are out in time: "
                + $"{Named(sooner, crop => $"{Numbers.Short(-Late(crop))} plants")}.";
    }

    private static IEnumerable<string> Facts(DenseResult result)
    {
        DenseCrop[] later = [.. result.Crops.Where(IsLater).OrderByDescending(Late)];
        if (later.Length > 0)
        {
            yield return $"It makes more plants late for {Named(later, crop => $"{Numbers.Short(Late(crop))} plants")}.";
        }

        DenseCrop[] work =
        [
            .. result.Crops.Where(crop => crop.Of(Measures.LabourHours) is { IsReal: true, Difference: > 0 }).OrderByDescending(Hours),
        ];
        if (work.Length > 0)
        {
            yield return $"It takes more work for {Named(work, crop => $"{Numbers.Tenths(Hours(crop))} hours")}.";
        }
    }

    private static double MatDays(DenseCrop crop) => crop.Of(Measures.MatTrayDays).Difference;

    private static double Late(DenseCrop crop) => crop.Of(Measures.PlantsLate).Difference;

    private static double Hours(DenseCrop crop) => crop.Of(Measures.LabourHours).Difference;

    private static string Names(DenseCrop[] crops, Func<DenseCrop, double> days) =>
        Named(crops, crop => $"{Numbers.Short(-days(crop))} tray-days");

    private static string Named(DenseCrop[] crops, Func<DenseCrop, string> amount)
    {
        string[] names = [.. crops.Take(MostNamed).Select(crop => $"{PlainText.Short(crop.Crop.Name, LongestName)} ({amount(crop)})")];
        return crops.Length > MostNamed ? $"{string.Join(", ", names)} and {crops.Length - MostNamed} more" : PlainText.List([.. names]);
    }

    private static Table Table(DenseResult result)
    {
        var table = new Table(["crop", ">mat tray-days", ">bench tray-days", ">hours", ">plants not in time"], LongestName);
        foreach (var crop in result.Crops.OrderBy(MatDays))
        {
            table.Add(
                crop.Crop.Name,
                Cell(crop, Measures.MatTrayDays),
                Cell(crop, Measures.BenchTrayDays),
                Cell(crop, Measures.LabourHours),
                Cell(crop, Measures.PlantsLate)
            );
        }

        return table;
    }

    private static string Cell(DenseCrop crop, Measure measure)
    {
        var change = crop.Of(measure);
        return change.IsReal ? CompareFigures.Signed(measure, change.Difference, Math.Min(1, CompareFigures.Decimals(change))) : "unclear";
    }
}
