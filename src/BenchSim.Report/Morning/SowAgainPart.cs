using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Morning;

/// <summary>The last day to sow each batch again.</summary>
internal static class SowAgainPart
{
    public static void Write(HtmlText html, TodaySheet sheet)
    {
        html.Add($"<section class=\"sheet\" aria-labelledby=\"again\"><h2 id=\"again\">Last day to sow again</h2>\n");
        List(html, sheet, _ => true);
        html.Add($"</section>\n");
    }

    public static void List(HtmlText html, TodaySheet sheet, Func<int, bool> isOf)
    {
        var late = sheet.Plan.Scenario.Rules.LateDays;
        int[] batches =
        [
            .. Enumerable
                .Range(0, sheet.Plan.Batches.Length)
                .Where(index => isOf(index) && sheet.IsUnderWay(index))
                .OrderBy(index => sheet.LastSowings[index] ?? DateOnly.MinValue)
                .ThenBy(index => sheet.Plan.Batches[index].SetOutOn),
        ];
        if (batches.Length == 0)
        {
            html.Add($"<p>Nothing stands, and nothing is still to be sown.</p>\n");
            return;
        }

        html.Add(
            $"<p class=\"small\">Sown on that day it is ready for the field {Numbers.Count(late, "day", "days")} after its date at the "
        );
        html.Add($"latest, in normal weather and with a place for every tray. Room: whether all of it finds places to be sown on one ");
        html.Add($"of the days from tomorrow up to then, of the next {Numbers.Whole(Days(sheet))}, by the room left above.</p>\n");
        html.Add($"<table class=\"again\"><thead><tr><th scope=\"col\">Batch</th><th scope=\"col\" class=\"when\">Sow again by</th>");
        html.Add($"<th scope=\"col\" class=\"many\">Room</th><th scope=\"col\" class=\"when\">In the field by</th></tr></thead><tbody>\n");
        foreach (var index in batches)
        {
            var batch = sheet.Plan.Batches[index];
            DateOnly? last = sheet.LastSowings[index] is { } day && day >= sheet.Today ? day : null;
            html.Add($"<tr><th scope=\"row\">{SheetWords.Batch(sheet, batch)}</th>");
            html.Add($"<td class=\"when\">{(last is { } on ? SheetWords.Day(on) : "past")}</td>");
            html.Add($"<td class=\"many\">{(last is { } by && by > sheet.Today ? Room(sheet, batch, by) : "")}</td>");
            html.Add($"<td class=\"when\">{Dates.Brief(LastSowings.OutBy(sheet.Plan, batch))}</td></tr>\n");
        }

        html.Add($"</tbody></table>\n");
    }

    private static int Days(TodaySheet sheet) => sheet.Coming.Free[0].Length - 1;

    // "yes", or for how many at most.
    private static string Room(TodaySheet sheet, BatchPlan batch, DateOnly last)
    {
        var (group, flat) = (batch.Mats.IsEmpty ? batch.Benches : batch.Mats, batch.Flat);
        var (pieces, each) = flat is null ? (batch.Trays, batch.Tray.PlacesEach) : (batch.Flats, flat.PlacesEach);
        var most = Enumerable
            .Range(1, Math.Max(0, Math.Min(Days(sheet), last.DayNumber - sheet.Today.DayNumber)))
            .Select(day => group.Sum(space => Math.Max(0, sheet.Coming.Free[space][day]) / each))
            .DefaultIfEmpty(0)
            .Max();
        return most >= pieces ? "yes" : $"for {Numbers.Whole(most)} of {TaskWords.Pieces(pieces, flat is not null)}";
    }
}
