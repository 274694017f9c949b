using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Study.Coming;

namespace BenchSim.Report.Morning;

/// <summary>What is late, and why.</summary>
internal static class LatePart
{
    public static void Write(HtmlText html, TodaySheet sheet)
    {
        var rules = sheet.Plan.Scenario.Rules;
        html.Add($"<section aria-labelledby=\"late\"><h2 id=\"late\">Late, and why</h2>\n");
        ComingDelay[] late = [.. sheet.Coming.Late.Where(each => sheet.IsUnderWay(each.Batch))];
        if (late.Length == 0)
        {
            html.Add($"<p>No batch is likely to be late.</p></section>\n");
            return;
        }

        html.Add($"<p class=\"small\">Late: fewer than {ChanceWords.Setting(rules.ServiceGoal)} of the plants wanted are in the field ");
        html.Add($"{Numbers.Count(rules.LateDays, "day", "days")} after their date, whatever the reason.</p>\n");
        html.Add($"<table class=\"late\"><thead><tr><th scope=\"col\">Batch</th><th scope=\"col\" class=\"when\">How late</th>");
        html.Add($"<th scope=\"col\" class=\"why\">Why</th></tr></thead><tbody>\n");
        foreach (var each in late)
        {
            var batch = sheet.Plan.Batches[each.Batch];
            html.Add(
                $"<tr><th scope=\"row\">{SheetWords.Batch(sheet, batch)} <span class=\"way\">for {Dates.Brief(batch.SetOutOn)}</span></th>"
            );
            html.Add($"<td class=\"when\"><b>{SheetWords.Of(each.Likelihood)}</b> {HowLate(each)}</td>");
            html.Add($"<td class=\"why\">{PlainText.Capital(string.Join("; ", Why(sheet, each)))}.</td></tr>\n");
        }

        html.Add($"</tbody></table></section>\n");
    }

    private static string HowLate(ComingDelay each) =>
        each.Days switch
        {
            null => "mostly none goes out",
            > 0 => $"about {Numbers.Count(each.Days.Value, "day", "days")}",
            _ => "in part",
        };

    private static string[] Why(TodaySheet sheet, ComingDelay late)
    {
        var (batch, book) = (sheet.Plan.Batches[late.Batch], sheet.Ledger.Batches[late.Batch]);
        string[] why =
        [
            .. Past(sheet, batch, book),
            .. Overdue(sheet, late.Batch),
            .. late.NoRoomIn is { } space
                ? [$"no place in time: {PlainText.Short(sheet.Plan.Scenario.Spaces[space].Name, SheetWords.LongestName)}"]
                : Array.Empty<string>(),
            .. late.IsHeld ? ["the weather holds what is ready"] : Array.Empty<string>(),
            .. late.IsShort ? ["too few plants"] : Array.Empty<string>(),
        ];
        return why.Length > 0 ? why
            : batch.DaysInHand < 0 ? ["wanted before it can be ready"]
            : ["slower than the plan's normal weather"];
    }

    // A job that counts as not done, as no line says that it was.
    private static IEnumerable<string> Overdue(TodaySheet sheet, int batch) =>
        from job in sheet.Jobs
        where job.Batch == batch && job.Kind != WorkKind.Sow && job.Due.Any(due => due.On < sheet.Today)
        let since = job.Due.Min(due => due.On)
        select $"{TaskWords.Job(job.Kind).ToLowerInvariant()}: due {Dates.Brief(since)}, no line yet (number {Numbers.Whole(job.Number)})";

    private static IEnumerable<string> Past(TodaySheet sheet, BatchPlan batch, BatchLedger book)
    {
        var inFlats = batch.Flat is not null;
        if (DueWork.Unsown(batch, book) is > 0 and var unsown && batch.SowOn < sheet.Today)
        {
            yield return $"{TaskWords.Pieces(unsown, inFlats)} not sown since {Dates.Brief(batch.SowOn)}";
        }

        if (!book.Sowings.IsEmpty && book.Sowings[^1].On > batch.SowOn)
        {
            yield return $"sown {Numbers.Count(book.Sowings[^1].On.DayNumber - batch.SowOn.DayNumber, "day", "days")} late";
        }

        var gone = book.Gone.Where(each => each.End == TrayEnd.Gone).ToLookup(each => each.Pile.AreFlats, each => each.Pile.Count);
        foreach (var areFlats in gone.Select(each => each.Key).Order())
        {
            yield return $"{TaskWords.Pieces(gone[areFlats].Sum(), areFlats)} thrown out or missing";
        }
    }
}
