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
            $"<th scope=\"col\">Space</th><th scope=\"col\">More room</th><th scope=\"col\">More plants in time a season</th>"
                + $"<th scope=\"col\">Interval</th><th scope=\"col\">Late plant-days saved</th><th scope=\"col\">Interval</th>"
        );
        html.Add($"<th scope=\"col\">Plan fits in</th></tr></thead><tbody>\n");
        foreach (var trial in found.Unlimited)
        {
            Row(html, HtmlText.Name(trial.Space.Name, 30), "no limit", trial.PlantsInTime, trial.LatePlantDays, trial.Fits);
        }

        foreach (var trial in found.Larger)
        {
            Row(
                html,
                HtmlText.Name(trial.Space.Name, 30),
                Numbers.Count(trial.PlacesAdded ?? 0, "place", "places"),
                trial.PlantsInTime,
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
                null,
                pair.LatePlantDays,
                pair.Fits
            );
        }

        html.Add(
            $"</tbody></table></div>\n<p class=\"small\">As it is, the plan fits in {ChanceWords.OfAllSeasons(found.Fits)} and has "
                + $"{SavingWords.Amount(found.LatePlantDays)} "
        );
        html.Add(
            $"late plant-days a season on average: a plant that goes out ten days after its date makes ten. "
                + $"{BottleneckSentences.Basis(found)} All figures are in <a href=\"tables/bottlenecks.csv\">"
        );
        html.Add($"tables/bottlenecks.csv</a>.</p></section>\n");
    }

    private static void Row(HtmlText html, Markup name, string room, MeasureChange? plants, MeasureChange late, FitChange fits)
    {
        var (more, ends) = plants is null ? ("", "") : (SavingWords.Signed(plants.Difference), Ends(plants));
        html.Add($"<tr><th scope=\"row\">{name}</th><td>{room}</td><td>{more}</td><td>{ends}</td>");
        html.Add($"<td>{SavingWords.Signed(-late.Difference)}</td><td>{SavingWords.Ends(late)}</td>");
        html.Add($"<td>{ChanceWords.Fine(fits.Variant.Share)}</td></tr>\n");
    }

    private static string Ends(MeasureChange plants) =>
        double.IsNaN(plants.HalfWidth) ? "–" : $"{SavingWords.Signed(plants.Low)} to {SavingWords.Signed(plants.High)}";
}
