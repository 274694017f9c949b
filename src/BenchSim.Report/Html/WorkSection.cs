using System.Collections.Immutable;
using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The work, by week.</summary>
internal static class WorkSection
{
    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        var work = result.Work;
        html.Add($"<section id=\"work\" aria-labelledby=\"work-title\"><h2 id=\"work-title\">The work, week by week</h2>\n<figure>");
        html.Add($"<figcaption><p>{Reading(result, dates)}</p></figcaption>\n");
        html.Add($"<p class=\"key\"><span><i class=\"sw work\"></i>hours, mean</span><span><i class=\"sw high\">");
        html.Add($"</i>hours that nine seasons in ten do not exceed</span></p>\n");
        Chart(html, work, dates);
        html.Add($"<details><summary>Tables of the work</summary>");
        html.Add($"<p>Of {Numbers.Count(result.Seasons, "season", "seasons")}: the median, and in brackets eight seasons of ten.</p>");
        html.Add($"<table><thead><tr><th scope=\"col\">Job</th><th scope=\"col\">In the season</th></tr></thead><tbody>\n");
        foreach (var figure in WorkFigures.All.OfType<AmountFigure<WorkSeason>>())
        {
            html.Add($"<tr><th scope=\"row\">{PlainText.Capital(figure.Name)}</th><td>{Spreads.Cell(work[figure])}</td></tr>\n");
        }

        html.Add($"</tbody></table><table><thead><tr><th scope=\"col\">Week from</th><th scope=\"col\">Hours, mean</th>");
        html.Add($"<th scope=\"col\">Nine seasons in ten at most</th></tr></thead><tbody>\n");
        for (var week = 0; week < work.HoursByWeek.Length; week++)
        {
            html.Add($"<tr><th scope=\"row\">{Dates.Iso(dates.Day(7 * week))}</th><td>{Numbers.Short(work.HoursByWeek[week].Mean)}</td>");
            html.Add($"<td>{Numbers.Short(work.HoursByWeek[week].P90)}</td></tr>\n");
        }

        html.Add($"</tbody></table></details></figure></section>\n");
    }

    private static string Reading(StudyResult result, Dates dates)
    {
        ImmutableArray<double> hours = [.. result.Work.HoursByWeek.Select(week => week.Mean)];
        var work = result.Work.Hours;
        var counted = WorkWords.Counted(result.Plan.Scenario.Rules);
        var all = work.Least.Equals(work.Most)
            ? $"{counted} take {Numbers.Short(work.P50)} " + $"{(work.P50 == 1 ? "hour" : "hours")} in every season played."
            : $"{counted} take {Spreads.Amount(work, "hour", "hours")}.";
        if (hours.IsEmpty || hours.Max() <= 0)
        {
            return all;
        }

        var busiest = hours.IndexOf(hours.Max());
        return $"{all} The busiest week begins on {dates.Plain(dates.Day(7 * busiest))}: {Numbers.Short(hours[busiest])} hours on average, "
            + $"at most {Numbers.Short(result.Work.HoursByWeek[busiest].P90)} in nine seasons of ten "
            + $"({Numbers.Count(result.Seasons, "season", "seasons")} played).";
    }

    private static void Chart(HtmlText html, WorkResult work, Dates dates)
    {
        var frame = new SvgFrame(ChartAxis.OfDates(dates), 760, 180, 46, 8, 24);
        var most = work.HoursByWeek.Select(week => Math.Max(week.Mean, week.P90)).DefaultIfEmpty(1).Max();
        var up = ChartAxis.OfPlaces((int)Math.Ceiling(most));
        frame.Open(html, "Hours of work by week");
        frame.DrawUp(html, up);
        frame.DrawAcross(html);
        for (var week = 0; week < work.HoursByWeek.Length; week++)
        {
            var x = frame.X(7 * week);
            var width = Math.Max(1, frame.X(Math.Min(dates.Days, (7 * week) + 7)) - x - 2);
            var top = frame.Y(work.HoursByWeek[week].Mean, up);
            var high = frame.Y(work.HoursByWeek[week].P90, up);
            html.Add($"<rect class=\"work\" x=\"{x + 1}\" y=\"{top}\" width=\"{width}\" height=\"{frame.PlotBottom - top}\"/>");
            html.Add($"<line class=\"high\" x1=\"{x + 1}\" y1=\"{high}\" x2=\"{x + 1 + width}\" y2=\"{high}\"/>\n");
        }

        SvgFrame.Close(html);
    }
}
