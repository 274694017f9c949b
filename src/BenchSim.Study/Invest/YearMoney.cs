using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Invest;

/// <summary>
/// What a season of a plan brings in money as far as it has a price, so that a plan and a variant of it can be set against each other
/// season by season; the same money as in <see cref="InvestRunner"/>.
/// </summary>
internal sealed class YearMoney
{
    private readonly ImmutableArray<SeasonPart> _parts;
    private readonly CaseInputs _inputs;

    /// <summary>Makes it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="variant">The variant, with its terms.</param>
    public YearMoney(SeasonPlan plan, SeasonPlan variant)
    {
        _parts = SeasonPart.Of(plan, variant);
        _inputs = CaseInputs.Of(variant.Scenario.Invest!, variant.Scenario.Rules.Prices);
    }

    /// <summary>What the variant costs in each year of its life, whatever the season brings: capital and upkeep, less what it is still
    /// worth at the end.</summary>
    public double CostAYear => _inputs.Upkeep - (_inputs.Net(0) / _inputs.Annuity);

    /// <summary>Reads the money off a season: what plants in time are worth, less what the season costs.</summary>
    /// <param name="plan">The plan that was played.</param>
    public Func<SeasonResult, double> ReaderOf(SeasonPlan plan)
    {
        var reader = new SeasonMoney(plan, _parts);
        var (quantities, costs) = (new long[_parts.Length], new long[_parts.Length]);
        return season =>
        {
            reader.Read(season, quantities, costs);
            var money = 0.0;
            for (var at = 0; at < _parts.Length; at++)
            {
                money += _parts[at].Kind == MoneyKind.Plants ? quantities[at] * _inputs.PlantWorth : -costs[at] / SeasonEnergy.Thousandths;
            }

            return money;
        };
    }
}
