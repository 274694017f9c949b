using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>How much of the site each grower uses, and what of its heat falls to each.</summary>
internal static class GrowersSection
{
    public static void Write(HtmlText html, StudyResult result)
    {
        var costs = GrowerCost.Of(result);
        html.Add($"<section id=\"growers\" aria-labelledby=\"growers-title\"><h2 id=\"growers-title\">The growers’ shares</h2>\n<figure>");
        html.Add($"<figcaption><p>{Reading(result, costs)}</p></figcaption>\n");
        FairShareChart.Write(html, result, costs);
        html.Add($"<details><summary>Table of the growers</summary>");
        html.Add($"<p>A tray-day is one place held for one day. Of {Numbers.Count(result.Seasons, "season", "seasons")}: the median, and ");
        html.Add(
            $"in brackets eight seasons of ten; by space and for the cost the mean. {FuelShares(result)} {CostShares(costs)} Also in <a "
        );
        html.Add($"href=\"tables/growers.csv\">tables/growers.csv</a>.</p>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Growers\"><table><thead><tr>");
        html.Add(
            $"<th scope=\"col\">Grower</th><th scope=\"col\">Batches</th><th scope=\"col\">Share</th><th scope=\"col\">Fuel share</th>"
        );
        html.Add(
            $"<th scope=\"col\">Cost share</th><th scope=\"col\">Cost</th><th scope=\"col\">Tray-days</th>"
                + $"<th scope=\"col\">Most places on a day</th>"
        );
        foreach (var space in result.Spaces)
        {
            html.Add($"<th scope=\"col\">{HtmlText.Name(space.Space.Name, 30)}</th>");
        }

        html.Add($"</tr></thead><tbody>\n");
        var money = new Money(result.Plan.Scenario.Rules.Prices.Currency);
        foreach ((var grower, var cost) in result.Growers.Zip(costs))
        {
            html.Add($"<tr><th scope=\"row\">{HtmlText.Name(grower.Grower, 40)}</th><td>{Numbers.Whole(grower.Batches)}</td><td>");
            html.Add($"{Percent(grower.Share)}</td><td>{Percent(grower.FuelShare)}</td><td>{Percent(cost.Share)}</td><td>");
            html.Add($"{(double.IsNaN(cost.Share) ? "–" : money.Amount(cost.Amount))}</td><td>");
            html.Add($"{Spreads.Cell(grower.TrayDays)}</td><td>{Spreads.Cell(grower.Peak)}</td>");
            foreach (var days in grower.TrayDaysBySpace)
            {
                html.Add($"<td>{Numbers.Whole(days.Mean)}</td>");
            }

            html.Add($"</tr>\n");
        }

        html.Add($"</tbody></table></div></details></figure></section>\n");
    }

    private static string Percent(double share) => double.IsNaN(share) ? "–" : ChanceWords.Percent(share);

    private static string FuelShares(StudyResult result)
    {
        if (result.Growers.All(grower => double.IsNaN(grower.FuelShare)))
        {
            return "There are no shares of fuel, because no house has fuel.";
        }

        return "The fuel share divides the fuel of each house (its cost, or its heat where a price is missing) by the place-days that "
            + "each grower holds in it.";
    }

    private static string CostShares(ImmutableArray<GrowerCost> costs) =>
        costs.All(cost => double.IsNaN(cost.Share))
            ? "There are no shares of the cost, because a price is missing or nothing is burnt or drawn."
            : "The cost is that of fuel and of the mats’ electricity, that of the mats divided by the place-days that each grower "
                + "holds on them; labour, seed and mix are not in it.";

    private static string Reading(StudyResult result, ImmutableArray<GrowerCost> costs)
    {
        if (result.Growers.IsEmpty)
        {
            return "The plan names no grower.";
        }

        var most = result.Growers.MaxBy(grower => grower.Share)!;
        var cost = costs[result.Growers.IndexOf(most)].Share;
        var bears = double.IsNaN(cost) ? "" : $", and would pay {ChanceWords.Percent(cost)} of the cost of fuel and mats";
        var equal =
            result.Growers.Length == 1
                ? ""
                : $" Divided equally, each of {Numbers.Whole(result.Growers.Length)} growers would have "
                    + $"{ChanceWords.Percent(1.0 / result.Growers.Length)}.";
        return $"{PlainText.Short(most.Grower, 60)} holds the largest share: {ChanceWords.Percent(most.Share)} of all tray-days{bears} "
            + $"(mean of {Numbers.Count(result.Seasons, "season", "seasons")}). A tray-day is one place held for one day.{equal}";
    }
}
