using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Invest;

/// <summary>
/// Reads quantities and costs of a plan off a played season, as whole numbers: quantities in parts of their unit, costs in thousandths of
/// money.
/// </summary>
internal sealed class SeasonMoney(SeasonPlan plan, ImmutableArray<SeasonPart> parts)
{
    private readonly Scenario _scenario = plan.Scenario;
    private readonly Prices _prices = plan.Scenario.Rules.Prices;

    /// <summary>Fills one quantity and one cost a part; a part without a price, and the plants, cost 0.</summary>
    public void Read(SeasonResult season, long[] quantities, long[] costs)
    {
        for (var at = 0; at < parts.Length; at++)
        {
            quantities[at] = Quantity(parts[at], season);
            costs[at] = parts[at].IsPriced ? Cost(parts[at], season, quantities[at]) : 0;
        }
    }

    private long Quantity(SeasonPart part, SeasonResult season) =>
        part.Kind switch
        {
            MoneyKind.Plants => season.PlantsInTime,
            MoneyKind.Labour => WorkSeason.PartsOf(season, _scenario.Rules),
            MoneyKind.Fuel => SeasonEnergy.Fuel(_scenario, season, IsOf(part), _ => 1),
            MoneyKind.MatPower => SeasonEnergy.MatPower(_scenario, season, _ => 1),
            MoneyKind.Mix => Sum(season, (batch, outcome) => SeasonEnergy.Rounded(SeasonGoods.MixLitres(_scenario, batch, outcome))),
            MoneyKind.Seed => Sum(season, SeasonGoods.Seeds),
            _ => throw new InvalidOperationException("An unknown part."),
        };

    private long Cost(SeasonPart part, SeasonResult season, long quantity) =>
        part.Kind switch
        {
            MoneyKind.Plants => 0,
            MoneyKind.Labour => SeasonEnergy.Rounded(quantity / part.Parts * _prices.LabourHour!.Value),
            MoneyKind.Fuel => SeasonEnergy.Fuel(_scenario, season, IsOf(part), house => house.Heat!.Price!.Value),
            MoneyKind.MatPower => SeasonEnergy.MatPower(_scenario, season, power => power.Price!.Value),
            MoneyKind.Mix => SeasonEnergy.Rounded(quantity / part.Parts * _prices.MixLitre!.Value),
            MoneyKind.Seed => Sum(season, (batch, outcome) =>
                SeasonEnergy.Rounded(SeasonGoods.Seeds(batch, outcome) / 1000.0 * SeasonGoods.ThousandSeeds(_scenario, batch)!.Value)
            ),
            _ => throw new InvalidOperationException("An unknown part."),
        };

    private static Func<House, bool> IsOf(SeasonPart part) =>
        house => string.Equals(house.Heat!.Fuel.Id, part.FuelId, StringComparison.Ordinal);

    private long Sum(SeasonResult season, Func<BatchPlan, BatchOutcome, long> of)
    {
        long sum = 0;
        for (var at = 0; at < plan.Batches.Length; at++)
        {
            sum += of(plan.Batches[at], season.Batches[at]);
        }

        return sum;
    }
}
