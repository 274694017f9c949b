using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>How many trays, flats and seeds a batch takes.</summary>
internal static class BatchNumbers
{
    // A hundred times the obvious number of trays makes good what comes up less, not what is lost.
    private const double HardlyAny = 0.1;

    /// <summary>The batch with its numbers; a fault is added when no number of trays would do.</summary>
    public static BatchPlan Work(Scenario scenario, BatchPlan dated, double pathMeanC, ImmutableArray<Fault>.Builder faults)
    {
        var at = $"at {UnitWords.Temperature(pathMeanC, scenario.Units)}";
        return Work(scenario, dated with { RelativeGermination = Stand.RelativeGermination(dated.Crop, pathMeanC) }, at, faults);
    }

    /// <summary>
    /// The batch with its numbers by the rules of a scenario, its dates and what comes up where it stands kept; a fault is added when no
    /// number of trays would do.
    /// </summary>
    public static BatchPlan Again(Scenario scenario, BatchPlan kept, ImmutableArray<Fault>.Builder faults) =>
        Work(scenario, kept, "where it stands", faults);

    private static BatchPlan Work(Scenario scenario, BatchPlan dated, string at, ImmutableArray<Fault>.Builder faults)
    {
        var order = dated.Order;
        var relative = dated.RelativeGermination;
        var germination = SeedAge.AtSowing(scenario.Rules, dated);
        var packet = BetaLaw.Of(germination, scenario.Rules.GerminationSample);
        dated = dated with { Germination = germination };
        var numbers = dated.Flat is null ? Direct(scenario, dated, packet, relative) : PotUp(scenario, dated, packet, relative);
        if (numbers.Trays < 0 || numbers.Flats < 0)
        {
            faults.Add(
                StandLoss.Of(dated.Crop).HasSpread && germination * relative >= HardlyAny
                    ? new Fault(
                        order.Place,
                        $"no number of trays brings batch \"{order.Id}\" its plants with the chance that stand_assurance asks for: "
                            + "too often nearly all of it is lost",
                        "ask for less, or lower stand_loss or stand_loss_correlation of the crop"
                    )
                    : new Fault(
                        order.Place,
                        $"batch \"{order.Id}\" would hardly come up: {germination:P0} of the seed at its best, "
                            + $"and {relative:P0} of that {at}",
                        "sow it warmer or cooler, or use better seed"
                    )
            );
        }

        return numbers;
    }

    private static BatchPlan Direct(Scenario scenario, BatchPlan dated, BetaLaw packet, double relative)
    {
        var order = dated.Order;
        var loss = StandLoss.Of(dated.Crop);
        double PerCell(double germination) => Stand.CellChance(germination * relative, order.SeedsPerCell);
        var (trays, chance) = order.Trays is { } given
            ? (given, Stand.Chance(packet, given * dated.Tray.Cells, PerCell, loss, order.Plants))
            : Stand.TraysFor(packet, dated.Tray.Cells, PerCell, loss, order.Plants, scenario.Rules.StandAssurance);
        return dated with { Trays = trays, Flats = 0, Seeds = (long)trays * dated.Tray.Cells * order.SeedsPerCell, StandChance = chance };
    }

    // Trays that are potted up are full: they only make good the losses after it. The flats make good the rest.
    private static BatchPlan PotUp(Scenario scenario, BatchPlan dated, BetaLaw packet, double relative)
    {
        var order = dated.Order;
        var sure = new BetaLaw(1, 1);
        var loss = StandLoss.Of(dated.Crop);
        var trays = order.Trays ?? Stand.TraysFor(sure, dated.Tray.Cells, _ => 1, loss, order.Plants, scenario.Rules.StandAssurance).Trays;
        double Seedling(double germination) => germination * relative * (1 - dated.Crop.PotUpLoss);
        var flats = order.Flats
            ?? Stand.TraysFor(packet, order.SeedsPerFlat, Seedling, loss, order.Plants, scenario.Rules.StandAssurance).Trays;
        var seeds = (long)flats * order.SeedsPerFlat;
        var chance =
            trays < 0 || flats < 0 ? 0 : PotUpStand.Chance(packet, seeds, Seedling, (long)trays * dated.Tray.Cells, loss, order.Plants);
        return dated with { Trays = trays, Flats = flats, Seeds = seeds, StandChance = chance };
    }
}
