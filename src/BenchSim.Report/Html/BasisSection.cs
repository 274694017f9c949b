using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>What the numbers rest on: seasons, seed, rules, warnings, inputs, and where each value comes from.</summary>
internal static class BasisSection
{
    public static void Write(HtmlText html, StudyResult result, IReadOnlyList<ReportInput> inputs)
    {
        html.Add($"<section id=\"basis\" aria-labelledby=\"basis-title\"><h2 id=\"basis-title\">What the numbers rest on</h2>\n");
        Play(html, result);
        Reliefs(html, result);
        Warnings(html, result);
        WeatherPart.Write(html, result.Plan.Scenario);
        Inputs(html, inputs);
        SourcesPart.Write(html, result.Plan.Scenario);
        html.Add($"</section>\n");
    }

    private static void Play(HtmlText html, StudyResult result)
    {
        html.Add($"<dl><div><dt>Seasons played</dt><dd>{Numbers.Whole(result.Seasons)}</dd></div><div><dt>Seed number</dt><dd>");
        html.Add(
            $"{result.Seed.ToString(null, null)}</dd></div><div><dt>Weather</dt><dd>{WeatherPart.Words(result.Plan.Scenario)}</dd></div>"
        );
        html.Add($"<div><dt>Age of the seed</dt><dd>{SeedPart.Words(result)}</dd></div>");
        html.Add($"<div><dt>A season fits when</dt><dd>{FitRule.Of(result.Plan)}</dd></div></dl>\n");
    }

    private static void Reliefs(HtmlText html, StudyResult result)
    {
        html.Add($"<h3>Ways of making room</h3>\n");
        var reliefs = result.Plan.Scenario.Rules.Reliefs;
        if (reliefs.IsEmpty)
        {
            html.Add($"<p>None in force.</p>\n");
            return;
        }

        html.Add($"<ol>");
        for (var index = 0; index < reliefs.Length && index < result.ReliefUses.Length; index++)
        {
            var counted = reliefs[index] == Relief.Aisle ? ", counted once a day" : "";
            html.Add($"<li>{ReliefFields.Deed(reliefs[index])}: used for ");
            html.Add($"{Spreads.Amount(result.ReliefUses[index], "tray", "trays")}{counted}</li>");
        }

        html.Add($"</ol><p class=\"small\">Of {Numbers.Count(result.Seasons, "season", "seasons")} played.</p>\n");
    }

    private static void Warnings(HtmlText html, StudyResult result)
    {
        html.Add($"<h3>Warnings about the plan</h3>\n");
        if (result.Plan.Warnings.IsEmpty)
        {
            html.Add($"<p>None.</p>\n");
            return;
        }

        html.Add($"<ul>");
        foreach (var warning in result.Plan.Warnings)
        {
            html.Add($"<li><code>");
            html.Add($"{HtmlText.Name(warning.Place.ToString())}</code> {HtmlText.Name(warning.What)}; ");
            html.Add($"{HtmlText.Name(warning.Instead)}.</li>\n");
        }

        html.Add($"</ul>\n");
    }

    private static void Inputs(HtmlText html, IReadOnlyList<ReportInput> inputs)
    {
        html.Add($"<h3>Files it ran</h3>\n");
        if (inputs.Count == 0)
        {
            html.Add($"<p>None were kept.</p>\n");
            return;
        }

        html.Add($"<p>Kept as they were read, in the folder <code>inputs</code>.</p><ul>");
        foreach (var input in inputs)
        {
            html.Add($"<li>{HtmlText.Name(input.Name, 80)}, {Numbers.Count(input.Bytes.Length, "byte", "bytes")}</li>");
        }

        html.Add($"</ul>\n");
    }
}
