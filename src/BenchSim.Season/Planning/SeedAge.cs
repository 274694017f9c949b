using BenchSim.Season.Inputs;
using BenchSim.Season.Seed;

namespace BenchSim.Season.Planning;

/// <summary>What a packet still germinates when it is sown.</summary>
public static class SeedAge
{
    /// <summary>
    /// The packet's germination, aged from its test to the planned sowing where the date of the test, the storage and the crop's constants
    /// are known; else the packet's value as it is.
    /// </summary>
    /// <param name="rules">Rules, with the storage and the size of the test.</param>
    /// <param name="batch">Batch with its sow date.</param>
    /// <returns>A fraction from 0 to 1.</returns>
    public static double AtSowing(SiteRules rules, BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(batch);
        return IsAged(rules, batch) && ViabilityTable.FindCrop(batch.Crop.Id) is { } known
            ? SeedViability.AtSowing(
                batch.Order.Germination,
                rules.GerminationSample,
                batch.Order.TestedOn!.Value,
                batch.SowOn,
                known.Constants,
                rules.SeedStorage!.Value
            )
            : batch.Order.Germination;
    }

    /// <summary>Whether the packet's value is aged.</summary>
    /// <param name="rules">Rules, with the storage.</param>
    /// <param name="batch">Batch with its sow date.</param>
    public static bool IsAged(SiteRules rules, BatchPlan batch)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(batch);
        return rules.SeedStorage.HasValue
            && batch.Order.TestedOn is { } tested
            && tested <= batch.SowOn
            && ViabilityTable.FindCrop(batch.Crop.Id) is not null;
    }
}
