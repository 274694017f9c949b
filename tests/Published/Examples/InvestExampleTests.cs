using BenchSim.Folder;
using BenchSim.Published.Library;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Invest;

namespace BenchSim.Published.Examples;

/// <summary>The money case on the spring example: what must not change does not, and what changes is what a comparison says.</summary>
public class InvestExampleTests
{
    private const int Seasons = 40;
    private const ulong Seed = 2027;

    private static readonly string s_folder = Path.Combine(Repository.Root, "scenarios", "two-house-spring");
    private static readonly SeasonPlan s_base = SeasonPlanner.Make(ScenarioFolder.Read(s_folder).Scenario!).Plan!;
    private static readonly StudyOptions s_options = new() { Seasons = Seasons, Seed = Seed };

    [Fact]
    public void A_house_that_is_never_used_costs_its_capital_upkeep_and_fuel_and_brings_nothing()
    {
        var spare = s_base.Scenario.Houses[0] with
        {
            Id = "spare",
            Name = "Never used",

            // Open all season, it would be heated from its first tray, and there is none.
            Opening = HouseOpening.FromDate,
            OpensOn = s_base.Scenario.Window.Opens,
        };
        var terms = new InvestTerms
        {
            Capital = 9000,
            LifeYears = 12,
            DiscountRate = 0.06,
            PlantOnTime = 2,
            Upkeep = 100,
        };
        var plan = VariantPlanner.Make(s_base, s_base.Scenario with { Houses = [.. s_base.Scenario.Houses, spare], Invest = terms }).Plan!;
        var result = InvestRunner.Play(s_base, ("spare", plan), s_options, null, CancellationToken.None);
        foreach (var part in result.Parts)
        {
            if (part.Kind == MoneyKind.Fuel)
            {
                Assert.True(part.Quantity - part.QuantityHalfWidth > 0 && part.Benefit < 0);
            }
            else
            {
                Assert.Equal((0.0, 0.0, 0.0), (part.Quantity, part.QuantityHalfWidth, part.Benefit));
            }
        }

        var fuel = result.Parts.Single(part => part.Kind == MoneyKind.Fuel).Benefit;
        var annuity = (1 - Math.Pow(1.06, -12)) / 0.06;
        Assert.Equal(-9000 + ((fuel - 100) * annuity), result.NetPresentValue.Mean, 1e-6);
        Assert.Equal(0, result.Pays.Share);
        Assert.True(result.BreakEvens.Single(each => each.Input == InvestInput.PlantOnTime).IsHopeless);
    }

    [Fact]
    public void Plants_hours_and_costs_are_those_of_a_comparison()
    {
        var plan = VariantPlanner.Make(s_base, ScenarioFolder.ReadVariant(s_folder, "more-mats").Scenario!).Plan!;
        var invest = InvestRunner.Play(s_base, ("more-mats", plan), s_options, null, CancellationToken.None);
        var compare = CompareRunner.Play(s_base, [("more-mats", plan)], s_options, null, CancellationToken.None).Variants[0];
        Assert.Equal(compare.Of(Measures.PlantsInTime)!.Difference, Part(MoneyKind.Plants).Quantity, 1e-9);
        Assert.Equal(compare.Of(Measures.LabourHours)!.Difference, Part(MoneyKind.Labour).Quantity, 1e-9);
        Assert.Equal(
            compare.Of(Measures.EnergyCost(""))!.Difference,
            -(Part(MoneyKind.Fuel).Benefit + Part(MoneyKind.MatPower).Benefit),
            1e-6
        );
        Assert.Equal((compare.Fits.Base, compare.Fits.Variant), (invest.BaseFits, invest.VariantFits));
        Assert.Equal(invest.Parts.Sum(part => part.Benefit) - invest.Terms.Upkeep, invest.YearlyBenefit.Mean, 1e-6);
        Assert.Equal("invented for this example: every figure is an assumption", invest.Terms.Basis);

        MoneyPart Part(MoneyKind kind) => invest.Parts.Single(part => part.Kind == kind);
    }
}
