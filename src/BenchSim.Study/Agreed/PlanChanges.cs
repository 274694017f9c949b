using BenchSim.Season.Inputs;

namespace BenchSim.Study.Agreed;

/// <summary>How far a plan is no longer the one that was agreed, in sowings.</summary>
/// <param name="Changed">Sowings of another crop, variety, grower, date, tray or number.</param>
/// <param name="New">Sowings that were not agreed.</param>
/// <param name="Gone">Sowings that are no longer planned.</param>
public readonly record struct PlanChanges(int Changed, int New, int Gone)
{
    /// <summary>All of them.</summary>
    public int All => Changed + New + Gone;

    /// <summary>Sets two plans side by side, sowing by sowing of the same id.</summary>
    /// <param name="agreed">The plan that was agreed.</param>
    /// <param name="now">The plan as it is.</param>
    public static PlanChanges Of(SeasonPlan agreed, SeasonPlan now)
    {
        ArgumentNullException.ThrowIfNull(agreed);
        ArgumentNullException.ThrowIfNull(now);
        var before = agreed.Batches.ToDictionary(batch => batch.Order.Id, Agreed, StringComparer.Ordinal);
        var kept = now.Batches.Where(batch => before.ContainsKey(batch.Order.Id)).ToArray();
        return new PlanChanges(
            kept.Count(batch => before[batch.Order.Id] != Agreed(batch)),
            now.Batches.Length - kept.Length,
            before.Count - kept.Length
        );
    }

    private static (string, string, string, int, DateOnly, DateOnly, string, string?, int, int) Agreed(BatchPlan batch) =>
        (
            batch.Order.CropId,
            batch.Order.Variety,
            batch.Order.Grower,
            batch.Order.Plants,
            batch.SowOn,
            batch.SetOutOn,
            batch.Tray.Id,
            batch.Flat?.Id,
            batch.Trays,
            batch.Flats
        );
}
