using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The electricity of the heat mats, and the check of their circuits.</summary>
internal static class MatsPart
{
    public static void Write(HtmlText html, StudyResult result)
    {
        Space[] mats = [.. result.Plan.Scenario.Spaces.Where(space => space.Kind == SpaceKind.Mat)];
        foreach (var space in mats)
        {
            html.Add($"<h3>{HtmlText.Name(space.Name, 80)}: electricity</h3>\n<dl>");
            Use(html, space, result.MatPower.FirstOrDefault(at => at.Space.Id == space.Id), result.Plan.Scenario);
            if (space.Power is { } power)
            {
                Circuit(html, power);
            }

            html.Add($"</dl>\n");
            if (space.Power is not null)
            {
                html.Add($"<p class=\"caution\"><strong>Caution.</strong> {HeatCautions.Mats} {HeatCautions.CircuitLimits}</p>\n");
            }
        }
    }

    private static void Use(HtmlText html, Space space, MatPowerResult? counted, Scenario scenario)
    {
        html.Add($"<div><dt>In the season</dt><dd>");
        if (space.Power is not { } power || counted is null)
        {
            var why = space.Power is null ? "because the watts of the mats are not given" : "because this result has no count of it";
            html.Add($"No electricity is shown, {why}.</dd></div>");
            return;
        }

        html.Add($"{Spreads.Mean(counted.KilowattHours, Numbers.Fine, " kWh")}: {Numbers.Whole(power.Watts)} W, switched on ");
        html.Add(
            $"{(power.Duty >= 1 ? "all day and night" : $"{ChanceWords.Percent(power.Duty)} of the time")} on days with trays on them"
        );
        html.Add($"{(power.Duty >= 1 ? ", which is the most they can draw" : "")}</dd></div>");
        if (power.Price is { } price)
        {
            var money = new Money(scenario.Rules.Prices.Currency);
            html.Add($"<div><dt>Its cost</dt><dd>{Spreads.Mean(Spreads.Times(counted.KilowattHours, price), money.Amount, "")}, at ");
            html.Add($"{money.Price(price)} per kWh</dd></div>");
        }
    }

    private static void Circuit(HtmlText html, MatPower power)
    {
        html.Add($"<div><dt>Circuit</dt><dd>");
        if (HeatFigures.CheckOf(power) is not { } check)
        {
            html.Add($"Not checked, because the volts or the breaker of the circuit are not given.</dd></div>");
        }
        else if (check.IsWithin)
        {
            html.Add($"{check.Words}</dd></div>");
        }
        else
        {
            html.Add($"<b class=\"flag\">{check.Words}</b></dd></div>");
        }
    }
}
