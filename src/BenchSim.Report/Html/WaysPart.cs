using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The ways to reach a stand, batch by batch: more trays, two seeds a cell, or an extra tray.</summary>
internal static class WaysPart
{
    public static void Write(HtmlText html, StudyResult result)
    {
        var scenario = result.Plan.Scenario;
        (BatchPlan Batch, ImmutableArray<StandWay> Ways)[] batches =
        [
            .. result.Plan.Batches.Select(batch => (batch, StandWays.Of(scenario, batch))).Where(pair => !pair.Item2.IsEmpty),
        ];
        if (batches.Length == 0)
        {
            return;
        }

        var priced = batches.Any(pair => pair.Ways.Any(way => way.Cost is not null));
        html.Add($"<details><summary>Ways to reach the wanted plants, batch by batch</summary>");
        html.Add($"<p>For batches sown straight into their trays. “One seed a cell” and “two seeds a cell and thin” take the fewest ");
        html.Add($"trays that bring the wanted plants with a chance of at least {ChanceWords.Setting(scenario.Rules.StandAssurance)}. ");
        var cost = priced
            ? "Cost is seed, potting mix and the work of sowing."
            : "No cost is shown: it needs the prices of seed, potting mix and work.";
        html.Add($"{cost}");
        html.Add(
            $"</p><div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Ways to reach the wanted plants\"><table><thead><tr>"
        );
        html.Add(
            $"<th scope=\"col\">Batch</th><th scope=\"col\" class=\"text\">Way</th><th scope=\"col\">Trays</th>"
                + $"<th scope=\"col\">Seeds a cell</th>"
        );
        html.Add($"<th scope=\"col\">Seeds</th><th scope=\"col\">Chance of the wanted plants</th>");
        if (priced)
        {
            html.Add($"<th scope=\"col\">Cost</th>");
        }

        html.Add($"</tr></thead><tbody>\n");
        var money = new Money(scenario.Rules.Prices.Currency);
        foreach ((var batch, var ways) in batches)
        {
            foreach (var way in ways)
            {
                Row(html, batch, way, priced, money);
            }
        }

        html.Add($"</tbody></table></div></details>\n");
    }

    private static void Row(HtmlText html, BatchPlan batch, StandWay way, bool priced, Money money)
    {
        var reached = way.Trays >= 0;
        html.Add($"<tr><th scope=\"row\">{HtmlText.Name(batch.Order.Id, 30)}</th><td class=\"text\">{way.What}</td>");
        html.Add($"<td>{(reached ? Numbers.Whole(way.Trays) : "not reached")}</td><td>{way.SeedsPerCell}</td>");
        html.Add($"<td>{(reached ? Numbers.Whole(way.Seeds) : "–")}</td><td>{ChanceWords.Stand(way.Chance)}</td>");
        if (priced)
        {
            html.Add($"<td>{(way.Cost is { } cost ? money.Amount(cost) : "–")}</td>");
        }

        html.Add($"</tr>\n");
    }
}
