using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Planning;

/// <summary>
/// The ways to reach a stand, side by side: more trays at one seed a cell, two seeds a cell and thinning, or an extra tray.
/// </summary>
public static class StandWays
{
    /// <summary>Works out the ways of a directly sown batch, the planned one first; empty for a batch that is potted up.</summary>
    /// <param name="scenario">Scenario, with prices.</param>
    /// <param name="batch">Batch of its plan.</param>
    public static ImmutableArray<StandWay> Of(Scenario scenario, BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(batch);
        if (batch.Flat is not null)
        {
            return [];
        }

        var packet = BetaLaw.Of(batch.Germination, scenario.Rules.GerminationSample);
        var seeds = batch.Order.SeedsPerCell;

        // Of a crop that is grown in clusters one plant a cell would be another product.
        StandWay[] single =
            batch.Crop.KeepPerCell > 1
                ? []
                : [Reach(scenario, batch, packet, "one seed a cell", 1), Reach(scenario, batch, packet, "two seeds a cell and thin", 2)];
        return
        [
            Way(scenario, batch, "as planned", batch.Trays, seeds, batch.StandChance),
            .. single,
            Way(scenario, batch, "an extra tray", batch.Trays + 1, seeds, ChanceOf(batch, packet, batch.Trays + 1, seeds)),
        ];
    }

    private static StandWay Reach(Scenario scenario, BatchPlan batch, BetaLaw packet, string what, int seeds)
    {
        var (trays, chance) = Stand.TraysFor(
            packet,
            batch.Tray.Cells,
            PerCell(batch, seeds),
            StandLoss.Of(batch.Crop),
            batch.Order.Plants,
            scenario.Rules.StandAssurance
        );
        return Way(scenario, batch, what, trays, seeds, chance);
    }

    private static double ChanceOf(BatchPlan batch, BetaLaw packet, int trays, int seeds) =>
        Stand.Chance(packet, trays * batch.Tray.Cells, PerCell(batch, seeds), StandLoss.Of(batch.Crop), batch.Order.Plants);

    private static Func<double, double> PerCell(BatchPlan batch, int seeds) =>
        germination => Stand.CellChance(germination * batch.RelativeGermination, seeds);

    private static StandWay Way(Scenario scenario, BatchPlan batch, string what, int trays, int seedsPerCell, double chance)
    {
        var seeds = (long)Math.Max(trays, 0) * batch.Tray.Cells * seedsPerCell;
        return new StandWay(what, trays, seedsPerCell, seeds, chance, trays < 0 ? null : Cost(scenario, batch, trays, seedsPerCell, seeds));
    }

    private static double? Cost(Scenario scenario, BatchPlan batch, int trays, int seedsPerCell, long seeds)
    {
        var prices = scenario.Rules.Prices;
        var thousand = batch.Order.ThousandSeeds ?? prices.ThousandSeeds;
        return thousand is { } seed && prices.MixLitre is { } mix && prices.LabourHour is { } hour
            ? (seeds / 1000.0 * seed) + (trays * ((scenario.Rules.Mix.Loose(batch.Tray.MediumLitres) * mix) + (Minutes() / 60 * hour)))
            : null;

        double Minutes()
        {
            var (rules, tray) = (scenario.Rules, batch.Tray);
            var seconds = rules.Seconds.Sowing(tray, seedsPerCell) + rules.Seconds.Thinning(tray, seedsPerCell, batch.Crop.KeepPerCell);
            return rules.Minutes.Sow + (seconds / 60);
        }
    }
}
