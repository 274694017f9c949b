using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Results;
using BenchSim.Study.Succession;

namespace BenchSim.Answers.Succession;

/// <summary>Tells a table of schedules.</summary>
internal static class SuccessionTelling
{
    public static void Tell(Passages words, SuccessionResult result)
    {
        var plants = result.Line.Orders[0].Plants;
        words.Sentence(
            $"{PlainText.Short(result.Plan.Scenario.Name, 60)}: {PlainText.Quote(result.Line.Id)} in successions of "
                + $"{Numbers.Count(plants, "plant", "plants")} each, the first as in the plan; "
                + $"{Numbers.Count(result.Seasons, "season", "seasons")} of each schedule, the same ones, seed {result.Seed}."
        );
        words.Gap();
        var table = words.Table(
            [
                ">every",
                ">times",
                ">plants",
                "last set-out",
                ">plan fits",
                "95 % interval",
                ">late plant-days",
                ">of these alone",
                ">gap days",
                ">no gap",
                "95 % interval",
                ">never out",
            ],
            longestCell: 60
        );
        foreach (var each in result.Schedules)
        {
            string[] head =
            [
                Numbers.Count(each.Schedule.Every, "day", "days"),
                Numbers.Whole(each.Schedule.Times),
                Numbers.Whole((long)plants * each.Schedule.Times),
            ];
            table.Add(
                each.Figures is { } figures ? [.. head, .. Cells(figures)] : [.. head, "not played", "-", "-", "-", "-", "-", "-", "-", "-"]
            );
        }

        foreach (var each in result.Schedules.Where(each => each.Figures is null))
        {
            words.Sentence(
                $"Every {Numbers.Count(each.Schedule.Every, "day", "days")}, "
                    + $"{Numbers.Count(each.Schedule.Times, "time", "times")}, was not played: {each.WhyNot}.",
                2
            );
        }

        words.Gap();
        words.Sentence(
            "Plan fits: the chance that the whole plan fits with these successions in it. "
                + "Late plant-days are those of the whole plan, and of the successions alone, a season."
        );
        words.Sentence(
            Supply(result.Supply)
                + " Gap days are days without supply between the first and the last set-out, a season; "
                + "no gap is the chance of a season without one in which every succession goes out. "
                + "Never out: successions of which nothing reaches the field, a season."
        );
        words.Sentence("Each interval holds by itself with 95 % confidence; the best-looking of many schedules is partly best by chance.");
    }

    private static string[] Cells(ScheduleFigures figures) =>
        [
            Dates.Iso(figures.LastSetOut),
            ChanceWords.Fine(figures.Fits.Share),
            ChanceWords.FineInterval(figures.Fits),
            Amount(figures.LatePlantDays),
            Amount(figures.OwnLatePlantDays),
            Amount(figures.GapDays),
            ChanceWords.Fine(figures.WithoutGap.Share),
            ChanceWords.FineInterval(figures.WithoutGap),
            Numbers.Plain(Math.Round(figures.NeverOut.Mean, 2)),
        ];

    private static string Amount(Estimate estimate)
    {
        var mean = Numbers.Short(estimate.Mean);
        if (double.IsNaN(estimate.HalfWidth) || estimate.HalfWidth == 0)
        {
            return mean;
        }

        var from = Numbers.Short(Math.Max(0, estimate.Mean - estimate.HalfWidth));
        var to = Numbers.Short(estimate.Mean + estimate.HalfWidth);
        return string.Equals(from, to, StringComparison.Ordinal) ? mean : $"{mean} ({from} to {to})";
    }

    private static string Supply(SupplyRule supply) =>
        supply.AfterDays == 0
            ? $"One set-out supplies for {Numbers.Count(supply.Days, "day", "days")} from the day on which half of its trays are out."
            : $"One set-out supplies for {Numbers.Count(supply.Days, "day", "days")}, "
                + $"from {Numbers.Count(supply.AfterDays, "day", "days")} after the day on which half of its trays are out.";
}
