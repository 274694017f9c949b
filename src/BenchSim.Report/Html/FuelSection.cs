using BenchSim.Report.Words;
using BenchSim.Season.Air;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>What the houses burn and the mats draw.</summary>
internal static class FuelSection
{
    public static void Write(HtmlText html, StudyResult result, Dates dates)
    {
        html.Add($"<section id=\"fuel\" aria-labelledby=\"fuel-title\"><h2 id=\"fuel-title\">Fuel and electricity</h2>\n");
        html.Add($"<p>Of {Numbers.Count(result.Seasons, "season", "seasons")} played. All figures are in <a ");
        html.Add($"href=\"tables/fuel.csv\">tables/fuel.csv</a>.</p>\n");
        if (result.Plan.Scenario.Houses.IsEmpty && result.Houses.IsEmpty)
        {
            html.Add($"<p>The site has no house, so no fuel is shown.</p>\n");
        }

        foreach (var house in result.Plan.Scenario.Houses)
        {
            Write(html, house, result.Houses.FirstOrDefault(at => at.House.Id == house.Id), result, dates);
        }

        MatsPart.Write(html, result);
        html.Add($"</section>\n");
    }

    /// <summary>Why no fuel is shown for a house, in words.</summary>
    internal static string WhyNone(House house) =>
        (house.IsHeated, house.Heat) switch
        {
            (false, _) => "It has no heating set-point: it is not heated and uses no fuel.",
            (true, null) => "No fuel is shown, because its shell or its heater is not given: dimensions, covering and fuel in site.toml.",
            _ => "No fuel is shown: this result has no count of it.",
        };

    private static void Write(HtmlText html, House house, HouseResult? counted, StudyResult result, Dates dates)
    {
        html.Add($"<h3>{HtmlText.Name(house.Name, 80)}</h3>\n<dl>");
        if (counted is { Fuel: { } fuel, House.Heat: { } heat })
        {
            var measure = new FuelMeasure(heat.Fuel, result.Plan.Scenario.Units);
            Season(html, fuel, heat, measure, result.Plan.Scenario);
        }
        else
        {
            html.Add($"<div><dt>Fuel of the season</dt><dd>{WhyNone(house)}</dd></div>");
        }

        if (counted is not null)
        {
            html.Add($"<div><dt>Open</dt><dd>{Spreads.Amount(counted.DaysOpen, "day", "days")}</dd></div>");
        }

        var load = house.Load;
        if (load is { } night)
        {
            html.Add($"<div><dt>Coldest night given</dt><dd>{Words(night, result.Plan.Scenario.Units)}</dd></div>");
        }

        if (house.Body is not null)
        {
            AirPart.Write(html, HouseAirNeed.Of(house), result.Plan.Scenario.Units);
        }

        html.Add($"</dl>\n");
        Cautions(html, counted?.Fuel is not null, load is not null, house.Body is not null);
        if (counted is { Fuel: not null, Months.IsDefaultOrEmpty: false })
        {
            MonthsPart.Write(html, counted, result, dates);
        }
    }

    private static void Season(HtmlText html, Estimate bought, HouseHeat heat, FuelMeasure measure, Scenario scenario)
    {
        var amount = Spreads.Mean(measure.Of(bought), Numbers.Fine, " " + measure.Plural);
        html.Add($"<div><dt>Fuel of the season</dt><dd>{heat.Fuel.Name}: {amount}</dd></div><div><dt>Its cost</dt><dd>");
        if (heat.Price is { } price)
        {
            var money = new Money(scenario.Rules.Prices.Currency);
            html.Add($"{Spreads.Mean(Spreads.Times(bought, price), money.Amount, "")}, at ");
            html.Add($"{money.Price(measure.Price(price))} per {measure.Unit}</dd></div>");
        }
        else
        {
            html.Add($"not shown, because no price is given</dd></div>");
        }
    }

    private static string Words(DesignLoad load, UnitSystem units) =>
        $"kept at {Temperatures.Words(load.InsideC, units)} with {Temperatures.Words(load.OutdoorC, units)} outdoors, "
        + $"the house loses about {Numbers.Rough(load.Watts)} "
        + $"W{(units == UnitSystem.Imperial ? $" ({Numbers.Rough(load.BtuPerHour)} Btu/h)" : "")}";

    private static void Cautions(HtmlText html, bool fuel, bool load, bool air)
    {
        if (!fuel && !load && !air)
        {
            return;
        }

        html.Add($"<p class=\"caution\"><strong>Caution.</strong>");
        if (fuel)
        {
            html.Add($" {HeatCautions.Fuel}");
        }

        if (load)
        {
            html.Add($" {DesignLoad.Caution}");
        }

        if (air)
        {
            html.Add($" {HeatCautions.Air}");
        }

        html.Add($" {HeatCautions.Structure}</p>\n");
    }
}
