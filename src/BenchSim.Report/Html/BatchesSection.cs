using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The batches: a chart of their median dates, and a table.</summary>
internal static class BatchesSection
{
    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<section id=\"batches\" aria-labelledby=\"batches-title\"><h2 id=\"batches-title\">The batches</h2>\n<figure>");
        html.Add($"<figcaption><p>{Reading(result)}</p>");
        if (DrawnBatches.Which(result) is { Length: > 0 } which)
        {
            html.Add($"<p>{which}</p>");
        }

        html.Add($"</figcaption>\n");
        SvgPainter.Key(html, BatchesChart.KeyOf(result.Plan));
        Charts(html, result);
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
                : $"By the median {Numbers.Whole(late)} of {Numbers.Count(result.Batches.Length, "batch", "batches")} "
                    + $"{(late == 1 ? "is" : "are")} {lateness}.";
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
            : $" The least reliable {(worst.Length == 1 ? "is" : "are")} {VerdictSowing.Names(worst, _ => "")}: "
                + $"complete in time in {ChanceWords.OfAllSeasons(least)}.";
    }

    private static void Charts(HtmlText html, StudyResult result)
    {
        var sheets = BatchSheets.Of(BatchBar.ByGrower(result));
        for (var sheet = 0; sheet < sheets.Length; sheet++)
        {
            var chart = BatchesChart.Of(sheets[sheet], result);
            var part = sheets.Length == 1 ? "" : $", part {sheet + 1} of {sheets.Length}";
            SvgPainter.Draw(html, chart with { Label = chart.Label + part });
        }
    }

    private static void Table(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<details><summary>Table of the batches</summary>");
        html.Add($"<p>Planned dates, and what came of them in {Numbers.Count(result.Seasons, "season", "seasons")}: the median, and in ");
        html.Add(
            $"brackets eight seasons of ten; where not all seasons have a figure, of those that do. Given up unsown: trays, or flats "
                + $"of a batch that is potted up. Waited for a place and held by the weather alone: means, in days a tray. Days late count "
                + $"every day, and so days on which only the weather held trays back; in time does not count those. All figures are in "
                + $"<a href=\"{BatchesChart.Table}\">{BatchesChart.Table}</a>.</p>"
        );
        foreach (var sentence in ClusterWords.ByCrop(result.Plan))
        {
            html.Add($"<p>{sentence}</p>\n");
        }

        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Batches\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Batch</th><th scope=\"col\" class=\"text\">Crop</th><th scope=\"col\" class=\"text\">Grower</th>");
        html.Add($"<th scope=\"col\">Trays</th><th scope=\"col\">Plants wanted</th><th scope=\"col\">Sow, planned</th>");
        html.Add(
            $"<th scope=\"col\">First sown</th><th scope=\"col\">Given up unsown</th><th scope=\"col\">Out, planned</th>"
                + $"<th scope=\"col\">Last out</th>"
        );
        html.Add(
            $"<th scope=\"col\">Waited</th><th scope=\"col\">Held</th><th scope=\"col\">Days late</th>"
                + $"<th scope=\"col\">Plants in time</th><th scope=\"col\">Complete in time</th></tr>"
        );
        html.Add($"</thead><tbody>\n");
        foreach (var batch in result.Batches)
        {
            var plan = batch.Plan;
            html.Add($"<tr><th scope=\"row\">{HtmlText.Name(plan.Order.Id, 30)}</th><td class=\"text\">");
            html.Add($"{HtmlText.Name(plan.CropAndVariety, 40)}</td><td class=\"text\">{HtmlText.Name(plan.Order.Grower, 30)}</td><td>");
            html.Add($"{Numbers.Whole(plan.Trays)}</td><td>{Numbers.Whole(plan.Order.Plants)}</td>");
            html.Add(
                $"<td>{dates.Cell(plan.SowOn)}</td><td>{dates.Cell(batch.SownFirst)}</td><td>{Spreads.Cell(batch.GivenUp)}</td>"
                    + $"<td>{dates.Cell(plan.SetOutOn)}</td><td>"
            );
            html.Add(
                $"{dates.Cell(batch.OutLast)}</td><td>{Numbers.Fine(BatchBar.WaitDaysOf(batch))}</td>"
                    + $"<td>{Numbers.Fine(BatchBar.HoldDaysOf(batch))}</td><td>{Spreads.Cell(batch.DaysLate, result.Seasons)}</td>"
            );
            html.Add($"<td>{Spreads.Cell(batch.PlantsInTime)}</td><td>{ChanceWords.Cell(batch.Complete)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div></details>\n");
    }
}
