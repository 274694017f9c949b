using BenchSim.Answers.Words;
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
            $"{SafeText.Short(result.Plan.Scenario.Name, 60)}: {SafeText.Quote(result.Line.Id)} in successions of "
                + $"{Figures.Count(plants, "plant", "plants")} each, the first as in the plan; "
                + $"{Figures.Count(result.Seasons, "season", "seasons")} of each schedule on the same luck, seed {result.Seed}."
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
                Figures.Count(each.Schedule.Every, "day", "days"),
                Figures.Whole(each.Schedule.Times),
                Figures.Whole((long)plants * each.Schedule.Times),
            ];
            table.Add(
                each.Figures is { } figures ? [.. head, .. Cells(figures)] : [.. head, "not played", "-", "-", "-", "-", "-", "-", "-", "-"]
            );
        }

        foreach (var each in result.Schedules.Where(each => each.Figures is null))
        {
            words.Sentence(
                $"Every {Figures.Count(each.Schedule.Every, "day", "days")}, "
                    + $"{Figures.Count(each.Schedule.Times, "time", "times")}, was not played: {each.WhyNot}.",
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
        words.Sentence(
            "Each interval holds by itself with 95 % confidence; of many schedules the best looking is a little flattered by luck."
        );
    }

    private static string[] Cells(ScheduleFigures figures) =>
        [
            Figures.Date(figures.LastSetOut),
            Figures.Percent(figures.Fits.Share),
            Figures.Interval(figures.Fits),
            Amount(figures.LatePlantDays),
            Amount(figures.OwnLatePlantDays),
            Amount(figures.GapDays),
            Figures.Percent(figures.WithoutGap.Share),
            Figures.Interval(figures.WithoutGap),
            Figures.Plain(Math.Round(figures.NeverOut.Mean, 2)),
        ];

    private static string Amount(Estimate estimate) =>
        double.IsNaN(estimate.HalfWidth) || estimate.HalfWidth == 0
            ? Figures.Short(estimate.Mean)
            : $"{Figures.Short(estimate.Mean)} "
                + $"({Figures.Short(Math.Max(0, estimate.Mean - estimate.HalfWidth))} to "
                + $"{Figures.Short(estimate.Mean + estimate.HalfWidth)})";

    private static string Supply(SupplyRule supply) =>
        supply.AfterDays == 0
            ? $"One set-out supplies for {Figures.Count(supply.Days, "day", "days")} from the day on which half of its trays are out."
            : $"One set-out supplies for {Figures.Count(supply.Days, "day", "days")}, "
                + $"from {Figures.Count(supply.AfterDays, "day", "days")} after the day on which half of its trays are out.";
}
