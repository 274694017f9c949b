using System.Globalization;
using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>The work list as a page to print: a sheet for each week, with boxes to tick.</summary>
internal static class WorkListPage
{
    private const int LongestName = 120;

    /// <summary>Writes the page.</summary>
    public static string Write(PaperContent content)
    {
        var rules = content.Plan.Scenario.Rules;
        var html = new HtmlText();
        PaperPage.Open(html, $"Work list: {content.Title}");
        html.Add($"<h1>Work list: {HtmlText.Name(content.Title, LongestName)}</h1>\n");
        html.Add(
            $"<p>{Dates.Full(content.From)} to {Dates.Full(content.To)}. {Numbers.Count(content.Mondays.Length, "week", "weeks")} "
                + $"with work: "
        );
        html.Add(
            $"{Numbers.Count(content.Tasks.Length, "job", "jobs")}, {Hours(content.Tasks)} of work"
                + $"{WorkWords.Watering(content.WateringHours)}.</p>\n"
                + $"<p>{PaperWords.Dates}{PaperWords.MovesBack(rules)} {PaperWords.Hours(rules)}</p>\n"
        );
        if (content.Tasks.Any(task => task.Kind == WorkKind.Thin))
        {
            html.Add($"<p>{PaperWords.Thinning(rules)}</p>\n");
        }

        if (content.Nights.Length > 0)
        {
            html.Add($"<p>Cover tonight? {PaperWords.Nights(content.Plan, content.Nights[0].Years)}</p>\n");
        }

        if (content.Mondays.Length > 1)
        {
            Overview(html, content);
        }

        foreach (var monday in content.Mondays)
        {
            Week(html, content, monday);
        }

        PaperPage.Close(html);
        return html.ToString();
    }

    /// <summary>All weeks on one page: pieces of each job, and hours.</summary>
    private static void Overview(HtmlText html, PaperContent content)
    {
        var kinds = Enum.GetValues<WorkKind>();
        html.Add(
            $"<section><h2>All weeks</h2>\n<p class=\"small\">Trays and flats of each job.</p>\n<table><thead><tr>"
                + $"<th scope=\"col\">Week from Monday</th>"
        );
        foreach (var kind in kinds)
        {
            html.Add($"<th scope=\"col\" class=\"short number\">{TaskWords.Job(kind)}</th>");
        }

        html.Add($"<th scope=\"col\" class=\"some number\">Hours</th></tr></thead><tbody>\n");
        foreach (var monday in content.Mondays)
        {
            var tasks = TasksOf(content, monday);
            html.Add($"<tr><th scope=\"row\"><b>{Dates.Brief(monday)}</b></th>");
            foreach (var kind in kinds)
            {
                var pieces = tasks.Where(task => task.Kind == kind).Sum(task => task.Pieces);
                html.Add($"<td class=\"number\">{(pieces == 0 ? "" : Numbers.Whole(pieces))}</td>");
            }

            html.Add($"<td class=\"number\">{Numbers.Fine(tasks.Sum(task => task.Hours ?? 0))}</td></tr>\n");
        }

        html.Add($"</tbody></table></section>\n");
    }

    private static WorkTask[] TasksOf(PaperContent content, DateOnly monday) =>
        [.. content.Tasks.Where(task => TableNights.MondayOf(task.On) == monday)];

    private static void Week(HtmlText html, PaperContent content, DateOnly monday)
    {
        var tasks = TasksOf(content, monday);
        TableWeek[] nights = [.. content.Nights.Where(week => week.Monday == monday)];
        var id = Dates.Iso(monday);
        html.Add($"<section class=\"week\" aria-labelledby=\"w{id}\"><h2 id=\"w{id}\">Week of Monday {Dates.Full(monday)}</h2>\n");
        html.Add($"<p>Week {ISOWeek.GetWeekOfYear(monday.ToDateTime(TimeOnly.MinValue))}. {Summary(content, monday, tasks)}</p>\n");
        foreach (var shortage in Shortages(content, monday))
        {
            html.Add($"<p><b>Too many for the places.</b> {shortage}</p>\n");
        }

        foreach (var job in tasks.GroupBy(task => task.Kind).OrderBy(group => group.Key))
        {
            Job(html, content, job);
        }

        if (nights.Length > 0)
        {
            Harden(html, content, nights);
        }

        html.Add($"</section>\n");
    }

    // One sentence a kind: the days, and the worst of them.
    private static IEnumerable<string> Shortages(PaperContent content, DateOnly monday)
    {
        foreach (
            var kind in content
                .Shortages.Where(shortage => TableNights.MondayOf(shortage.On) == monday)
                .GroupBy(shortage => shortage.Kind)
                .OrderBy(group => group.Key)
        )
        {
            var worst = kind.MaxBy(shortage => shortage.Wanted - shortage.Places)!;
            var days = string.Join(", ", kind.Select(shortage => TaskWords.Day(shortage.On)));
            yield return $"{days}: the plan wants up to {Numbers.Count(worst.Wanted, "place", "places")} on the "
                + $"{Of(content.Plan.Scenario, worst.Kind)}, and there are {Numbers.Whole(worst.Places)}. What finds no place waits.";
        }
    }

    private static string Of(Scenario scenario, SpaceKind kind) =>
        kind == SpaceKind.Table && scenario.Spaces.Count(space => space.Kind == kind) == 1 ? "hardening table" : Trade.Plural(kind);

    private static string Summary(PaperContent content, DateOnly monday, WorkTask[] tasks)
    {
        var watering = PlannedWork.WateringHours(content.Plan, monday, monday.AddDays(6));
        return tasks.Length == 0
            ? "No job is planned; trays stand on the table"
                + $"{(watering > 0 ? $" and take {WorkWords.Hours(watering)} of watering" : "")}."
            : $"{Numbers.Count(tasks.Length, "job", "jobs")}, {Hours(tasks)} of work{WorkWords.Watering(watering)}.";
    }

    private static string Hours(IEnumerable<WorkTask> tasks) => WorkWords.Hours(tasks.Sum(task => task.Hours ?? 0));

    private static void Job(HtmlText html, PaperContent content, IGrouping<WorkKind, WorkTask> job)
    {
        var flats = job.Where(task => task.AreFlats).Sum(task => task.Pieces);
        var trays = job.Where(task => !task.AreFlats).Sum(task => task.Pieces);
        var pieces = string.Join(
            " and ",
            new[] { (trays, "tray", "trays"), (flats, "flat", "flats") }
                .Where(each => each.Item1 > 0)
                .Select(each => Numbers.Count(each.Item1, each.Item2, each.Item3))
        );
        var hours = job.All(task => task.Hours is null) ? "" : $", {Hours(job)}";
        html.Add($"<h3>{TaskWords.Job(job.Key)}: {pieces}{hours}</h3>\n");
        html.Add(
            $"<table><thead><tr><th scope=\"col\" class=\"tick\">Done</th><th scope=\"col\" class=\"day\">Day</th>"
                + $"<th scope=\"col\" class=\"batch\">Batch</th>"
        );
        html.Add(
            $"<th scope=\"col\" class=\"pieces\">How many</th><th scope=\"col\">What</th>"
                + $"<th scope=\"col\" class=\"hours number\">Hours</th></tr></thead><tbody>\n"
        );
        foreach (var task in job)
        {
            html.Add($"<tr><td class=\"tick\"><span></span></td><td class=\"day\">{TaskWords.Day(task.On)}</td>");
            html.Add($"<th scope=\"row\" class=\"batch\"><b>{HtmlText.Name(task.Batch.Order.Id, LongestName)}</b> ");
            html.Add(
                $"{HtmlText.Name(task.Batch.CropAndVariety, LongestName)}, {HtmlText.Name(task.Batch.Order.Grower, LongestName)}</th>"
            );
            html.Add(
                $"<td class=\"pieces\">{TaskWords.Pieces(task)}</td><td>{PlainText.Short(TaskWords.Detail(content.Plan, task), 240)}</td>"
            );
            html.Add($"<td class=\"hours number\">{(task.Hours is { } work ? Numbers.Fine(work) : "–")}</td></tr>\n");
        }

        html.Add($"</tbody></table>\n");
    }

    private static void Harden(HtmlText html, PaperContent content, TableWeek[] weeks)
    {
        var severalTables = content.Plan.Scenario.Spaces.Count(space => space.Kind == SpaceKind.Table) > 1;
        html.Add(
            $"<h3>Harden: cover tonight?</h3>\n<p class=\"small\">Under the days: the chance, in percent, of a night too cold to "
                + $"leave trays uncovered, "
        );
        html.Add($"from {Numbers.Count(weeks[0].Years, "year", "years")} of weather; no forecast. Grey: in one year of two or more.</p>\n");
        html.Add($"<table><thead><tr><th scope=\"col\">On the table</th><th scope=\"col\" class=\"short number\">Cold below</th>");
        foreach (var day in new[] { "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun" })
        {
            html.Add($"<th scope=\"col\" class=\"night\">{day}</th>");
        }

        html.Add(
            $"<th scope=\"col\" class=\"short number\">Cold nights expected</th>"
                + $"<th scope=\"col\" class=\"short number\">Chance of one or more</th></tr></thead><tbody>\n"
        );
        foreach (var week in weeks)
        {
            HardenRow(html, content, week, severalTables);
        }

        html.Add($"</tbody></table>\n");
        CarryIn(html, content, [.. weeks.Where(week => week.YearsWithDamaging > 0)]);
    }

    private static void CarryIn(HtmlText html, PaperContent content, TableWeek[] weeks)
    {
        if (weeks.Length == 0)
        {
            return;
        }

        var under = content.Plan.Scenario.Rules.CoverGainK > 0 ? " under the cover" : "";
        html.Add($"<p class=\"small\">Carry trays in when the forecast is colder than this{under}: ");
        foreach ((var week, var at) in weeks.Select((week, at) => (week, at)))
        {
            html.Add(
                $"{(at > 0 ? "; " : "")}{HtmlText.Name(week.Crop.Name, LongestName)} "
                    + $"{Temperatures.Words(week.Crop.DamageBelowC, content.Plan.Scenario.Units)} "
            );
            html.Add($"(in {Share(week.YearsWithDamaging, week.Years)} of years)");
        }

        html.Add($".</p>\n");
    }

    private static void HardenRow(HtmlText html, PaperContent content, TableWeek week, bool severalTables)
    {
        html.Add(
            $"<tr><th scope=\"row\"><b>{HtmlText.Name(week.Crop.Name, LongestName)}</b>, {Numbers.Count(week.MostTrays, "tray", "trays")}"
        );
        if (severalTables)
        {
            html.Add($", {HtmlText.Name(week.Table.Name, LongestName)}");
        }

        html.Add($"</th><td class=\"short number\">{Temperatures.Words(week.Crop.TableAboveC, content.Plan.Scenario.Units)}</td>");
        for (var day = 0; day < 7; day++)
        {
            var evening = week.Monday.AddDays(day);
            var night = week.Nights.FirstOrDefault(each => each.On == evening);
            var often = night.Trays > 0 && 2 * night.ColdYears >= week.Years;
            var share = night.Trays > 0 ? ChanceWords.Number((double)night.ColdYears / week.Years) : "";
            html.Add($"<td class=\"night{(often ? " often" : "")}\">{share}</td>");
        }

        html.Add($"<td class=\"short number\">{Numbers.Fine(week.ColdNights)} of {week.Nights.Length}</td>");
        html.Add($"<td class=\"short number\">{Share(week.YearsWithCold, week.Years)}</td></tr>\n");
    }

    private static string Share(int years, int of) => ChanceWords.Percent((double)years / of);
}
