using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>Which space holds the plan back; only where it was asked.</summary>
internal static class BottlenecksSection
{
    public static void Write(HtmlText html, StudyResult result)
    {
        if (result.Bottlenecks is not { } found)
        {
            return;
        }

        html.Add(
            $"<section id=\"bottlenecks\" aria-labelledby=\"bottlenecks-title\">"
                + $"<h2 id=\"bottlenecks-title\">What holds the plan back</h2>\n<ul>"
        );
        foreach (var sentence in BottleneckSentences.Of(found))
        {
            html.Add($"<li>{sentence}</li>\n");
        }

        html.Add($"</ul>\n<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"What more room would save\"><table><thead><tr>");
        html.Add(
            $"<th scope=\"col\">Space</th><th scope=\"col\">More room</th><th scope=\"col\">Late plant-days saved a season</th>"
                + $"<th scope=\"col\">Interval</th>"
        );
        html.Add($"<th scope=\"col\">Plan fits in</th></tr></thead><tbody>\n");
        foreach (var trial in found.Unlimited)
        {
            Row(html, HtmlText.Name(trial.Space.Name, 30), "no limit", trial.LatePlantDays, trial.Fits);
        }

        foreach (var trial in found.Larger)
        {
            Row(
                html,
                HtmlText.Name(trial.Space.Name, 30),
                Numbers.Count(trial.PlacesAdded ?? 0, "place", "places"),
                trial.LatePlantDays,
                trial.Fits
            );
        }

        foreach (var pair in found.Pairs.Where(pair => pair.HelpsTogether))
        {
            Row(
                html,
                HtmlText.Name($"{PlainText.Short(pair.First.Name, 30)} and {PlainText.Short(pair.Second.Name, 30)}", 80),
                "no limit on both",
                pair.LatePlantDays,
                pair.Fits
            );
        }

        html.Add(
            $"</tbody></table></div>\n<p class=\"small\">As it is, the plan fits in {Numbers.OfSeasons(found.Fits)} and has "
                + $"{SavingWords.Amount(found.LatePlantDays)} "
        );
        html.Add(
            $"late plant-days a season on average: a plant that goes out ten days after its date makes ten. "
                + $"{BottleneckSentences.Basis(found)} All figures are in <a href=\"tables/bottlenecks.csv\">"
        );
        html.Add($"tables/bottlenecks.csv</a>.</p></section>\n");
    }

    private static void Row(HtmlText html, Markup name, string room, MeasureChange late, FitChange fits)
    {
        html.Add($"<tr><th scope=\"row\">{name}</th><td>{room}</td><td>{SavingWords.Signed(-late.Difference)}</td><td>");
        html.Add($"{SavingWords.Ends(late)}</td><td>{Numbers.Percent(fits.Variant.Share)} %</td></tr>\n");
    }
}
