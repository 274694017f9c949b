using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>Where room is short: what the season wants of all spaces of a kind against what there is.</summary>
internal static class ShortageSection
{
    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<section id=\"shortage\" aria-labelledby=\"shortage-title\"><h2 id=\"shortage-title\">Where room is short</h2>\n");
        html.Add($"<p>{Reading(result)}</p>\n");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Shortage by kind of space\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Spaces</th><th scope=\"col\">Most places</th><th scope=\"col\">Runs out in</th>");
        html.Add($"<th scope=\"col\">First on</th><th scope=\"col\">Largest shortage</th><th scope=\"col\">Shortage on</th>");
        html.Add($"<th scope=\"col\">Most waiting on a day</th>");
        html.Add($"<th scope=\"col\">Waiting most on</th></tr></thead><tbody>\n");
        foreach (var group in result.Groups)
        {
            html.Add($"<tr><th scope=\"row\">{Trade.Spaces(result.Plan.Scenario, group.Kind)}</th><td>");
            html.Add(
                $"{Numbers.Whole(group.Places.DefaultIfEmpty(0).Max())}</td><td>{ChanceWords.Cell(group.RunsOut)}</td><td class=\"long\">"
            );
            html.Add($"{dates.Cell(group.RunsOutOn)}</td>");
            html.Add($"<td>{Spreads.Cell(group.Shortage)}</td><td class=\"long\">{dates.Cell(group.ShortageOn)}</td><td>");
            html.Add($"{Spreads.Cell(group.WorstWaiting)}</td><td class=\"long\">{dates.Cell(group.WorstWaitingOn)}</td></tr>\n");
        }

        html.Add($"</tbody></table></div>\n");
        html.Add($"<p class=\"small\">Of {Numbers.Count(result.Seasons, "season", "seasons")}: the median, and in brackets eight seasons ");
        html.Add($"of ten; for “runs out in” the 95 % interval. Waiting and shortage are two things. Waiting is what was refused a ");
        html.Add(
            $"place on one day with the places there are; what waits is often late by then, and so asks on other days than it would. "
        );
        html.Add(
            $"Shortage is what the season would take of all spaces of a kind with no limit on any space, less the places there are, on "
        );
        html.Add($"the day on which that is most. <a href=\"#spaces\">Each space, day by day</a> gives the shortage of one space on one ");
        html.Add($"date: as each season has its worst day on another date, it is smaller.</p>");
        html.Add($"</section>\n");
    }

    private static string Reading(StudyResult result)
    {
        var worst = result.Groups.Where(group => group.Shortage.P50 > 0).MaxBy(group => group.Shortage.P50);
        if (worst is null)
        {
            if (result.Groups.Any(group => group.Shortage.Most > 0))
            {
                return "In most seasons there are places enough of every kind; in some there are not.";
            }

            GroupResult[] refusing = [.. result.Groups.Where(group => group.RunsOut.Hits > 0)];
            if (refusing.Length == 0)
            {
                return "There are places enough of every kind in all seasons played.";
            }

            var reasons = string.Join(" ", refusing.Select(group => VerdictSpaces.Elsewhere(result, group)).OfType<string>());
            if (reasons.Length == 0 && refusing.All(group => VerdictSpaces.IsOnlyBlocked(result, group)))
            {
                reasons = "The trays that stand there cannot go on in time.";
            }

            return "Counted together, the spaces of each kind have places enough in all seasons played, and yet trays are refused a "
                + $"place.{(reasons.Length > 0 ? " " : "")}{reasons}";
        }

        return $"The largest shortage is of {Trade.Place(worst.Kind)}s: {Spreads.Amount(worst.Shortage, "place", "places")}.";
    }
}
