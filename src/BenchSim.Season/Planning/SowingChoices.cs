using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// The days on which each batch of a plan may be sown within its tolerance, and the batch as it would then be planned. A set-out date that
/// is given stays the field's; one that follows from the sow date moves along (docs/level.md).
/// </summary>
public static class SowingChoices
{
    /// <summary>
    /// The choices of every batch: the planned sow date, and each other work day of the season at most <see cref="BatchOrder.EarlierDays"/>
    /// before or <see cref="BatchOrder.LaterDays"/> after it on which the seed has been tested and, where a set-out date is given, the
    /// batch is ready by it and not past its best before it, or no more so than as planned.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <returns>By batch, in order of sow date; a batch without a tolerance has its planned date alone.</returns>
    public static ImmutableArray<ImmutableArray<BatchPlan>> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var dater = plan.Batches.Any(HasTolerance) ? new Redater(plan) : null;
        return
        [
            .. plan.Batches.Select(
                (batch, index) =>
                    HasTolerance(batch) && plan.Past?.Batches[index].IsBegun != true
                        ? Choices(plan, batch, day => dater!.At(index, day))
                        : [batch]
            ),
        ];
    }

    private static bool HasTolerance(BatchPlan batch) => batch.Order is { EarlierDays: > 0 } or { LaterDays: > 0 };

    private static ImmutableArray<BatchPlan> Choices(SeasonPlan plan, BatchPlan batch, Func<DateOnly, BatchPlan?> at)
    {
        var choices = ImmutableArray.CreateBuilder<BatchPlan>();
        for (var days = -batch.Order.EarlierDays; days <= batch.Order.LaterDays; days++)
        {
            var day = batch.SowOn.AddDays(days);
            if (days == 0)
            {
                choices.Add(batch);
            }
            else if (MaySow(plan, batch.Order, day) && at(day) is { } moved && MeetsTheField(batch, moved))
            {
                choices.Add(moved);
            }
        }

        return choices.ToImmutable();
    }

    private static bool MaySow(SeasonPlan plan, BatchOrder order, DateOnly day) =>
        day >= (plan.Today ?? plan.FirstDay)
        && day <= plan.Scenario.Window.Closes
        && plan.Scenario.Rules.IsWorkDay(day)
        && !(order.TestedOn > day)
        && !(order.SetOut <= day);

    // Where no date was asked for, the set-out date follows the sowing and is met by its making.
    private static bool MeetsTheField(BatchPlan planned, BatchPlan moved) =>
        planned.Order.SetOut is null
        || (Late(moved) <= Math.Max(0, Late(planned)) && -Late(moved) <= Math.Max(planned.Crop.HoldDays, -Late(planned)));

    // Days from the wanted date to the first on which it is ready; below 0 when it is ready before.
    private static int Late(BatchPlan batch) => batch.ReadyOn.DayNumber - batch.SetOutOn.DayNumber;
}
