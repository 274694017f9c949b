using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Compare;

/// <summary>A sowing that one plan has on another day than the plan it is compared with.</summary>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Grower">Grower whose batch it is.</param>
/// <param name="From">Planned sow date.</param>
/// <param name="To">Its sow date in the other plan.</param>
/// <param name="SetOutFrom">Planned set-out date.</param>
/// <param name="SetOutTo">
/// Set-out date in the other plan: the same where the plan gives it, else what follows from the sow date.
/// </param>
public sealed record MovedSowing(string Batch, string Grower, DateOnly From, DateOnly To, DateOnly SetOutFrom, DateOnly SetOutTo)
{
    /// <summary>Days moved, below 0 for earlier.</summary>
    public int Days => To.DayNumber - From.DayNumber;

    /// <summary>The sowings that a plan has on another day, in its order, among those that both have.</summary>
    /// <param name="before">The plan compared with.</param>
    /// <param name="after">The plan.</param>
    public static ImmutableArray<MovedSowing> Between(SeasonPlan before, SeasonPlan after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var planned = before.Batches.ToDictionary(batch => batch.Order.Id, StringComparer.Ordinal);
        return
        [
            .. after
                .Batches.Where(batch => planned.ContainsKey(batch.Order.Id))
                .Select(batch => Of(planned[batch.Order.Id], batch))
                .Where(move => move.Days != 0),
        ];
    }

    internal static MovedSowing Of(BatchPlan from, BatchPlan to) =>
        new(from.Order.Id, from.Order.Grower, from.SowOn, to.SowOn, from.SetOutOn, to.SetOutOn);
}
