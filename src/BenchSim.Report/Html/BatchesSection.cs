using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The batches: a chart of their median dates, and a table.</summary>
internal static class BatchesSection
{
    private const double Left = 190;
    private const double RowHeight = 18;

    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<section id=\"batches\" aria-labelledby=\"batches-title\"><h2 id=\"batches-title\">The batches</h2>\n<figure>");
        html.Add($"<figcaption><p>{Reading(result)}</p></figcaption>\n");
        html.Add($"<p class=\"key\"><span><i class=\"sw mat\"></i>on the mats</span><span><i class=\"sw bench\"></i>on the benches</span>");
        html.Add($"<span><i class=\"sw table\"></i>on the hardening table</span><span><i class=\"sw pot\"></i>potted up</span><span>");
        html.Add(
            $"<i class=\"sw diamond\">◆</i>wanted in the field</span><span><i class=\"sw wait\"></i>so many days a tray waited for a place, mean</span>"
        );
        html.Add($"<span><i class=\"sw hold\"></i>so many days a tray was held by the weather alone, mean</span></p>\n");
        Chart(html, BatchBar.ByGrower(result), dates);
        Table(html, result, dates);
        html.Add($"</figure>\n");
        WaysPart.Write(html, result);
        html.Add($"</section>\n");
    }

    internal static string Reading(StudyResult result)
    {
        // The median of a batch that goes out in few seasons is the median of those few.
        BatchResult[] usual = [.. result.Batches.Where(batch => batch.OutLast.IsUsual())];
        BatchResult[] rare = [.. result.Batches.Where(batch => !batch.OutLast.IsUsual()).OrderBy(batch => batch.OutLast.Happened)];
        var late = usual.Count(batch => batch.DaysLate.P50 > result.Plan.Scenario.Rules.LateDays);
        var seasons = Numbers.Count(result.Seasons, "season", "seasons");
        var days = result.Plan.Scenario.Rules.LateDays;
        var lateness = days == 0 ? "late" : $"more than {Numbers.Count(days, "day", "days")} late";
        var some =
            late == 0
                ? $"By the median no batch {(rare.Length == 0 ? "" : "that goes out ")}is {lateness}."
                : $"By the median {Numbers.Whole(late)} of {Numbers.Count(result.Batches.Length, "batch", "batches")} {(late == 1 ? "is" : "are")} {lateness}.";
        var never = rare.Length == 0 ? "" : $" In most seasons no tray of {VerdictSowing.Names(rare, _ => "")} goes to the field.";
        return $"Median dates of {seasons}. {some}{never}{(late == 0 && rare.Length == 0 ? "" : LeastReliable(result))}";
    }

    // Of batches that are complete equally seldom, one that is seldom sown comes first.
    private static string LeastReliable(StudyResult result)
    {
        var least = result.Batches.MinBy(batch => batch.Complete.Share)!.Complete;
        BatchResult[] worst =
        [
            .. result
                .Batches.Where(batch => batch.Complete.Hits == least.Hits)
                .OrderBy(batch => batch.SownFirst.Happened)
                .ThenBy(batch => batch.PlantsInTime.Mean),
        ];
        return least.Hits == least.Seasons
            ? ""
            : $" The least reliable {(worst.Length == 1 ? "is" : "are")} {VerdictSowing.Names(worst, _ => "")}: complete in time in {Numbers.OfSeasons(least)}.";
    }

    private static void Chart(HtmlText html, IReadOnlyList<(string Grower, BatchBar[] Bars)> growers, Dates dates)
    {
        var sheets = BatchSheets.Of(growers);
        var label = "Batches by grower: median dates on mats, benches and hardening table, and the wanted set-out date";
        for (var sheet = 0; sheet < sheets.Length; sheet++)
        {
            Sheet(html, sheets[sheet], dates, sheets.Length == 1 ? label : $"{label}, part {sheet + 1} of {sheets.Length}");
        }
    }

    private static void Sheet(HtmlText html, IReadOnlyList<(string Grower, BatchBar[] Bars)> growers, Dates dates, string label)
    {
        // A tall chart has its dates at the top as well.
        var tall = growers.Sum(grower => grower.Bars.Length) > 20;
        double head = tall ? 18 : 0;
        var height = head + 10 + growers.Sum(grower => 24 + (RowHeight * grower.Bars.Length)) + 26;
        var frame = new SvgFrame(dates, 760, height, Left, 4 + head, 24);
        frame.Open(html, label);
        frame.DrawDates(html, tall);
        var y = 6 + head;
        foreach ((var grower, var bars) in growers)
        {
            html.Add($"<svg x=\"0\" y=\"{y}\" width=\"{frame.Width}\" height=\"22\"><text class=\"strong\" x=\"0\" y=\"16\">");
            html.Add($"{PlainText.Short(grower, 60)}</text></svg>\n");
            y += 22;
            foreach (var bar in bars)
            {
                Row(html, frame, bar, y);
                y += RowHeight;
            }

            y += 2;
        }

        SvgFrame.Close(html);
    }

    private static void Row(HtmlText html, SvgFrame frame, BatchBar bar, double y)
    {
        var plan = bar.Batch.Plan;
        html.Add($"<g><title>");
        html.Add($"{PlainText.Short(plan.Order.Id, 60)}, {PlainText.Short(plan.Crop.Name, 60)}, ");
        html.Add(
            $"{Numbers.Count(plan.Trays, "tray", "trays")}; waited {Days(bar.WaitDays)}, held by the weather {Days(bar.HoldDays)} a tray on average</title>"
        );
        html.Add($"<svg x=\"8\" y=\"{y}\" width=\"{Left - 14}\" height=\"{RowHeight}\"><text x=\"0\" y=\"13\">");
        // The end of an id tells successions apart: the crop gives way to it.
        var id = PlainText.Short(plan.Order.Id, 17);
        html.Add($"{id} <tspan class=\"faint\">{PlainText.Short(plan.Crop.Name, Math.Clamp(24 - id.Length, 4, 13))}</tspan></text></svg>");
        Bar(html, frame, "mat", bar.Mat, y);
        Bar(html, frame, "bench", bar.Bench, y);
        Bar(html, frame, "table", bar.Table, y);
        Lost(html, frame, bar, y);
        if (bar.Note is { } note)
        {
            html.Add($"<text class=\"faint\" x=\"{frame.X(0) + 4}\" y=\"{y + 13}\">{note}</text>");
        }

        if (bar.PottedUp is { } potted)
        {
            html.Add($"<rect class=\"pot\" x=\"{frame.X(potted) - 1.5}\" y=\"{y + 1}\" width=\"3\" height=\"{RowHeight - 3}\"/>");
        }

        var x = frame.X(bar.Wanted);
        var middle = y + (RowHeight / 2) - 0.5;
        html.Add($"<path class=\"diamond\" d=\"M{x} {middle - 5.5}L{x + 5} {middle}L{x} {middle + 5.5}L{x - 5} {middle}Z\"/></g>\n");
    }

    /// <summary>Under the end of the bars: how long a tray waited, and was held by the weather.</summary>
    private static void Lost(HtmlText html, SvgFrame frame, BatchBar bar, double y)
    {
        foreach ((var isHold, var from, var to) in bar.Lost())
        {
            html.Add(
                $"<line class=\"{(isHold ? "hold" : "wait")}\" x1=\"{frame.X(from)}\" y1=\"{y + RowHeight - 1.5}\" x2=\"{frame.X(to)}\" y2=\"{y + RowHeight - 1.5}\"/>"
            );
        }
    }

    private static string Days(double days) => days < 0.05 ? "no day" : Numbers.Fine(days) + (Numbers.Fine(days) == "1" ? " day" : " days");

    private static void Bar(HtmlText html, SvgFrame frame, string kind, (int From, int To)? days, double y)
    {
        if (days is not { } span || span.To <= span.From)
        {
            return;
        }

        html.Add($"<rect class=\"{kind}\" x=\"{frame.X(span.From)}\" y=\"{y + 2.5}\" width=\"{frame.X(span.To) - frame.X(span.From)}\" ");
        html.Add($"height=\"{RowHeight - 6}\"/>");
    }

    private static void Table(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<details><summary>Table of the batches</summary>");
        html.Add($"<p>Planned dates, and what came of them in {Numbers.Count(result.Seasons, "season", "seasons")}: the median, and in ");
        html.Add(
            $"brackets eight seasons of ten; where not all seasons have a figure, of those that do. Given up unsown: trays, or flats of a batch that is potted up. Waited for a place and held by the weather alone: means, in days a tray. Days late count every day, and so days on which only the weather held trays back; in time does not count those. All figures are in <a href=\"tables/batches.csv\">tables/batches.csv</a>.</p>"
        );
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Batches\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Batch</th><th scope=\"col\" class=\"text\">Crop</th><th scope=\"col\" class=\"text\">Grower</th>");
        html.Add($"<th scope=\"col\">Trays</th><th scope=\"col\">Plants wanted</th><th scope=\"col\">Sow, planned</th>");
        html.Add(
            $"<th scope=\"col\">First sown</th><th scope=\"col\">Given up unsown</th><th scope=\"col\">Out, planned</th><th scope=\"col\">Last out</th>"
        );
        html.Add(
            $"<th scope=\"col\">Waited</th><th scope=\"col\">Held</th><th scope=\"col\">Days late</th><th scope=\"col\">Plants in time</th><th scope=\"col\">Complete in time</th></tr>"
        );
        html.Add($"</thead><tbody>\n");
        foreach (var batch in result.Batches)
        {
            var plan = batch.Plan;
            html.Add($"<tr><th scope=\"row\">{HtmlText.Name(plan.Order.Id, 30)}</th><td class=\"text\">");
            html.Add($"{HtmlText.Name(plan.Crop.Name, 30)}</td><td class=\"text\">{HtmlText.Name(plan.Order.Grower, 30)}</td><td>");
            html.Add($"{Numbers.Whole(plan.Trays)}</td><td>{Numbers.Whole(plan.Order.Plants)}</td>");
            html.Add(
                $"<td>{dates.Cell(plan.SowOn)}</td><td>{dates.Cell(batch.SownFirst)}</td><td>{Spreads.Cell(batch.GivenUp)}</td><td>{dates.Cell(plan.SetOutOn)}</td><td>"
            );
            html.Add(
                $"{dates.Cell(batch.OutLast)}</td><td>{Numbers.Fine(BatchBar.WaitDaysOf(batch))}</td><td>{Numbers.Fine(BatchBar.HoldDaysOf(batch))}</td><td>{Spreads.Cell(batch.DaysLate, result.Seasons)}</td>"
            );
            html.Add($"<td>{Spreads.Cell(batch.PlantsInTime)}</td><td>{Numbers.Cell(batch.Complete)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div></details>\n");
    }
}
