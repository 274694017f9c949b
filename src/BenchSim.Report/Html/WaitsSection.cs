using System.Collections.Immutable;
using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>Who waits for whom: a strip for each space that refuses trays of another, a cell a week, darker the
/// more of them wait.</summary>
internal static class WaitsSection
{
    private const double Left = 250;
    private const double RowHeight = 26;

    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        ImmutableArray<WaitResult> waits = [.. result.Waits.Where(wait => wait.TrayDays.Most > 0)];
        html.Add($"<section id=\"waits\" aria-labelledby=\"waits-title\"><h2 id=\"waits-title\">Who waits for whom</h2>\n<figure>");
        html.Add($"<figcaption><p>{WaitSentences.Reading(result.Waits, result.Plan)}</p></figcaption>\n");
        if (!waits.IsEmpty)
        {
            var most = waits.Max(wait => wait.ByWeek.Max(week => week.Mean));
            html.Add(
                $"<p class=\"key\"><span><i class=\"sw full0\"></i>nobody waits</span><span><i class=\"sw full1\"></i>to a quarter of "
            );
            html.Add($"{Numbers.Fine(most)} tray-days a week</span><span><i class=\"sw full2\"></i>to a half</span><span>");
            html.Add($"<i class=\"sw full3\"></i>to three quarters</span><span><i class=\"sw full4\"></i>above</span></p>\n");
            Strip(html, waits, dates, most);
            Table(html, result, waits, dates);
        }

        html.Add($"</figure></section>\n");
    }

    private static void Strip(HtmlText html, ImmutableArray<WaitResult> waits, Dates dates, double most)
    {
        var frame = new SvgFrame(ChartAxis.OfDates(dates), 760, 8 + (RowHeight * waits.Length) + 24, Left, 4, 24);
        frame.Open(html, "Who waits for whom: tray-days refused by week, mean");
        frame.DrawAcross(html);
        for (var row = 0; row < waits.Length; row++)
        {
            var wait = waits[row];
            var y = 6 + (RowHeight * row);
            html.Add($"<svg x=\"0\" y=\"{y}\" width=\"{Left - 8}\" height=\"{RowHeight}\"><text x=\"0\" y=\"17\">");
            html.Add($"{WaitSentences.Heading(wait, 17)}</text></svg>");
            for (var week = 0; week < wait.ByWeek.Length; week++)
            {
                var x = frame.X(7 * week);
                var width = frame.X(Math.Min(dates.Days, (7 * week) + 7)) - x;
                html.Add($"<g><title>{WaitSentences.Heading(wait, 40)}, week from {dates.Plain(dates.Day(7 * week))}: ");
                html.Add($"{Numbers.Fine(wait.ByWeek[week].Mean)} tray-days on average</title>");
                html.Add($"<rect class=\"full{Level(wait.ByWeek[week].Mean / most)}\" x=\"{x + 0.5}\" y=\"{y}\" ");
                html.Add($"width=\"{Math.Max(0.5, width - 1)}\" height=\"{RowHeight - 4}\"/></g>\n");
            }
        }

        SvgFrame.Close(html);
    }

    private static int Level(double share) =>
        share switch
        {
            <= 0 => 0,
            <= 0.25 => 1,
            <= 0.5 => 2,
            <= 0.75 => 3,
            _ => 4,
        };

    private static void Table(HtmlText html, StudyResult result, ImmutableArray<WaitResult> waits, Dates dates)
    {
        html.Add($"<details><summary>Table: tray-days refused by week</summary>");
        html.Add(
            $"<p>The mean of {Numbers.Count(result.Seasons, "season", "seasons")}, and in brackets what nine seasons of ten do not exceed. "
        );
        html.Add(
            $"Charged to the space the trays would take first. All figures are in <a href=\"tables/waits.csv\">tables/waits.csv</a>.</p>"
        );
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Tray-days refused by week\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Week from</th>");
        foreach (var wait in waits)
        {
            html.Add($"<th scope=\"col\">{HtmlText.Name(WaitSentences.Heading(wait, 30), 80)}</th>");
        }

        html.Add($"</tr></thead><tbody>\n");
        for (var week = 0; week < waits[0].ByWeek.Length; week++)
        {
            html.Add($"<tr><th scope=\"row\">{Dates.Iso(dates.Day(7 * week))}</th>");
            foreach (var wait in waits)
            {
                html.Add($"<td>{Cell(wait.ByWeek[week])}</td>");
            }

            html.Add($"</tr>\n");
        }

        html.Add($"<tr><th scope=\"row\">season</th>");
        foreach (var wait in waits)
        {
            html.Add($"<td>{Numbers.Fine(wait.TrayDays.Mean)} ({Numbers.Whole(wait.TrayDays.P90)})</td>");
        }

        html.Add($"</tr>\n</tbody></table></div></details>\n");
    }

    private static string Cell(DaySpread week) => week.Most == 0 ? "–" : $"{Numbers.Fine(week.Mean)} ({Numbers.Whole(week.P90)})";
}
