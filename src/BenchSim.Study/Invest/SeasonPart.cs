using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Invest;

/// <summary>A part of a season's money as it is counted.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="FuelId">Fuel of <see cref="MoneyKind.Fuel"/>; empty for others.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Unit">Unit of the quantity.</param>
/// <param name="Parts">Whole numbers counted to one unit.</param>
/// <param name="IsPriced">Whether all of it has a price, in the base and in the variant.</param>
internal sealed record SeasonPart(MoneyKind Kind, string FuelId, string Name, string Unit, double Parts, bool IsPriced)
{
    /// <summary>The parts of two plans, in the order of <see cref="MoneyKind"/>.</summary>
    public static ImmutableArray<SeasonPart> Of(params SeasonPlan[] plans)
    {
        Scenario[] scenarios = [.. plans.Select(plan => plan.Scenario)];
        var parts = ImmutableArray.CreateBuilder<SeasonPart>();
        parts.Add(new SeasonPart(MoneyKind.Plants, "", "plants on time", "plants", 1, true));
        parts.Add(
            new SeasonPart(
                MoneyKind.Labour,
                "",
                "labour",
                "hours",
                WorkSeason.PartsAnHour,
                scenarios.All(each => each.Rules.Prices.LabourHour is not null)
            )
        );
        HouseHeat[] heats = [.. scenarios.SelectMany(each => each.Houses).Where(SeasonEnergy.Burns).Select(house => house.Heat!)];
        var isMetric = scenarios[0].Units == UnitSystem.Metric;
        foreach (
            var fuel in heats
                .Select(heat => heat.Fuel)
                .DistinctBy(fuel => fuel.Id, StringComparer.Ordinal)
                .OrderBy(fuel => fuel.Id, StringComparer.Ordinal)
        )
        {
            var isPriced = heats.All(heat => heat.Price is not null || !IsOf(heat, fuel));
            var unit = isMetric ? SeasonEnergy.Thousandths / fuel.MetricPerUnit : SeasonEnergy.Thousandths;
            parts.Add(
                new SeasonPart(MoneyKind.Fuel, fuel.Id, $"fuel: {fuel.Name}", isMetric ? fuel.MetricUnit : fuel.Unit, unit, isPriced)
            );
        }

        MatPower[] mats = [.. scenarios.SelectMany(each => each.Spaces).Select(space => space.Power).OfType<MatPower>()];
        if (mats.Length > 0)
        {
            parts.Add(
                new SeasonPart(
                    MoneyKind.MatPower,
                    "",
                    "electricity of the heat mats",
                    "kWh",
                    SeasonEnergy.Thousandths,
                    mats.All(mat => mat.Price is not null)
                )
            );
        }

        parts.Add(
            new SeasonPart(
                MoneyKind.Mix,
                "",
                "potting mix",
                "litres",
                SeasonEnergy.Thousandths,
                scenarios.All(each => each.Rules.Prices.MixLitre is not null)
            )
        );
        parts.Add(
            new SeasonPart(
                MoneyKind.Seed,
                "",
                "seed",
                "seeds",
                1,
                plans.All(plan => plan.Batches.All(batch => SeasonGoods.ThousandSeeds(plan.Scenario, batch) is not null))
            )
        );
        return parts.ToImmutable();
    }

    private static bool IsOf(HouseHeat heat, Fuel fuel) => string.Equals(heat.Fuel.Id, fuel.Id, StringComparison.Ordinal);
}
