using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Fields;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Tells the fuel of houses and the electricity of mats that a plan is expected to take, each with its caution.</summary>
internal static class EnergyTelling
{
    private const double WattsAKilowatt = 1000;

    public static void TellFuel(Passages words, Scenario scenario, ClimateSummary climate)
    {
        if (climate.Houses.IsEmpty)
        {
            return;
        }

        words.Heading($"Fuel expected, mean of {Numbers.Count(climate.Years, "year", "years")} of weather");
        var priced = climate.Houses.Any(need => need.House.Heat!.Price is not null);
        string[] columns = ["house", "fuel", "month", ">amount", "unit", "mildest to coldest year"];
        var table = words.Table(priced ? [.. columns, ">cost"] : columns);
        foreach (var need in climate.Houses)
        {
            AddRows(table, scenario, need, priced);
        }

        words.Sentence(
            "A house is heated from its opening date, or, without one, from two days before its first planned tray, to the closing date; "
                + "also while trays stand in it, and the day before. The plan is played in each of the years to see when that is.",
            2
        );
        foreach (var need in climate.Houses)
        {
            if (need.House.Heat is { Price: { } price, Fuel: var fuel })
            {
                words.Sentence(
                    $"{PlainText.Short(need.House.Name, 40)}: {fuel.Name} at {PriceOfUnit(scenario, fuel, price)}, as given.",
                    2
                );
            }
        }

        foreach (var need in climate.Houses.Where(need => need.House.Opening == HouseOpening.WhenNeeded))
        {
            words.Sentence(
                need.Most > 0
                    ? $"{PlainText.Short(need.House.Name, 40)} is heated only while trays stand in it, and the day before."
                    : $"{PlainText.Short(need.House.Name, 40)} is not needed in any of the years, and so not heated.",
                2
            );
        }

        Caution(words, HeatCautions.Fuel);
        Caution(words, HeatCautions.Structure);
        TellLoads(words, scenario, climate);
    }

    public static void TellMats(Passages words, Scenario scenario, ClimateSummary climate)
    {
        if (climate.Mats.IsEmpty)
        {
            return;
        }

        words.Heading("Electricity of heat mats, by the planned dates");
        var priced = climate.Mats.Any(need => need.Space.Power!.Price is not null);
        string[] columns = ["mats", ">watts", ">days in use", ">kWh"];
        var table = words.Table(priced ? [.. columns, ">cost"] : columns);
        foreach (var need in climate.Mats)
        {
            var power = need.Space.Power!;
            string[] cells = [need.Space.Name, Numbers.Plain(power.Watts), Numbers.Whole(need.Days), Numbers.Short(need.KilowattHours)];
            table.Add(priced ? [.. cells, Cost(scenario, need.KilowattHours, power.Price)] : cells);
        }

        words.Sentence("All mats of a space count as on whenever a tray is planned on one of them.", 2);
        foreach (var need in climate.Mats)
        {
            if (need.Circuit is { } circuit)
            {
                words.Sentence($"{PlainText.Short(need.Space.Name, 40)}: {circuit.Words}", 2);
            }
        }

        Caution(words, HeatCautions.Mats);
        if (climate.Mats.Any(need => need.Circuit is not null))
        {
            Caution(words, HeatCautions.CircuitLimits);
        }
    }

    private static void AddRows(Table table, Scenario scenario, HouseNeed need, bool priced)
    {
        var heat = need.House.Heat!;
        foreach (var month in need.Months)
        {
            Add(month.First.ToString("yyyy-MM", null), month.Units, "");
        }

        Add("season", need.Mean, $"{Amount(scenario, heat.Fuel, need.Least)} to {Amount(scenario, heat.Fuel, need.Most)}");

        void Add(string when, double units, string spread)
        {
            string[] cells = [need.House.Name, heat.Fuel.Name, when, Amount(scenario, heat.Fuel, units), Unit(scenario, heat.Fuel), spread];
            table.Add(priced ? [.. cells, Cost(scenario, units, heat.Price)] : cells);
        }
    }

    private static void TellLoads(Passages words, Scenario scenario, ClimateSummary climate)
    {
        HouseNeed[] known = [.. climate.Houses.Where(need => need.Load is not null)];
        if (known.Length == 0)
        {
            return;
        }

        words.Heading("Heat lost on the coldest night the heater must stand up to");
        var isMetric = scenario.Units == UnitSystem.Metric;
        string[] columns = ["house", ">inside", ">outdoors", ">kW"];
        var table = words.Table(isMetric ? columns : [.. columns, ">Btu an hour"]);
        foreach (var need in known)
        {
            var load = need.Load!.Value;
            string[] cells =
            [
                need.House.Name,
                Quantity.Temperature.Write(load.InsideC, scenario.Units),
                Quantity.Temperature.Write(load.OutdoorC, scenario.Units),
                Numbers.Tenths(load.Watts / WattsAKilowatt),
            ];
            table.Add(isMetric ? cells : [.. cells, Numbers.Whole((long)Math.Round(load.BtuPerHour))]);
        }

        Caution(words, DesignLoad.Caution);
    }

    private static void Caution(Passages words, string caution) => words.Sentence("Caution: " + caution, 2);

    private static string Amount(Scenario scenario, Fuel fuel, double units) =>
        Numbers.Short(scenario.Units == UnitSystem.Metric ? fuel.ToMetric(units) : units);

    private static string Unit(Scenario scenario, Fuel fuel) => scenario.Units == UnitSystem.Metric ? fuel.MetricUnit : fuel.Unit;

    private static string PriceOfUnit(Scenario scenario, Fuel fuel, double price) =>
        $"{new Money(scenario.Rules.Prices.Currency).Price(scenario.Units == UnitSystem.Metric ? price / fuel.MetricPerUnit : price)} per "
        + $"{Unit(scenario, fuel)}";

    private static string Cost(Scenario scenario, double units, double? price) =>
        price is { } each ? new Money(scenario.Rules.Prices.Currency).Amount(units * each) : "-";
}
