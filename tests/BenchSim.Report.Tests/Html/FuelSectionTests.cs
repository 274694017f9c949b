using System.Xml;
using System.Xml.Linq;
using BenchSim.Report.Html;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Html;

public class FuelSectionTests
{
    private static readonly Estimate s_gallons = new(400, 8, 340, 398, 460, 470, 300, 500, 1000);

    [Fact]
    public void Fuel_and_cost_come_with_their_interval_and_spread()
    {
        // 400 gal at 2.50 cost 1,000; the interval 392 to 408 gal costs 980 to 1,020; 340 and 460 gal cost 850 and 1,150.
        var facts = Facts(Section(WithFuel()));

        Assert.Equal(
            "propane: 400 gal on average (95 % interval 392 to 408), between 340 and 460 gal in eight seasons of ten",
            facts["Fuel of the season"]
        );
        Assert.Equal(
            "$1,000 on average (95 % interval $980 to $1,020), between $850 and $1,150 in eight seasons of ten, at $2.50 per gal",
            facts["Its cost"]
        );
        Assert.Equal("120 days in every season", facts["Open"]);
    }

    [Fact]
    public void A_metric_report_has_metric_fuel()
    {
        // A gallon is 3.785411784 litres: 400 gal are 1,514.2 L, and 2.50 a gallon is 0.6604 a litre. The cost stays.
        var facts = Facts(Section(WithFuel(scenario => scenario with { Units = UnitSystem.Metric })));

        Assert.StartsWith(
            "propane: 1,514 L on average (95 % interval 1,484 to 1,544), between 1,287 and 1,741 L",
            facts["Fuel of the season"],
            StringComparison.Ordinal
        );
        Assert.StartsWith("$1,000 on average", facts["Its cost"], StringComparison.Ordinal);
        Assert.EndsWith("at $0.6604 per L", facts["Its cost"], StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_price_there_is_no_cost()
    {
        var section = Section(WithFuel(heat: heat => heat with { Price = null }));

        Assert.Equal("not shown, because no price is given", Facts(section)["Its cost"]);
        Assert.DoesNotContain("Cost", string.Concat(section.Descendants("th").Select(head => head.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_load_of_the_coldest_night_is_loss_times_difference()
    {
        // 400 W/K from the warmer set-point, 18 C, to -14.5 C outdoors: 400 x 32.5 = 13,000 W; a watt is 3.412
        // Btu/h: 44,358, to three figures 44,400.
        var facts = Facts(Section(WithFuel()));

        Assert.Equal("kept at 64 °F with 6 °F outdoors, the house loses about 13,000 W (44,400 Btu/h)", facts["Coldest night given"]);
        Assert.DoesNotContain(
            "Coldest night given",
            Facts(Section(WithFuel(heat: heat => heat with { DesignOutdoorC = null }))).Keys,
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void Every_month_has_a_row_and_the_season_ends_the_table()
    {
        var table = Section(WithFuel()).Descendants("table").Single();
        string[] rows =
        [
            .. table.Element("tbody")!.Elements("tr").Select(row => string.Join(" | ", row.Elements().Select(cell => cell.Value))),
        ];

        // Half of the fuel each month: 200 gal at 2.50 cost 500. The play ends on 1 May, of which it has that one day.
        Assert.Equal("March 2027 | 200 | 196 to 204 | 170 to 230 | $500", rows[0]);
        Assert.Equal("1 May 2027 | 200 | 196 to 204 | 170 to 230 | $500", rows[1]);
        Assert.Equal("Whole season | 400 | 392 to 408 | 340 to 460 | $1,000", rows[2]);
    }

    [Fact]
    public void A_house_without_fuel_says_why()
    {
        Assert.Contains("not heated", FuelSection.WhyNone(new House { Id = "a", Name = "A" }), StringComparison.Ordinal);
        Assert.Contains(
            "shell or its heater is not given",
            FuelSection.WhyNone(
                new House
                {
                    Id = "a",
                    Name = "A",
                    NightC = 10,
                }
            ),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "no count",
            FuelSection.WhyNone(
                new House
                {
                    Id = "a",
                    Name = "A",
                    NightC = 10,
                    Body = SyntheticHeat.Body(),
                    Heat = SyntheticHeat.House(),
                }
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_result_without_houses_or_mats_still_has_its_section()
    {
        var result = SyntheticStudy.Tiny() with { Houses = [], MatPower = [] };
        var bare = result.Plan.Scenario with
        {
            Houses = [],
            Spaces = [.. result.Plan.Scenario.Spaces.Select(space => space with { Power = null })],
        };
        var text = Section(result with { Plan = result.Plan with { Scenario = bare } }).Value;

        Assert.Contains("The site has no house, so no fuel is shown.", text, StringComparison.Ordinal);
        Assert.Contains("No electricity is shown, because the watts of the mats are not given.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Caution", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1440, false)]
    [InlineData(1500, true)]
    public void A_circuit_beyond_its_limit_stands_out(double watts, bool tooMuch)
    {
        // NEC 210.20(A): 80 % of 15 A at 120 V is 1,440 W.
        var section = Section(WithMats(new MatPower(watts, 1, 120, 15, null)));

        Assert.Contains(tooMuch ? "60 W too much" : "within the 80 % rule", Facts(section)["Circuit"], StringComparison.Ordinal);
        Assert.Equal(tooMuch, section.Descendants("b").Any(flag => (string?)flag.Attribute("class") == "flag"));
        Assert.Contains("the most they can draw", Facts(section)["In the season"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_circuit_that_is_not_given_is_said_not_to_be_checked() =>
        Assert.StartsWith(
            "Not checked",
            Facts(Section(WithMats(new MatPower(90, 1, null, 15, null))))["Circuit"],
            StringComparison.Ordinal
        );

    [Fact]
    public void Each_figure_that_could_hurt_has_its_caution()
    {
        string[] cautions =
        [
            .. Section(SyntheticStudy.Tiny())
                .Elements("p")
                .Where(part => (string?)part.Attribute("class") == "caution")
                .Select(part => part.Value),
        ];

        Assert.Equal(2, cautions.Length);
        foreach (var words in new[] { HeatCautions.Fuel, HeatCautions.DesignLoad, HeatCautions.Structure })
        {
            Assert.Contains(words, cautions[0], StringComparison.Ordinal);
        }

        foreach (var words in new[] { HeatCautions.Mats, HeatCautions.CircuitLimits })
        {
            Assert.Contains(words, cautions[1], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Growers_without_a_share_of_fuel_have_a_dash()
    {
        var result = SyntheticStudy.Tiny();
        var growers = Page(
                result with
                {
                    Growers = [result.Growers[0] with { FuelShare = double.NaN }, result.Growers[1] with { FuelShare = 0.25 }],
                }
            )
            .Descendants("section")
            .Single(section => (string?)section.Attribute("id") == "growers");

        string[] shares = [.. growers.Descendants("tbody").Elements("tr").Select(row => row.Elements().ElementAt(3).Value)];
        Assert.Equal(["–", "25 %"], shares);
    }

    [Fact]
    public void Only_batches_sown_in_their_trays_have_ways_to_a_stand()
    {
        // b01 is sown in its trays, b02 is potted up. As planned: 288 seeds at 25 a thousand, 4 trays of 3.4 litres, 4 loose, at 0.30 and
        // 4 minutes at 18 an hour: 7.20 + 4 (1.20 + 1.20) = 16.80.
        var batches = Page(SyntheticStudy.Tiny()).Descendants("section").Single(section => (string?)section.Attribute("id") == "batches");
        string[] rows =
        [
            .. batches
                .Elements("details")
                .Descendants("tbody")
                .Elements("tr")
                .Select(row => string.Join(" | ", row.Elements().Select(cell => cell.Value))),
        ];

        Assert.Equal("b01 | as planned | 4 | 1 | 288 | 93 % | $16.80", rows[0]);
        Assert.Equal(4, rows.Length);
        Assert.All(rows, row => Assert.StartsWith("b01", row, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("$", 1234.5, "$1,235")]
    [InlineData("EUR", 12.345, "EUR 12.35")]
    [InlineData("", 0.5, "0.50")]
    public void Money_has_its_sign_or_code_in_front(string currency, double value, string text) =>
        Assert.Equal(text, new Money(currency).Amount(value));

    [Fact]
    public void Units_are_those_of_the_fuel()
    {
        Assert.Equal(
            ("cord", "cords"),
            (new FuelMeasure(Fuels.Wood, UnitSystem.Imperial).Unit, new FuelMeasure(Fuels.Wood, UnitSystem.Imperial).Plural)
        );
        Assert.Equal("stacked m³", new FuelMeasure(Fuels.Wood, UnitSystem.Metric).Plural);
        Assert.Equal("therms", new FuelMeasure(Fuels.NaturalGas, UnitSystem.Imperial).Plural);
        Assert.Equal("kWh", new FuelMeasure(Fuels.NaturalGas, UnitSystem.Metric).Plural);
    }

    private static StudyResult WithFuel(Func<Scenario, Scenario>? change = null, Func<HouseHeat, HouseHeat>? heat = null)
    {
        var result = SyntheticStudy.Tiny();
        var house = result.Plan.Scenario.Houses[0];
        house = house with { Heat = heat is null ? house.Heat : heat(house.Heat!) };
        var scenario = result.Plan.Scenario with { Houses = [house] };
        var fuel = new HouseResult
        {
            House = house,
            DaysOpen = new Estimate(120, 0, 120, 120, 120, 120, 120, 120, 1000),
            Fuel = s_gallons,
            Months =
            [
                new MonthFuel(new DateOnly(2027, 3, 1), Spreads.Times(s_gallons, 0.5)),
                new MonthFuel(new DateOnly(2027, 5, 1), Spreads.Times(s_gallons, 0.5)),
            ],
        };
        return result with
        {
            Houses = [fuel],
            MatPower = [],
            Plan = result.Plan with { Scenario = change is null ? scenario : change(scenario) },
        };
    }

    private static StudyResult WithMats(MatPower power)
    {
        var result = SyntheticStudy.Tiny();
        var mats = result.Plan.Scenario.Spaces[0] with { Power = power };
        var scenario = result.Plan.Scenario with { Houses = [], Spaces = [mats] };
        return result with
        {
            Houses = [],
            MatPower = [new MatPowerResult(mats, s_gallons)],
            Plan = result.Plan with { Scenario = scenario },
        };
    }

    private static Dictionary<string, string> Facts(XElement section) =>
        section
            .Descendants("dl")
            .Elements("div")
            .GroupBy(fact => fact.Element("dt")!.Value, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First().Element("dd")!.Value, StringComparer.Ordinal);

    private static XElement Section(StudyResult result) =>
        Page(result).Descendants("section").Single(section => (string?)section.Attribute("id") == "fuel");

    private static XDocument Page(StudyResult result)
    {
        using var reader = XmlReader.Create(
            new StringReader(ReportPage.Write(result, [], null)),
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null }
        );
        return XDocument.Load(reader);
    }
}
