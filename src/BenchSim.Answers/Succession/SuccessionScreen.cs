using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Succession;

namespace BenchSim.Answers.Succession;

/// <summary>The first screen of successions: which schedule works, and what it gives.</summary>
internal static class SuccessionScreen
{
    private const int LongestCell = 24;

    public static FirstScreen Of(SuccessionAnswer answer)
    {
        var result = answer.Result;
        ScheduleResult[] played =
        [
            .. result
                .Schedules.Where(each => each.Figures is not null)
                .OrderByDescending(Works)
                .ThenByDescending(each => Works(each) ? each.Figures!.Fits.Hits : each.Figures!.WithoutGap.Hits)
                .ThenByDescending(each => each.Figures!.LastSetOut),
        ];
        return new FirstScreen($"{PlainText.Short(result.Plan.Scenario.Name, 40)}: {Headline(result, played)}")
        {
            Facts = [.. Facts(result, played)],
            Next =
                answer.ScenarioFolder is { } folder && played.Length > 0
                    ? NextStep.Of(
                        $"Write every_days {played[0].Schedule.Every} and times {played[0].Schedule.Times} in its line of plan.csv, "
                            + "then play it",
                        "run",
                        folder
                    )
                    : null,
            Table = Table(result),
            Footnote =
                $"The same {Numbers.Count(result.Seasons, "season", "seasons")} of each schedule; the best of many looks a little "
                + "better than it is.",
        };
    }

    // A schedule works where it leaves no gap in nine seasons of ten; of those that do, the best is the one with which the plan fits most
    // often, and of equals the one that supplies longest.
    private static bool Works(ScheduleResult each) => each.Figures!.WithoutGap.Share >= Verdict.ReliableFrom;

    private static string Headline(SuccessionResult result, ScheduleResult[] played)
    {
        var name = PlainText.Quote(PlainText.Short(result.Line.Id, 24));
        if (played.Length == 0)
        {
            return $"No schedule of {name} can be played: {result.Schedules[0].WhyNot}.";
        }

        var best = played[0];
        var what =
            $"{name} every {Numbers.Count(best.Schedule.Every, "day", "days")}, "
            + $"{Numbers.Count(best.Schedule.Times, "time", "times")}";
        var fits = best.Figures!.Fits.Share >= Verdict.ReliableFrom;
        var how = fits ? "works best" : "supplies best";
        return (Works(best) ? $"{what}, {how}: " : $"No schedule works in nine seasons of ten. The nearest is {what}: ")
            + $"no gap in supply in {ChanceWords.Fine(best.Figures.WithoutGap.Share)} of seasons{(fits ? ";" : ", but")} the whole plan "
            + $"then fits in {ChanceWords.Fine(best.Figures.Fits.Share)}.";
    }

    private static IEnumerable<string> Facts(SuccessionResult result, ScheduleResult[] played)
    {
        if (played.Length > 0 && played[0].Figures is { } best)
        {
            yield return $"Its last set-out is {new Dates(result.Plan).Plain(best.LastSetOut)}; a season has "
                + $"{Numbers.Short(best.GapDays.Mean)} days without supply on average, and "
                + $"{Numbers.Short(best.OwnLatePlantDays.Mean)} late plant-days of its own.";
        }

        var unplayed = result.Schedules.Length - played.Length;
        if (unplayed > 0 && played.Length > 0)
        {
            yield return $"{Numbers.Count(unplayed, "schedule", "schedules")} could not be played: --all says why.";
        }
    }

    private static Table Table(SuccessionResult result)
    {
        var table = new Table([">every", ">times", "last set-out", ">plan fits", ">no gap", ">gap days", ">late plant-days"], LongestCell);
        foreach (var each in result.Schedules)
        {
            string[] head = [Numbers.Count(each.Schedule.Every, "day", "days"), Numbers.Whole(each.Schedule.Times)];
            table.Add(
                each.Figures is { } figures
                    ?
                    [
                        .. head,
                        Dates.Iso(figures.LastSetOut),
                        ChanceWords.Fine(figures.Fits.Share),
                        ChanceWords.Fine(figures.WithoutGap.Share),
                        Numbers.Short(figures.GapDays.Mean),
                        Numbers.Short(figures.LatePlantDays.Mean),
                    ]
                    : [.. head, "not played", "-", "-", "-", "-"]
            );
        }

        return table;
    }
}
