using System.Globalization;
using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>The work list as a page to print: a sheet for each week, with boxes to tick.</summary>
internal static class WorkListPage
{
    private const int LongestName = 120;

    /// <summary>Writes the page.</summary>
    public static string Write(PaperContent content)
    {
        var html = new HtmlText();
        PaperPage.Open(html, $"Work list: {content.SiteName}");
        html.Add($"<h1>Work list: {HtmlText.Name(content.SiteName, LongestName)}</h1>\n");
        html.Add($"<p>{Dates.Full(content.From)} to {Dates.Full(content.To)}. {Numbers.Count(content.Mondays.Length, "week", "weeks")} with work: ");
        html.Add($"{Numbers.Count(content.Tasks.Length, "job", "jobs")}, {Hours(content.Tasks)} of work.</p>\n<p>{PaperWords.Dates}</p>\n");
        if (content.Tasks.Any(task => task.Kind == WorkKind.Thin))
            html.Add($"<p>{PaperWords.Thinning}</p>\n");
        if (content.Nights.Length > 0)
            html.Add($"<p>Cover tonight? {PaperWords.Nights(content.Plan, content.Nights[0].Years)}</p>\n");
        foreach (DateOnly monday in content.Mondays)
            Week(html, content, monday);
        PaperPage.Close(html);
        return html.ToString();
    }

    private static void Week(HtmlText html, PaperContent content, DateOnly monday)
    {
        WorkTask[] tasks = [.. content.Tasks.Where(task => TableNights.MondayOf(task.On) == monday)];
        TableWeek[] nights = [.. content.Nights.Where(week => week.Monday == monday)];
        string id = Dates.Iso(monday);
        html.Add($"<section class=\"week\" aria-labelledby=\"w{id}\"><h2 id=\"w{id}\">Week of Monday {Dates.Full(monday)}</h2>\n");
        html.Add($"<p>Week {ISOWeek.GetWeekOfYear(monday.ToDateTime(TimeOnly.MinValue))}. {Summary(tasks)}</p>\n");
        foreach (IGrouping<WorkKind, WorkTask> job in tasks.GroupBy(task => task.Kind).OrderBy(group => group.Key))
            Job(html, content, job);
        if (nights.Length > 0)
            Harden(html, content, nights);
        html.Add($"</section>\n");
    }

    private static string Summary(WorkTask[] tasks) => tasks.Length == 0
        ? "No job is planned; trays stand on the table."
        : $"{Numbers.Count(tasks.Length, "job", "jobs")}, {Hours(tasks)} of work.";

    private static string Hours(IEnumerable<WorkTask> tasks)
    {
        string hours = Numbers.Fine(tasks.Sum(task => task.Hours ?? 0));
        return hours == "1" ? "1 hour" : hours + " hours";
    }

    private static void Job(HtmlText html, PaperContent content, IGrouping<WorkKind, WorkTask> job)
    {
        int flats = job.Where(task => task.AreFlats).Sum(task => task.Pieces);
        int trays = job.Where(task => !task.AreFlats).Sum(task => task.Pieces);
        string pieces = string.Join(" and ", new[] { (trays, "tray", "trays"), (flats, "flat", "flats") }.Where(each => each.Item1 > 0).Select(each => Numbers.Count(each.Item1, each.Item2, each.Item3)));
        string hours = job.Key == WorkKind.Thin ? "" : $", {Hours(job)}";
        html.Add($"<h3>{TaskWords.Job(job.Key)}: {pieces}{hours}</h3>\n");
        html.Add($"<table><thead><tr><th scope=\"col\" class=\"tick\">Done</th><th scope=\"col\" class=\"day\">Day</th><th scope=\"col\" class=\"batch\">Batch</th>");
        html.Add($"<th scope=\"col\" class=\"pieces\">How many</th><th scope=\"col\">What</th><th scope=\"col\" class=\"hours number\">Hours</th></tr></thead><tbody>\n");
        foreach (WorkTask task in job)
        {
            html.Add($"<tr><td class=\"tick\"><span></span></td><td class=\"day\">{TaskWords.Day(task.On)}</td>");
            html.Add($"<th scope=\"row\" class=\"batch\"><b>{HtmlText.Name(task.Batch.Order.Id, LongestName)}</b> ");
            html.Add($"{HtmlText.Name(task.Batch.Crop.Name, LongestName)}, {HtmlText.Name(task.Batch.Order.Grower, LongestName)}</th>");
            html.Add($"<td class=\"pieces\">{TaskWords.Pieces(task)}</td><td>{PlainText.Short(TaskWords.Detail(content.Plan, task), 240)}</td>");
            html.Add($"<td class=\"hours number\">{(task.Hours is { } work ? Numbers.Fine(work) : "–")}</td></tr>\n");
        }

        html.Add($"</tbody></table>\n");
    }

    private static void Harden(HtmlText html, PaperContent content, TableWeek[] weeks)
    {
        html.Add($"<h3>Harden: cover tonight?</h3>\n<p class=\"small\">Chance of a night too cold to leave trays uncovered, ");
        html.Add($"from {Numbers.Count(weeks[0].Years, "year", "years")} of weather; no forecast. Grey: one night in two or more.</p>\n");
        html.Add($"<table><thead><tr><th scope=\"col\">On the table</th>");
        foreach (string day in new[] { "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun" })
            html.Add($"<th scope=\"col\" class=\"night\">{day}</th>");
        html.Add($"</tr></thead><tbody>\n");
        foreach (TableWeek week in weeks)
            HardenRow(html, content, week);
        html.Add($"</tbody></table>\n");
    }

    private static void HardenRow(HtmlText html, PaperContent content, TableWeek week)
    {
        var units = content.Plan.Scenario.Units;
        html.Add($"<tr><th scope=\"row\">{HtmlText.Name(week.Crop.Name, LongestName)}, {Numbers.Count(week.MostTrays, "tray", "trays")}");
        html.Add($"<br/><span class=\"small\">{HtmlText.Name(week.Table.Name, LongestName)}; cold below {Temperatures.Words(week.Crop.HardenAboveC, units)}. ");
        html.Add($"{Expected(content, week)}</span></th>");
        for (int day = 0; day < 7; day++)
        {
            DateOnly evening = week.Monday.AddDays(day);
            TableNight night = week.Nights.FirstOrDefault(each => each.On == evening);
            bool often = night.Trays > 0 && 2 * night.ColdYears >= week.Years;
            html.Add($"<td class=\"night{(often ? " often" : "")}\">{(night.Trays > 0 ? Share(night.ColdYears, week.Years) : "")}</td>");
        }

        html.Add($"</tr>\n");
    }

    private static string Expected(PaperContent content, TableWeek week)
    {
        string cold = week.YearsWithCold == 0
            ? "No cold night is expected."
            : $"Expect {Numbers.Short(week.ColdNights)} cold of {Numbers.Count(week.Nights.Length, "night", "nights")}; one or more in {Share(week.YearsWithCold, week.Years)} of years.";
        return week.YearsWithDamaging == 0
            ? cold
            : $"{cold} Carry in below {Temperatures.Words(week.Crop.DamageBelowC, content.Plan.Scenario.Units)}"
                + $"{(content.Plan.Scenario.Rules.CoverGainK > 0 ? " under the cover" : "")}: in {Share(week.YearsWithDamaging, week.Years)} of years.";
    }

    private static string Share(int years, int of) => Numbers.Percent((double)years / of) + " %";
}
