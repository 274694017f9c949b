using System.Text;
using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Study.Sweeps;

namespace BenchSim.Report.Sweeps;

/// <summary>The page of a sweep: one file with its style and its drawings inside, no script, nothing fetched.</summary>
internal static class SweepPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="result">The sweep.</param>
    /// <param name="sentences">What it says as a whole, most important first.</param>
    public static string Write(SweepResult result, IEnumerable<string> sentences)
    {
        var html = new HtmlText();
        PaperPage.Open(html, $"{result.Name}: which plans fit", Style());
        html.Add($"<h1>{HtmlText.Name(result.Name, 80)}: which plans fit</h1>\n");
        foreach (var sentence in sentences)
        {
            html.Add($"<p>{sentence}</p>\n");
        }

        html.Add($"<section aria-labelledby=\"charts\"><h2 id=\"charts\">Folder by folder</h2>\n");
        SweepPanels.Write(html, result);
        html.Add($"</section>\n<section aria-labelledby=\"plans\"><h2 id=\"plans\">All plans</h2>\n");
        Table(html, result);
        html.Add(
            $"</section>\n<p class=\"small\">{SweepWords.Played(result)} Shares with 95 % Wilson intervals. Written by BenchSim.</p>\n"
        );
        PaperPage.Close(html);
        return html.ToString();
    }

    private static void Table(HtmlText html, SweepResult result)
    {
        html.Add($"<p class=\"small\">Bold: the plan of its folder that fits most often.</p>\n");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"All plans\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Folder</th><th scope=\"col\">Plan</th><th scope=\"col\" class=\"number\">Fits</th>");
        if (result.ValueSets > 0)
        {
            html.Add($"<th scope=\"col\" class=\"number\">Over sets of values, 5 to 95 %</th>");
        }

        html.Add($"<th scope=\"col\" class=\"number\">Plants in time</th><th scope=\"col\">Trays wait most for</th></tr></thead><tbody>\n");
        foreach (var folder in result.WorstFirst)
        {
            var best = folder.Best;
            foreach (var plan in folder.Plans)
            {
                html.Add($"<tr{(ReferenceEquals(plan, best) ? s_best : s_none)}><th scope=\"row\">{HtmlText.Name(folder.Name, 60)}</th>");
                html.Add($"<td>{HtmlText.Name(SweepWords.Plan(plan), 40)}</td><td class=\"number\">{ChanceWords.Cell(plan.Fits)}</td>");
                if (result.ValueSets > 0)
                {
                    html.Add($"<td class=\"number\">{SweepWords.OverSets(plan)}</td>");
                }

                html.Add($"<td class=\"number\">{ChanceWords.Percent(plan.ShareInTime)}</td><td>{SweepWords.Tightest(plan)}</td></tr>\n");
            }
        }

        html.Add($"</tbody></table></div>\n");
    }

    private static readonly Markup s_best = new(" class=\"best\"");
    private static readonly Markup s_none = new("");

    private static string Style()
    {
        using var stream = typeof(SweepPage).Assembly.GetManifestResourceStream("Sweeps/sweep.css")
            ?? throw new InvalidOperationException("The style of the page of a sweep is missing from the program.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
