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
        var variant = answer.Variant is { } name ? $" with {PlainText.Quote(name)}" : "";
        words.Sentence(
            $"{PlainText.Short(result.Plan.Scenario.Name, 60)}{variant}: "
                + $"how many places {PlainText.Quote(result.Space.Name)} needs for the plan to fit "
                + $"in {ChanceWords.Setting(result.Goal.Share)} of seasons, "
                + $"at {ChanceWords.Setting(result.Goal.Confidence)} confidence; seed {result.Seed}."
        );
        words.Gap();
        foreach (var sentence in SizeSentences.Of(result))
        {
            words.Point(sentence);
        }

        words.Gap();
        var table = words.Table([">places", ">plan fits", ">interval", ">plants in time", ">late plant-days", ">interval", "goal", ""]);
        foreach (var point in result.Curve)
        {
            Add(table, result, Numbers.Whole(point.Places ?? 0), point, Note(result, point));
        }

        Add(table, result, "no limit", result.Unlimited, "");
        Add(table, result, "no limit", result.Everywhere, "on any space");
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
        else
        {
            words.Sentence(Rooms.Caution);
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
            (true, true) => "the answer; as it is",
            (true, _) => "the answer",
            (_, true) => "as it is",
            _ => "",
        };

    private static void Add(Table table, SizeResult result, string places, SizePoint point, string note) =>
        table.Add(
            places,
            ChanceWords.Fine(point.Fits.Share),
            ChanceWords.FineInterval(point.Fits),
            Numbers.Whole(point.PlantsInTime),
            Numbers.Short(point.LatePlantDays),
            double.IsNaN(point.HalfWidth)
                ? "-"
                : $"{Numbers.Short(Math.Max(0, point.LatePlantDays - point.HalfWidth))} to "
                    + $"{Numbers.Short(point.LatePlantDays + point.HalfWidth)}",
            SizeSentences.Word(result, point),
            note
        );
}
