using System.Text;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The page <c>report.html</c>: one file with its style and its drawings inside, no script, nothing fetched.</summary>
internal static class ReportPage
{
    private static readonly (string Id, string Title)[] s_contents =
    [
        ("verdict", "Verdict"),
        ("glance", "At a glance"),
        ("decides", "What decides"),
        ("spaces", "Spaces"),
        ("shortage", "Short of room"),
        ("waits", "Waiting"),
        ("bottlenecks", "Bottlenecks"),
        ("batches", "Batches"),
        ("growers", "Growers"),
        ("fuel", "Fuel"),
        ("work", "Work"),
        ("basis", "Basis"),
        ("cautions", "Cautions"),
        ("files", "Files"),
    ];

    /// <summary>Writes the page.</summary>
    public static string Write(StudyResult result, IReadOnlyList<ReportInput> inputs, string? overallNote)
    {
        var dates = new Dates(result.Plan);
        var html = new HtmlText();
        html.Add($"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/>");
        html.Add($"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
        html.Add($"<meta name=\"color-scheme\" content=\"light dark\"/>");
        html.Add($"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>");
        html.Add($"<title>{PlainText.Short(result.Plan.Scenario.Name, 80)}: does the plan fit?</title>\n<style>\n");
        html.Add($"{new Markup(Style())}</style></head>\n<body><a class=\"skip\" href=\"#verdict\">Skip to the verdict</a>\n");
        VerdictSection.Write(html, result, overallNote);
        GlanceSection.Write(html, result, dates);
        VerdictSection.WriteDecides(html, result);
        html.Add($"<nav aria-label=\"Contents\"><ul>");
        foreach ((var id, var title) in s_contents)
        {
            if (id != "bottlenecks" || result.Bottlenecks is not null)
            {
                html.Add($"<li><a href=\"#{id}\">{title}</a></li>");
            }
        }

        html.Add($"</ul></nav>\n");
        OccupancySection.Write(html, result, dates);
        ShortageSection.Write(html, result, dates);
        WaitsSection.Write(html, result, dates);
        BottlenecksSection.Write(html, result);
        BatchesSection.Write(html, result, dates);
        GrowersSection.Write(html, result);
        FuelSection.Write(html, result, dates);
        WorkSection.Write(html, result, dates);
        BasisSection.Write(html, result, inputs);
        CautionsSection.Write(html, result);
        html.Add($"</main>\n<footer>");
        GlossaryPart.Write(html);
        html.Add($"<p>Written by BenchSim.</p></footer></body></html>\n");
        return html.ToString();
    }

    private static string Style()
    {
        using var stream = typeof(ReportPage).Assembly.GetManifestResourceStream("Html/report.css")
            ?? throw new InvalidOperationException("The style of the report is missing from the program.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
