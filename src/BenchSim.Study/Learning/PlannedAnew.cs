using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Study.Learning;

/// <summary>A planned date of a batch that another value of its crop moves.</summary>
/// <param name="Batch">Batch.</param>
/// <param name="What">What is planned for it, such as "sowing".</param>
/// <param name="From">The date as planned.</param>
/// <param name="To">The date with the other value.</param>
public sealed record MovedDate(string Batch, string What, DateOnly From, DateOnly To)
{
    /// <summary>Days later; below 0 for earlier.</summary>
    public int Days => To.DayNumber - From.DayNumber;
}

/// <summary>The batches of a crop, planned anew with another value of it.</summary>
/// <param name="Moved">Of each batch the date that moves most, where that is by more than a day; in the order of the plan.</param>
/// <param name="Faults">What stands in the way of such a plan; where there is anything, nothing is moved.</param>
public sealed record PlannedAnew(ImmutableArray<MovedDate> Moved, ImmutableArray<Fault> Faults)
{
    /// <summary>A day more or less is within what dates are worked to.</summary>
    public const int Noticed = 1;

    /// <summary>Whether it would change the plan by more than a day.</summary>
    public bool Matters => !Moved.IsEmpty || !Faults.IsEmpty;

    /// <summary>Plans the batches of a crop anew.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="crop">The crop with the other value.</param>
    public static PlannedAnew With(SeasonPlan plan, Crop crop)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(crop);
        BatchPlan[] before = [.. plan.Batches.Where(batch => string.Equals(batch.Crop.Id, crop.Id, StringComparison.Ordinal))];
        if (before.Length == 0)
        {
            return new PlannedAnew([], []);
        }

        var planned = SeasonPlanner.Make(
            plan.Scenario with
            {
                Crops = [.. plan.Scenario.Crops.Select(each => string.Equals(each.Id, crop.Id, StringComparison.Ordinal) ? crop : each)],
                Batches = [.. before.Select(batch => batch.Order)],
            }
        );
        return planned.Plan is { } after
            ? new PlannedAnew([.. before.Zip(after.Batches, Most).OfType<MovedDate>()], [])
            : new PlannedAnew([], planned.Faults);
    }

    private static MovedDate? Most(BatchPlan before, BatchPlan after)
    {
        (string What, DateOnly? From, DateOnly? To)[] dates =
        [
            ("sowing", before.SowOn, after.SowOn),
            ("setting out", before.SetOutOn, after.SetOutOn),
            ("emergence", before.EmergeOn, after.EmergeOn),
            ("leaving the mat", before.OffMatOn, after.OffMatOn),
            ("potting up", before.PotUpOn, after.PotUpOn),
            ("the move to the table", before.TableOn, after.TableOn),
            ("being ready", before.ReadyOn, after.ReadyOn),
        ];
        var most = dates
            .Where(date => date is { From: not null, To: not null })
            .Select(date => new MovedDate(before.Order.Id, date.What, date.From!.Value, date.To!.Value))
            .MaxBy(date => Math.Abs(date.Days));
        return most is not null && Math.Abs(most.Days) > Noticed ? most : null;
    }
}
