using System.Globalization;
using System.Text;
using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>Each space by day: places held, wanted and there.</summary>
internal static class OccupancySection
{
    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<section id=\"spaces\" aria-labelledby=\"spaces-title\"><h2 id=\"spaces-title\">Each space, day by day</h2>\n");
        SvgPainter.Key(html, OccupancyChart.KeyOf(result.Plan));
        foreach (var space in result.Spaces)
        {
            Space(html, space, result, dates);
        }

        html.Add($"</section>\n");
    }

    private static void Space(HtmlText html, SpaceResult space, StudyResult result, Dates dates)
    {
        html.Add($"<figure><figcaption><h3>{HtmlText.Name(space.Space.Name, 80)}</h3><p>{Reading(space, result, dates)}</p>");
        html.Add($"</figcaption>\n");
        SvgPainter.Draw(html, OccupancyChart.Of(space, result));
        html.Add($"<details><summary>Table by week: {HtmlText.Name(space.Space.Name, 40)}</summary>");
        html.Add($"<p>For each week the fullest day; the median, and in brackets the figure that nine seasons in ten do not exceed, of ");
        html.Add($"{Numbers.Count(result.Seasons, "season", "seasons")}. Every day is in <a ");
        html.Add($"href=\"{OccupancyChart.Table}\">{OccupancyChart.Table}</a>.</p>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Table by week\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Week from</th><th scope=\"col\">Places</th><th scope=\"col\">Held</th><th scope=\"col\">Wanted</th>");
        html.Add($"<th scope=\"col\">Waiting</th></tr></thead><tbody>\n");
        foreach (var week in Week.Of(space, dates))
        {
            html.Add($"<tr><th scope=\"row\">{Dates.Iso(week.From)}</th><td>{Numbers.Whole(week.Places)}</td><td>");
            html.Add($"{Cell(week.Held, week.HeldHigh)}</td>");
            html.Add($"<td>{Cell(week.Wanted, week.WantedHigh)}</td><td>{Cell(week.Waiting, week.WaitingHigh)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div></details></figure>\n");
    }

    private static string Cell(int middle, int high) =>
        middle == high ? Numbers.Whole(middle) : $"{Numbers.Whole(middle)} ({Numbers.Whole(high)})";

    /// <summary>The chart in one or two sentences.</summary>
    internal static string Reading(SpaceResult space, StudyResult result, Dates dates)
    {
        var text = new StringBuilder();
        if (space.Peak.Most == 0)
        {
            text.Append("Stands empty all season.");
        }
        else
        {
            text.Append("Held on its fullest day: ").Append(Spreads.Amount(space.Peak, "place", "places"));
        }

        // Where it stands empty in most seasons, the fullest day is any day.
        if (space.Peak.P50 > 0)
        {
            text.Append("; that day falls ").Append(dates.Typical(space.PeakOn));
        }

        if (space.Peak.Most > 0)
        {
            text.Append('.').Append(InTheAisle(space, result));
        }

        if (space.DaysFull.Most > 0)
        {
            text.Append(" Days full: ").Append(Spreads.Amount(space.DaysFull, "day", "days")).Append('.');
        }
        else if (space.Peak.Most > 0)
        {
            text.Append(result.Seasons == 1 ? " Never full." : " Never full in any season.");
        }

        var worst = 0;
        for (var day = 1; day < dates.Days; day++)
        {
            if (space.Wanted[day].P50 - space.Places[day] > space.Wanted[worst].P50 - space.Places[worst])
            {
                worst = day;
            }
        }

        var lacking = space.Wanted[worst].P50 - space.Places[worst];
        if (lacking > 0)
        {
            var wanted = space.Wanted[worst];
            text.Append(
                CultureInfo.InvariantCulture,
                $" Around {dates.Plain(dates.Day(worst))} it would take {Numbers.Whole(wanted.P50)} "
                    + $"places{Range(wanted, result.Seasons)} if there were no limit: {Numbers.Count(lacking, "place", "places")} short "
                    + $"on that date."
            );
            text.Append(OthersTakeTheRest(space, result, worst, lacking));
            text.Append(WorstDay(space, result, lacking));
        }

        return text.ToString();
    }

    // Else a reader wonders how more can be held than there are places.
    private static string InTheAisle(SpaceResult space, StudyResult result) =>
        result.Plan.Scenario.Rules.Reliefs.Contains(Relief.Aisle) && space.Space.AislePlaces > 0
            ? $" Up to {Numbers.Whole(space.Space.AislePlaces)} of these places are in the aisle."
            : "";

    // The worst day falls on another date in each season, so what is lacking on it is more than on any one date.
    private static string WorstDay(SpaceResult space, StudyResult result, int lacking)
    {
        GroupResult? group = result.Groups.FirstOrDefault(group => group.Kind == space.Space.Kind);
        var isAlone = result.Spaces.Count(other => other.Space.Kind == space.Space.Kind) == 1;
        return group is null || !isAlone || group.Shortage.P50 <= lacking
            ? ""
            : " The largest shortage of each season, whichever date it falls on, is "
                + $"{Spreads.Amount(group.Shortage, "place", "places")}.";
    }

    // With no limit every crop goes to its first preference: one space may lack places that others of its kind have. Where trays wait for
    // it all the same, others do not help.
    private static string OthersTakeTheRest(SpaceResult space, StudyResult result, int day, int lacking)
    {
        GroupResult? group = result.Groups.FirstOrDefault(group => group.Kind == space.Space.Kind);
        if (group is null || result.Spaces.Count(other => other.Space.Kind == space.Space.Kind) < 2)
        {
            return "";
        }

        var ofAll = Math.Max(0, group.Wanted[day].P50 - group.Places[day]);
        var all = $"all {Trade.Plural(group.Kind)} together";
        if (ofAll >= lacking || (ofAll == 0 && space.WaitedDays.Mean > 0))
        {
            return "";
        }

        return ofAll == 0
            ? $" Where a crop may stand elsewhere, others take the rest: {all} have places enough that day."
            : $" Where a crop may stand elsewhere, others take a part: {all} are {Numbers.Count(ofAll, "place", "places")} short "
                + "that day.";
    }

    private static string Range(DaySpread day, int seasons) =>
        seasons == 1 || day.P10 == day.P90 ? "" : $" ({Numbers.Whole(day.P10)} to {Numbers.Whole(day.P90)} in eight seasons of ten)";
}
