using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Logbook;

namespace BenchSim.Report.Morning;

/// <summary>What stands where by the ledger, and the room left on the next days.</summary>
internal static class StandsPart
{
    public static void Write(HtmlText html, TodaySheet sheet)
    {
        html.Add($"<section aria-labelledby=\"stands\"><h2 id=\"stands\">What stands where</h2>\n");
        html.Add($"<p class=\"small\">By the log. Walk each space once a week, and write down what is otherwise.</p>\n");
        List(html, sheet, _ => true, "h3");
        html.Add($"</section>\n");
    }

    /// <summary>Space by space, what stands there of some batches; all that stands there in the heading.</summary>
    public static void List(HtmlText html, TodaySheet sheet, Func<int, bool> isOf, string heading)
    {
        var any = false;
        foreach (var (space, index) in SpaceToday.Of(sheet.Plan, sheet.Ledger, sheet.Today).Select((space, index) => (space, index)))
        {
            (int Batch, Pile Pile)[] piles =
            [
                .. sheet
                    .Ledger.Batches.SelectMany((book, batch) => book.Piles.Select(pile => (Batch: batch, Pile: pile)))
                    .Where(each => each.Pile.Space == index && isOf(each.Batch)),
            ];
            if (piles.Length == 0)
            {
                continue;
            }

            any = true;
            html.Add($"<{new Markup(heading)}>{SheetWords.Space(sheet.Plan, index)}: {Numbers.Whole(space.Held)} of ");
            html.Add($"{Numbers.Count(space.Places, "place", "places")} taken in all</{new Markup(heading)}>\n");
            html.Add($"<table class=\"stands\"><thead><tr><th scope=\"col\">Batch</th><th scope=\"col\" class=\"many\">How many</th>");
            html.Add(
                $"<th scope=\"col\" class=\"when\">Here since</th><th scope=\"col\" class=\"when\">To the field</th></tr></thead><tbody>\n"
            );
            foreach (var each in piles.GroupBy(each => (each.Batch, each.Pile.AreFlats, each.Pile.Since)))
            {
                var batch = sheet.Plan.Batches[each.Key.Batch];
                html.Add($"<tr><th scope=\"row\">{SheetWords.Batch(sheet, batch)}</th>");
                html.Add($"<td class=\"many\">{TaskWords.Pieces(each.Sum(one => one.Pile.Count), each.Key.AreFlats)}</td>");
                html.Add(
                    $"<td class=\"when\">{Dates.Brief(each.Key.Since)}</td><td class=\"when\">{Dates.Brief(batch.SetOutOn)}</td></tr>\n"
                );
            }

            html.Add($"</tbody></table>\n");
        }

        if (!any)
        {
            html.Add($"<p>Nothing stands anywhere by the log.</p>\n");
        }
    }

    /// <summary>The room left on each space for the next days.</summary>
    public static void Room(HtmlText html, TodaySheet sheet)
    {
        var days = sheet.Coming.Free[0].Length;
        html.Add($"<section aria-labelledby=\"room\"><h2 id=\"room\">Room left</h2>\n");
        html.Add($"<p class=\"small\">Places free after each day's work in at least {Study.Coming.Likelihoods.SureOfTen} of 10 seasons. ");
        html.Add($"A dash: none. What no place is left for waits.</p>\n<table class=\"room\"><thead><tr><th scope=\"col\">Space</th>");
        for (var day = 0; day < days; day++)
        {
            var date = sheet.Today.AddDays(day);
            html.Add($"<th scope=\"col\" class=\"number\">{date.DayOfWeek.ToString()[..2]} {date.Day}</th>");
        }

        html.Add($"</tr></thead><tbody>\n");
        for (var space = 0; space < sheet.Plan.Scenario.Spaces.Length; space++)
        {
            html.Add($"<tr><th scope=\"row\">{SheetWords.Space(sheet.Plan, space)}</th>");
            foreach (var free in sheet.Coming.Free[space])
            {
                html.Add($"<td class=\"number\">{(free > 0 ? Numbers.Whole(free) : "–")}</td>");
            }

            html.Add($"</tr>\n");
        }

        html.Add($"</tbody></table></section>\n");
    }
}
