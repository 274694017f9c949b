using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Mending;

/// <summary>What a season costs in work, heat, mix and seed, as far as the site gives prices.</summary>
internal sealed class MendMoney
{
    private readonly Prices _prices;
    private readonly bool _hasEnergy;
    private readonly Measure _energy;

    /// <summary>Readies it for a plan.</summary>
    public MendMoney(Scenario scenario)
    {
        _prices = scenario.Rules.Prices;
        _energy = Measures.EnergyCost(_prices.Currency);
        House[] houses = [.. scenario.Houses.Where(SeasonEnergy.Burns)];
        ImmutableArray<MatPower> mats = [.. scenario.Spaces.Select(space => space.Power).OfType<MatPower>()];

        // A cost that leaves something out would mislead.
        _hasEnergy = houses.All(house => house.Heat!.Price is not null) && mats.All(mat => mat.Price is not null);
        IsKnown = _prices.LabourHour is not null && _hasEnergy;
    }

    /// <summary>Whether work and heat have prices.</summary>
    public bool IsKnown { get; }

    /// <summary>Cost of a season, thousandths; 0 where it is not known.</summary>
    public long PartsOf(MeasuredSeason season) =>
        !IsKnown
            ? 0
            : SeasonEnergy.Rounded(season.WorkParts / WorkSeason.PartsAnHour * _prices.LabourHour!.Value)
                + _energy.Read(season)
                + SeasonEnergy.Rounded(Measures.MixLitres.Read(season) / SeasonEnergy.Thousandths * (_prices.MixLitre ?? 0))
                + SeasonEnergy.Rounded(
                    season.Goods((plan, outcome) => SeasonEnergy.Rounded(SeedCost(plan, outcome))) / SeasonEnergy.Thousandths
                );

    private double SeedCost(BatchPlan plan, Season.Play.BatchOutcome outcome) =>
        SeasonGoods.Seeds(plan, outcome) / 1000.0 * (plan.Order.ThousandSeeds ?? _prices.ThousandSeeds ?? 0);
}
