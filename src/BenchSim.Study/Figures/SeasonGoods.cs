using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>Seed and potting mix that a batch really took in a played season: what was given up unsown took none.</summary>
internal static class SeasonGoods
{
    /// <summary>Seeds sown.</summary>
    public static long Seeds(BatchPlan plan, BatchOutcome outcome) =>
        plan.Flat is null
            ? (long)outcome.TraysStarted * plan.Tray.Cells * plan.Order.SeedsPerCell
            : (long)outcome.FlatsSown * plan.Order.SeedsPerFlat;

    /// <summary>Litres of loose potting mix: of flats when they are sown, of trays when they are sown or potted.</summary>
    public static double MixLitres(Scenario scenario, BatchPlan plan, BatchOutcome outcome) =>
        scenario.Rules.Mix.Loose((outcome.TraysStarted * plan.Tray.MediumLitres) + (outcome.FlatsSown * (plan.Flat?.MediumLitres ?? 0)));

    /// <summary>Price of a thousand seeds of a batch; null when none is given.</summary>
    public static double? ThousandSeeds(Scenario scenario, BatchPlan plan) =>
        plan.Order.ThousandSeeds ?? scenario.Rules.Prices.ThousandSeeds;
}
