using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Mending;

/// <summary>A line of the plan with its sowings.</summary>
/// <param name="Id">Id as it is written in the plan.</param>
/// <param name="Sowings">Positions of its batches in the plan.</param>
/// <param name="First">Its first batch.</param>
internal sealed record PlanLine(string Id, ImmutableArray<int> Sowings, BatchPlan First)
{
    /// <summary>Whether it is sown once.</summary>
    public bool IsSingle => Sowings.Length == 1;

    /// <summary>Whether its set-out date is given, or can be written down without moving it.</summary>
    public bool KeepsItsDate => First.Order.SetOut is not null || IsSingle;

    /// <summary>The lines of a plan, in order.</summary>
    public static ImmutableArray<PlanLine> Of(SeasonPlan plan) =>
        [
            .. Enumerable
                .Range(0, plan.Batches.Length)
                .GroupBy(at => (plan.Batches[at].Order.Place, plan.Batches[at].Order.Place == default ? plan.Batches[at].Order.Id : ""))
                .Select(line => Of(plan, [.. line])),
        ];

    // Row x that is sown several times becomes x-1, x-2 and so on.
    private static PlanLine Of(SeasonPlan plan, ImmutableArray<int> sowings)
    {
        var first = plan.Batches[sowings[0]];
        var id = first.Order.Id;
        return new PlanLine(sowings.Length == 1 ? id : id[..id.LastIndexOf('-')], sowings, first);
    }
}
