using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The season at a glance: a strip a space, a cell a week, darker the fuller.</summary>
internal static class GlanceSection
{
    // A month that begins in the last twentieth of the season has no room for its name.
    private const double LastLabel = 0.95;

    private static readonly Markup s_dot = new("<span class=\"dot\">●</span>");
    private static readonly Markup s_none = new("");

    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        Week[][] weeks = [.. result.Spaces.Select(space => Week.Of(space, dates))];
        html.Add($"<section id=\"glance\" aria-labelledby=\"glance-title\"><h2 id=\"glance-title\">The season at a glance</h2>\n<figure>");
        html.Add($"<figcaption><p>{Reading(result, weeks, dates)}</p></figcaption>\n");
        Strip(html, result, weeks, dates);
        html.Add($"<p class=\"key\"><span><i class=\"sw full0\"></i>empty</span><span><i class=\"sw full1\"></i>to half</span><span>");
        html.Add($"<i class=\"sw full2\"></i>to three quarters</span><span><i class=\"sw full3\"></i>nearly full</span><span>");
        html.Add($"<i class=\"sw full4\"></i>full</span><span><i class=\"sw dot\">●</i>trays wait in one season of ten or more</span>");
        html.Add($"</p>\n");
        Table(html, result, weeks);
        html.Add($"</figure></section>\n");
    }

    private static string Reading(StudyResult result, Week[][] weeks, Dates dates)
    {
        var shortWeeks = weeks
            .SelectMany(space => space)
            .Where(week => week.IsShort)
            .Select(week => week.From)
            .Distinct()
            .Order()
            .ToArray();
        if (shortWeeks.Length == 0)
        {
            return $"No space keeps trays waiting in more than one season of ten ({Numbers.Count(result.Seasons, "season", "seasons")} "
                + "played).";
        }

        var last = dates.Plain(shortWeeks[^1].AddDays(6) > result.Plan.LastDay ? result.Plan.LastDay : shortWeeks[^1].AddDays(6));
        return $"Trays wait for a place in {Numbers.Count(shortWeeks.Length, "week", "weeks")} between {dates.Plain(shortWeeks[0])} and "
            + $"{last}, in at least one season of ten ({Numbers.Count(result.Seasons, "season", "seasons")} played).";
    }

    // Rows of cells that take the width of the page, so that a phone shows the whole season.
    private static void Strip(HtmlText html, StudyResult result, Week[][] weeks, Dates dates)
    {
        html.Add($"<div class=\"strip\" role=\"img\" aria-label=\"Season at a glance: how full each space is, by week\">\n");
        for (var space = 0; space < weeks.Length; space++)
        {
            html.Add($"<div><b>{HtmlText.Name(result.Spaces[space].Space.Name, 24)}</b><span class=\"cells\">");
            for (var week = 0; week < weeks[space].Length; week++)
            {
                var at = weeks[space][week];
                html.Add($"<i class=\"sw full{Level(at)} days{Math.Min(dates.Days - (7 * week), 7)}\" title=\"");
                html.Add($"{PlainText.Short(result.Spaces[space].Space.Name, 40)}, week from {dates.Plain(at.From)}: at most ");
                html.Add($"{Numbers.Whole(at.Held)} of {Numbers.Whole(at.Places)} places held (median)\">");
                html.Add($"{(at.IsShort ? s_dot : s_none)}</i>");
            }

            html.Add($"</span></div>\n");
        }

        html.Add($"<div><b></b><svg class=\"months\">");
        foreach (var tick in ChartAxis.OfDates(dates).TicksOrEnds().Where(tick => tick.At < dates.Days * LastLabel))
        {
            html.Add($"<text x=\"{100.0 * tick.At / dates.Days}%\" y=\"80%\">{tick.Label}</text>");
        }

        html.Add($"</svg></div></div>\n");
    }

    internal static int Level(Week week) =>
        week switch
        {
            { Held: 0 } => 0,
            { HeldShare: <= 0.5 } => 1,
            { HeldShare: <= 0.75 } => 2,
            { HeldShare: < 1 } => 3,
            _ => 4,
        };

    private static void Table(HtmlText html, StudyResult result, Week[][] weeks)
    {
        html.Add($"<details><summary>Table: places held by week, of the places there are</summary>");
        html.Add($"<p>The fullest day of each week, median of {Numbers.Count(result.Seasons, "season", "seasons")}. An asterisk: trays ");
        html.Add($"wait in one season of ten or more.</p>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Places held by week\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Week from</th>");
        foreach (var space in result.Spaces)
        {
            html.Add($"<th scope=\"col\">{HtmlText.Name(space.Space.Name, 30)}</th>");
        }

        html.Add($"</tr></thead><tbody>\n");
        for (var week = 0; week < (weeks.Length == 0 ? 0 : weeks[0].Length); week++)
        {
            html.Add($"<tr><th scope=\"row\">{Dates.Iso(weeks[0][week].From)}</th>");
            foreach (var space in weeks)
            {
                html.Add($"<td>");
                html.Add($"{Numbers.Whole(space[week].Held)} of ");
                html.Add($"{Numbers.Whole(space[week].Places)}{(space[week].IsShort ? " *" : "")}</td>");
            }

            html.Add($"</tr>\n");
        }

        html.Add($"</tbody></table></div></details>\n");
    }
}
