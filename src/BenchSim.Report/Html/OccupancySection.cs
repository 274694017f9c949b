using System.Globalization;
using System.Text;
using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>Each space by day: places held, wanted and there.</summary>
internal static class OccupancySection
{
    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<section id=\"spaces\" aria-labelledby=\"spaces-title\"><h2 id=\"spaces-title\">Each space, day by day</h2>\n");
        html.Add($"<p class=\"key\"><span><i class=\"sw capacity\"></i>places there are</span><span><i class=\"sw band\">");
        html.Add($"</i>places held in eight seasons of ten</span><span><i class=\"sw held\"></i>places held, median</span><span>");
        html.Add($"<i class=\"sw wanted\"></i>places wanted if there were no limit, median</span></p>\n");
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
        Chart(html, space, dates);
        html.Add($"<details><summary>Table by week: {HtmlText.Name(space.Space.Name, 40)}</summary>");
        html.Add($"<p>For each week the fullest day; the median, and in brackets the figure that nine seasons in ten do not exceed, of ");
        html.Add($"{Numbers.Count(result.Seasons, "season", "seasons")}. Every day is in <a ");
        html.Add($"href=\"tables/daily.csv\">tables/daily.csv</a>.</p>");
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
            text.Append('.');
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
                    + $"places{Range(wanted, result.Seasons)} if there were no limit: {Numbers.Count(lacking, "place", "places")} more than there are."
            );
            text.Append(OthersTakeTheRest(space, result, worst, lacking));
            text.Append(WorstDay(space, result, lacking));
        }

        return text.ToString();
    }

    // The worst day falls on another date in each season, so what is lacking on it is more than on any one date.
    private static string WorstDay(SpaceResult space, StudyResult result, int lacking)
    {
        GroupResult? group = result.Groups.FirstOrDefault(group => group.Kind == space.Space.Kind);
        var isAlone = result.Spaces.Count(other => other.Space.Kind == space.Space.Kind) == 1;
        return group is null || !isAlone || group.Shortage.P50 <= lacking
            ? ""
            : $" On the worst day of each season, whichever date that is, the places lacking are {Spreads.Amount(group.Shortage, "place", "places")}.";
    }

    // With no limit every crop goes to its first preference: one space may lack places that others of its kind have. Where trays wait for it all the same, others do not help.
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
            : $" Where a crop may stand elsewhere, others take a part: {all} lack {Numbers.Count(ofAll, "place", "places")} that day.";
    }

    private static string Range(DaySpread day, int seasons) =>
        seasons == 1 || day.P10 == day.P90 ? "" : $" ({Numbers.Whole(day.P10)} to {Numbers.Whole(day.P90)} in eight seasons of ten)";

    private static void Chart(HtmlText html, SpaceResult space, Dates dates)
    {
        var frame = new SvgFrame(dates, 760, 220, 46, 8, 24);
        var scale = new PlaceScale(
            Enumerable.Range(0, dates.Days).Max(day => Math.Max(space.Places[day], Math.Max(space.Held[day].P90, space.Wanted[day].P50)))
        );
        frame.Open(html, $"Places by day: {PlainText.Short(space.Space.Name, 60)}");
        frame.DrawScale(html, scale);
        frame.DrawDates(html);
        html.Add($"<path class=\"band\" d=\"{Band(frame, scale, space)}\"/>\n");

        // What is held lies over the places there are, so that it is seen where the space is full.
        html.Add($"<path class=\"capacity\" d=\"{Line(frame, scale, dates.Days, day => space.Places[day])}\"/>\n");
        html.Add($"<path class=\"wanted\" d=\"{Line(frame, scale, dates.Days, day => space.Wanted[day].P50)}\"/>\n");
        html.Add($"<path class=\"held\" d=\"{Line(frame, scale, dates.Days, day => space.Held[day].P50)}\"/>\n");
        SvgFrame.Close(html);
    }

    // Steps: a number of places holds for the whole of its day. Runs of equal days are one line.
    private static Markup Line(SvgFrame frame, PlaceScale scale, int days, Func<int, int> value)
    {
        var path = new StringBuilder();
        Steps(path, 'M', frame, scale, 0, days, value);
        return new Markup(path.ToString());
    }

    private static Markup Band(SvgFrame frame, PlaceScale scale, SpaceResult space)
    {
        var path = new StringBuilder();
        var days = space.Held.Length;
        Steps(path, 'M', frame, scale, 0, days, day => space.Held[day].P90);
        StepsBack(path, frame, scale, days, day => space.Held[day].P10);
        path.Append('Z');
        return new Markup(path.ToString());
    }

    private static void Steps(StringBuilder path, char first, SvgFrame frame, PlaceScale scale, int from, int to, Func<int, int> value)
    {
        path.Append(CultureInfo.InvariantCulture, $"{first}{frame.X(from):0.#} {frame.Y(value(from), scale):0.#}");
        for (var day = from + 1; day < to; day++)
        {
            if (value(day) != value(day - 1))
            {
                path.Append(CultureInfo.InvariantCulture, $"H{frame.X(day):0.#}V{frame.Y(value(day), scale):0.#}");
            }
        }

        path.Append(CultureInfo.InvariantCulture, $"H{frame.X(to):0.#}");
    }

    private static void StepsBack(StringBuilder path, SvgFrame frame, PlaceScale scale, int days, Func<int, int> value)
    {
        path.Append(CultureInfo.InvariantCulture, $"V{frame.Y(value(days - 1), scale):0.#}");
        for (var day = days - 1; day > 0; day--)
        {
            if (value(day) != value(day - 1))
            {
                path.Append(CultureInfo.InvariantCulture, $"H{frame.X(day):0.#}V{frame.Y(value(day - 1), scale):0.#}");
            }
        }

        path.Append(CultureInfo.InvariantCulture, $"H{frame.X(0):0.#}");
    }
}
