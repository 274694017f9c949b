using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Season.Logbook;

namespace BenchSim.Report.Morning;

/// <summary>A page for each grower: own trays, own jobs, what counts for the bill, and what each space holds in all.</summary>
internal static class GrowerPart
{
    public static void Write(HtmlText html, TodaySheet sheet)
    {
        var growers = sheet.Growers;
        if (growers.Length < 2)
        {
            return;
        }

        var placeDays = LedgerPlaceDays.ByGrower(sheet.Plan, sheet.Ledger, sheet.Today);
        for (var at = 0; at < growers.Length; at++)
        {
            var grower = growers[at];
            bool IsOf(int batch) => string.Equals(sheet.Plan.Batches[batch].Order.Grower, grower, StringComparison.Ordinal);
            html.Add($"<section class=\"sheet\" aria-labelledby=\"grower{at + 1}\"><h2 id=\"grower{at + 1}\">");
            html.Add($"{HtmlText.Name(grower, SheetWords.LongestName)}, {SheetWords.Day(sheet.Today)}</h2>\n");
            JobsPart.Lists(html, sheet, IsOf, "h3");
            html.Add($"<h3>Due and not confirmed</h3>\n");
            JobsPart.Due(html, sheet, IsOf);
            html.Add($"<h3>Your trays</h3>\n");
            StandsPart.List(html, sheet, IsOf, "h4");
            Bill(html, sheet, placeDays, grower);
            html.Add($"<h3>Last day to sow again</h3>\n");
            SowAgainPart.List(html, sheet, IsOf);
            html.Add($"<h3>All spaces</h3>\n<p>");
            Spaces(html, sheet);
            html.Add($"</p></section>\n");
        }
    }

    // One's own share and the whole: what falls to the others, or was lost by them, is not on it.
    private static void Bill(HtmlText html, TodaySheet sheet, IReadOnlyList<(string Grower, long PlaceDays)> placeDays, string grower)
    {
        var own = placeDays.First(each => string.Equals(each.Grower, grower, StringComparison.Ordinal)).PlaceDays;
        html.Add($"<h3>For the bill, so far</h3>\n<p>");
        if (sheet.Bill is { } bill)
        {
            var words = new BillWords(bill.Unit, sheet.Plan.Scenario.Rules.Prices.Currency);
            html.Add($"<b>{words.Part(bill.Of(grower), bill.Total)}</b>, {BillWords.Divided(bill.Rule)}, as agreed. ");
            html.Add($"Worked out from the log and the weather up to yesterday, not read from a meter. ");
        }

        html.Add($"{Numbers.Count(own, "tray-day", "tray-days")} by the log, of ");
        html.Add($"{Numbers.Whole(placeDays.Sum(each => each.PlaceDays))} of all growers: a place held for a day is one.</p>\n");
    }

    private static void Spaces(HtmlText html, TodaySheet sheet)
    {
        foreach (var space in SpaceToday.Of(sheet.Plan, sheet.Ledger, sheet.Today))
        {
            html.Add($"{HtmlText.Name(space.Space.Name, SheetWords.LongestName)}: {Numbers.Whole(space.Held)} of ");
            html.Add($"{Numbers.Count(space.Places, "place", "places")}. ");
        }
    }
}
