using BenchSim.Answers.Asking;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Study.Sizing;

namespace BenchSim.Answers.Size;

/// <summary>Tells how large a space has to be: the answer, the curve, and what it took.</summary>
internal static class SizeTelling
{
    public static void Tell(Passages words, SizeAnswer answer)
    {
        var result = answer.Result;
        var variant = answer.Variant is { } name ? $" with {SafeText.Quote(name)}" : "";
        words.Sentence(
            $"{SafeText.Short(result.Plan.Scenario.Name, 60)}{variant}: "
                + $"how many places {SafeText.Quote(result.Space.Name)} needs for the plan to fit "
                + $"in {Figures.Setting(result.Goal.Share)} of seasons, "
                + $"at {Figures.Setting(result.Goal.Confidence)} confidence; seed {result.Seed}."
        );
        words.Gap();
        foreach (var sentence in SizeSentences.Of(result))
        {
            words.Point(sentence);
        }

        words.Gap();
        var table = words.Table([">places", ">plan fits", ">interval", ">late plant-days", ">interval", "goal", ""]);
        foreach (var point in result.Curve)
        {
            Add(table, Figures.Whole(point.Places ?? 0), point, result.Goal.Share, Note(result, point));
        }

        Add(table, "no limit", result.Unlimited, result.Goal.Share, "");
        Add(table, "no limit", result.Everywhere, result.Goal.Share, "on any space");
        words.Gap();
        words.Sentence(SizeSentences.Effort(result));
        if (!result.Space.Changes.IsEmpty)
        {
            words.Sentence("Places are those of the first day; the later numbers of this space move by as many.");
        }

        if (result.Space.Kind == SpaceKind.Mat)
        {
            words.Sentence("Heat mats: " + HeatCautions.Mats);
        }

        if (answer.HasNewHouse)
        {
            words.Sentence("A house more: " + HeatCautions.Structure);
        }

        if (answer.Folder is { } place)
        {
            words.Line($"Chart: {Path.Combine(place, "charts", "size.png")}");
            words.Line($"Tables: {Path.Combine(place, "tables")}");
        }
    }

    private static string Note(SizeResult result, SizePoint point) =>
        (point.Places == result.Answer?.Places, point.Places == result.Space.Places) switch
        {
            (true, true) => "enough; as it is",
            (true, _) => "enough",
            (_, true) => "as it is",
            _ => "",
        };

    private static void Add(Table table, string places, SizePoint point, double goal, string note) =>
        table.Add(
            places,
            Figures.Percent(point.Fits.Share),
            Figures.Interval(point.Fits),
            Figures.Short(point.LatePlantDays),
            double.IsNaN(point.HalfWidth)
                ? "-"
                : $"{Figures.Short(Math.Max(0, point.LatePlantDays - point.HalfWidth))} to "
                    + $"{Figures.Short(point.LatePlantDays + point.HalfWidth)}",
            point.IsMet ? "met"
                : point.Fits.High < goal ? "missed"
                : "cannot be told",
            note
        );
}
