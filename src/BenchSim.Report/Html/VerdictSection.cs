using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The top of the page: name, question, answer.</summary>
internal static class VerdictSection
{
    public static void Write(HtmlText html, StudyResult result, string? overallNote)
    {
        var verdict = Verdict.Of(result);
        var scenario = result.Plan.Scenario;
        html.Add($"<header><p class=\"kind\">Does the plan fit the benches?</p><h1>{HtmlText.Name(scenario.Name, 120)}</h1>");
        if (scenario.Question.Length > 0)
        {
            html.Add($"<p class=\"question\">{HtmlText.Name(scenario.Question, 400)}</p>");
        }

        if (result.Variant is { } variant)
        {
            html.Add($"<p class=\"question\">Played with the variant {HtmlText.Name(variant, 120)}, not as the plan stands.</p>");
        }

        if (result.Plan.Today is { } today)
        {
            html.Add($"<p class=\"question\">Made for {Dates.Full(today)}: the days before are as they were, by the log; from that ");
            html.Add($"day on {Numbers.Count(result.Seasons, "season", "seasons")} may come.</p>");
        }

        html.Add($"<p class=\"span\">");
        html.Add($"{Dates.Full(result.Plan.FirstDay)} to {Dates.Full(result.Plan.LastDay)} · ");
        html.Add($"{Numbers.Count(result.Batches.Length, "batch", "batches")} · {Numbers.Count(result.PlantsWanted, "plant", "plants")} ");
        html.Add($"wanted · {Numbers.Count(result.Seasons, "season", "seasons")} played</p>");
        html.Add($"</header>\n");
        html.Add($"<main>\n<section id=\"verdict\" class=\"verdict {Class(verdict.Fits)}\" aria-labelledby=\"verdict-title\">");
        html.Add($"<h2 id=\"verdict-title\"><span class=\"mark\" aria-hidden=\"true\">");
        html.Add($"{Mark(verdict.Fits)}</span> {verdict.Headline}</h2>\n");
        if (overallNote is not null)
        {
            html.Add($"<p class=\"note\"><strong>Note.</strong> {HtmlText.Name(overallNote)}</p>\n");
        }

        html.Add($"<p>{verdict.Chance}</p>\n");
        Gauge(html, result.Fits);
        if (verdict.Spread is { } spread)
        {
            html.Add($"<p class=\"quiet\">{spread}</p>\n");
        }

        html.Add($"</section>\n");
    }

    /// <summary>What decides, and what the numbers leave out: it stands after the weeks by space.</summary>
    public static void WriteDecides(HtmlText html, StudyResult result)
    {
        var verdict = Verdict.Of(result);
        html.Add($"<section id=\"decides\" class=\"decides\" aria-labelledby=\"decides-title\"><h2 id=\"decides-title\">");
        html.Add($"What decides</h2>\n<ul>");
        foreach (var sentence in verdict.Decides)
        {
            html.Add($"<li>{sentence}</li>\n");
        }

        html.Add($"</ul><details><summary>The findings in full, and what the numbers leave out</summary><ul>");
        foreach (var sentence in verdict.Sentences)
        {
            html.Add($"<li>{sentence}</li>\n");
        }

        html.Add($"</ul><h3>What these numbers leave out</h3><ul class=\"quiet\">");
        foreach (var sentence in verdict.LeavesOut)
        {
            html.Add($"<li>{sentence}</li>\n");
        }

        html.Add($"</ul></details></section>\n");
    }

    private static string Class(bool? fits) =>
        fits switch
        {
            true => "fits",
            false => "misses",
            null => "unsure",
        };

    private static string Mark(bool? fits) =>
        fits switch
        {
            true => "✓",
            false => "✕",
            null => "?",
        };

    /// <summary>A bar from none to all seasons, with the interval as a paler piece.</summary>
    private static void Gauge(HtmlText html, Chance chance)
    {
        const double width = 760;
        double X(double share) => 1 + (share * (width - 2));
        var middle = X(chance.Share);
        html.Add(
            $"<svg class=\"gauge\" role=\"img\" aria-label=\"The plan fits in {ChanceWords.OfAllSeasons(chance)}\" viewBox=\"0 0 {width} "
        );
        html.Add($"40\">");
        html.Add($"<rect class=\"rail\" x=\"1\" y=\"4\" width=\"{width - 2}\" height=\"12\" rx=\"3\"/>");
        html.Add($"<rect class=\"done\" x=\"1\" y=\"4\" width=\"{middle - 1}\" height=\"12\" rx=\"3\"/>");
        html.Add($"<rect class=\"range\" x=\"{X(chance.Low)}\" y=\"1\" width=\"{Math.Max(1, X(chance.High) - X(chance.Low))}\" ");
        html.Add($"height=\"18\"/>");
        html.Add($"<line class=\"goal\" x1=\"{X(Verdict.ReliableFrom)}\" y1=\"0\" x2=\"{X(Verdict.ReliableFrom)}\" y2=\"20\"/>");
        html.Add($"<text x=\"1\" y=\"36\">none</text><text class=\"end\" x=\"{X(Verdict.ReliableFrom)}\" y=\"36\">nine in ten</text>");
        html.Add($"<text class=\"end\" x=\"{width - 1}\" y=\"36\">all</text></svg>\n");
    }
}
