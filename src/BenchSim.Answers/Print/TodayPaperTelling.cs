using BenchSim.Answers.Words;
using BenchSim.Report.Morning;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Print;

/// <summary>Tells which page was written, and what it holds.</summary>
internal static class TodayPaperTelling
{
    public static void Tell(Passages words, TodaySheet sheet, string place)
    {
        words.Line($"The page of {sheet.Today.DayOfWeek} {Dates.Full(sheet.Today)}:");
        words.Line(Path.Combine(place, TodayFolder.PageName), 2);
        words.Gap();
        var today = sheet.Jobs.Count(job => job.Coming is { IsToday: true });
        var week = sheet.Jobs.Count(job => job.Coming is { IsToday: false });
        var due = sheet.Jobs.Count(job => !job.Due.IsEmpty);
        words.Sentence(
            $"{Numbers.Count(today, "job", "jobs")} for today and {Numbers.Whole(week)} for this week, by "
                + $"{Numbers.Count(sheet.Coming.Seasons, "season", "seasons")} played on from the log; "
                + $"{Numbers.Whole(due)} due and not confirmed."
        );
    }
}
