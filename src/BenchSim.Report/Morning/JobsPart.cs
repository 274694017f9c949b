using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Study.Coming;

namespace BenchSim.Report.Morning;

/// <summary>What is to be done today and this week, numbered; and what is due and has no row.</summary>
internal static class JobsPart
{
    /// <summary>All jobs, with what the words mean.</summary>
    public static void Write(HtmlText html, TodaySheet sheet)
    {
        html.Add($"<section aria-labelledby=\"todo\"><h2 id=\"todo\">To do today and this week</h2>\n");
        html.Add($"<p>Answer by the numbers in one line: <b>1 ok, 2 8, 4 no</b> is the first done as listed, 8 of the second, none of ");
        html.Add($"the fourth.</p>\n<p class=\"small\">{SheetWords.Likelihoods(sheet.Coming.Seasons)}</p>\n");
        Lists(html, sheet, _ => true, "h3");
        html.Add($"</section>\n");
    }

    /// <summary>The jobs of some batches.</summary>
    public static void Lists(HtmlText html, TodaySheet sheet, Func<int, bool> isOf, string heading)
    {
        var last = sheet.Today.AddDays(ComingDays.JobDays - 1);
        List(html, sheet, heading, $"Today, {SheetWords.Day(sheet.Today)}", job => job.IsToday && isOf(job.Batch));
        List(html, sheet, heading, $"This week, up to {SheetWords.Day(last)}", job => !job.IsToday && isOf(job.Batch));
    }

    /// <summary>What is due and not confirmed.</summary>
    public static void Due(HtmlText html, TodaySheet sheet)
    {
        html.Add($"<section aria-labelledby=\"due\"><h2 id=\"due\">Due by the plan, and not confirmed</h2>\n");
        Due(html, sheet, _ => true);
        html.Add($"</section>\n");
    }

    /// <summary>The same of some batches.</summary>
    public static void Due(HtmlText html, TodaySheet sheet, Func<int, bool> isOf)
    {
        NumberedJob[] jobs = [.. sheet.Jobs.Where(job => !job.Due.IsEmpty && isOf(job.Batch))];
        if (jobs.Length == 0)
        {
            html.Add($"<p>Nothing is due without a line in the log.</p>\n");
            return;
        }

        html.Add(
            $"<p class=\"small\">No line says that it was done, so it counts as not done. Done already? Answer with its number.</p>\n"
        );
        html.Add($"<table class=\"jobs\"><thead><tr>{Head("no", "No.")}{Head("", "Job")}{Head("many", "How many")}{Head("when", "Due")}");
        html.Add($"</tr></thead><tbody>\n");
        foreach (var (number, due) in jobs.SelectMany(job => job.Due, (job, due) => (job.Number, due)))
        {
            html.Add($"<tr><td class=\"no\">{number}</td><th scope=\"row\">{TaskWords.Job(due.Kind)}: ");
            html.Add($"{SheetWords.Batch(sheet, sheet.Plan.Batches[due.Batch])}");
            if (due.Space is { } space)
            {
                html.Add($" <span class=\"way\">in {SheetWords.Space(sheet.Plan, space)} by the log</span>");
            }

            var days = sheet.Today.DayNumber - due.On.DayNumber;
            html.Add($"</th><td class=\"many\">{TaskWords.Pieces(due.Count, due.AreFlats)}</td>");
            html.Add($"<td class=\"when\">{SheetWords.Day(due.On)}{(days == 0 ? "" : $", {Numbers.Count(days, "day", "days")} ago")}");
            html.Add($"</td></tr>\n");
        }

        html.Add($"</tbody></table>\n");
    }

    private static void List(HtmlText html, TodaySheet sheet, string heading, string title, Func<ComingJob, bool> isIn)
    {
        NumberedJob[] jobs = [.. sheet.Jobs.Where(job => job.Coming is { } coming && isIn(coming))];
        html.Add($"<{new Markup(heading)}>{title}</{new Markup(heading)}>\n");
        if (jobs.Length == 0)
        {
            html.Add($"<p>Nothing that is worth a line.</p>\n");
            return;
        }

        html.Add($"<table class=\"jobs\"><thead><tr>{Head("no", "No.")}{Head("", "Job")}{Head("many", "How many")}{Head("when", "When")}");
        html.Add($"{Head("tick", "Done")}</tr></thead><tbody>\n");
        foreach (var job in jobs)
        {
            var coming = job.Coming!;
            html.Add($"<tr><td class=\"no\">{job.Number}</td><th scope=\"row\">{TaskWords.Job(job.Kind)}: ");
            html.Add($"{SheetWords.Batch(sheet, sheet.Plan.Batches[job.Batch])} ");
            html.Add($"<span class=\"way\">{SheetWords.Way(sheet.Plan, coming)}</span></th>");
            html.Add($"<td class=\"many\">{TaskWords.Pieces(coming.Pieces, coming.AreFlats)}</td><td class=\"when\">");
            html.Add($"<b>{SheetWords.Of(coming.Likelihood)}</b> ");
            html.Add($"{(coming.IsToday ? "today" : SheetWords.Days(coming.First, coming.Last))}</td>");
            html.Add($"<td class=\"tick\"><span></span></td></tr>\n");
        }

        html.Add($"</tbody></table>\n");
    }

    private static Markup Head(string kind, string title) =>
        new($"<th scope=\"col\"{(kind.Length == 0 ? "" : $" class=\"{kind}\"")}>{HtmlText.Escape(title)}</th>");
}
