using System.Text;
using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;

namespace BenchSim.Report.Morning;

/// <summary>The page of a day, for the clipboard and the telephone: one file with its style inside, no script, nothing fetched.</summary>
internal static class TodayPage
{
    private const int LongestTitle = 120;

    /// <summary>The style of the page, as a Content-Security-Policy names it.</summary>
    public static string StyleSource { get; } = PaperPage.StyleSourceWith(Style());

    /// <summary>Writes the page.</summary>
    public static string Write(TodaySheet sheet)
    {
        var site = sheet.Plan.Scenario.Name;
        var html = new HtmlText();
        PaperPage.Open(html, $"Today, {Dates.Full(sheet.Today)}: {site}", Style());
        html.Add($"<h1>{sheet.Today.DayOfWeek.ToString()} {Dates.Full(sheet.Today)}: {HtmlText.Name(site, LongestTitle)}</h1>\n");
        html.Add($"<p>{LastLine(sheet)}</p>\n");
        JobsPart.Write(html, sheet);
        StandsPart.Write(html, sheet);
        JobsPart.Due(html, sheet);
        LatePart.Write(html, sheet);
        StandsPart.Room(html, sheet);
        ColdPart.Write(html, sheet);
        HeaterOutPart.Write(html, sheet);
        LinesPart.Write(html);
        GrowerPart.Write(html, sheet);
        SowAgainPart.Write(html, sheet);
        PaperPage.Close(html);
        return html.ToString();
    }

    private static string LastLine(TodaySheet sheet)
    {
        var log = sheet.Plan.Scenario.Log;
        if (log.IsEmpty)
        {
            return "Made for this day. The log has no lines yet, so nothing counts as sown.";
        }

        var last = log.Max(entry => entry.Date);
        var days = sheet.Today.DayNumber - last.DayNumber;
        return $"Made for this day. The last line of the log is of {SheetWords.Day(last)}"
            + $"{(days == 0 ? "" : $", {Numbers.Count(days, "day", "days")} ago")}; it has {Numbers.Count(log.Length, "line", "lines")}.";
    }

    private static string Style()
    {
        using var stream = typeof(TodayPage).Assembly.GetManifestResourceStream("Morning/today.css")
            ?? throw new InvalidOperationException("The style of the day's page is missing from the program.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
