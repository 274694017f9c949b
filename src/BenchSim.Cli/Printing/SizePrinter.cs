using BenchSim.Answers.Words;
using BenchSim.Cli.Commands;
using BenchSim.Cli.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Study.Sizing;

namespace BenchSim.Cli.Printing;

/// <summary>Prints how large a space has to be: the answer, the curve, and what it took.</summary>
internal static class SizePrinter
{
    public static void Print(Desk desk, SizeSettings settings, SizeResult result, bool hasNewHouse)
    {
        var variant = settings.With is { } name ? $" with {SafeText.Quote(name)}" : "";
        desk.SayWrapped(
            $"{SafeText.Short(result.Plan.Scenario.Name, 60)}{variant}: how many places {SafeText.Quote(result.Space.Name)} needs for the plan to fit in {Figures.Setting(result.Goal.Share)} of seasons, "
                + $"at {Figures.Setting(result.Goal.Confidence)} confidence; seed {result.Seed}."
        );
        desk.Say();
        foreach (var sentence in SizeSentences.Of(result))
        {
            Bullet(desk, sentence);
        }

        desk.Say();
        var table = new TextTable([">places", ">plan fits", ">interval", ">late plant-days", ">interval", "goal", ""]);
        foreach (var point in result.Curve)
        {
            Add(table, Figures.Whole(point.Places ?? 0), point, result.Goal.Share, Note(result, point));
        }

        Add(table, "no limit", result.Unlimited, result.Goal.Share, "");
        Add(table, "no limit", result.Everywhere, result.Goal.Share, "on any space");
        table.Print(desk);
        desk.Say();
        desk.SayWrapped(SizeSentences.Effort(result));
        if (!result.Space.Changes.IsEmpty)
        {
            desk.SayWrapped("Places are those of the first day; the later numbers of this space move by as many.");
        }

        if (result.Space.Kind == SpaceKind.Mat)
        {
            desk.SayWrapped("Heat mats: " + HeatCautions.Mats);
        }

        if (hasNewHouse)
        {
            desk.SayWrapped("A house more: " + HeatCautions.Structure);
        }

        if (settings.Out is { } place)
        {
            desk.Say($"Chart: {Path.Combine(place, "charts", "size.png")}");
            desk.Say($"Tables: {Path.Combine(place, "tables")}");
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

    private static void Add(TextTable table, string places, SizePoint point, double goal, string note) =>
        table.Add(
            places,
            Figures.Percent(point.Fits.Share),
            Figures.Interval(point.Fits),
            Figures.Short(point.LatePlantDays),
            double.IsNaN(point.HalfWidth)
                ? "-"
                : $"{Figures.Short(Math.Max(0, point.LatePlantDays - point.HalfWidth))} to {Figures.Short(point.LatePlantDays + point.HalfWidth)}",
            point.IsMet ? "met"
                : point.Fits.High < goal ? "missed"
                : "cannot be told",
            note
        );

    private static void Bullet(Desk desk, string sentence)
    {
        var mark = "- ";
        foreach (var line in Paragraph.Lines(SafeText.OneLine(sentence), 76))
        {
            desk.Say($"  {mark}{line}");
            mark = "  ";
        }
    }
}
