using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>
/// What the log of a season, as far as it is over, says of its batches: what was counted and judged, and the heat they had had by then
/// under the weather of those days (docs/model.md section 10). It is what a crop is learned from.
/// </summary>
public static class SeasonEvidence
{
    /// <summary>What was seen of each batch that has been begun, in the order of the plan.</summary>
    /// <param name="plan">Plan with its past, and with the days known that are over.</param>
    /// <exception cref="ArgumentException">A plan without a past.</exception>
    public static ImmutableArray<BatchEvidence> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var past = plan.Past ?? throw new ArgumentException("The plan has a past.", nameof(plan));

        // Of any season: only the weather of the days that are over is asked for, and it is the same in all.
        var climates = new PlanClimates(plan.Scenario, plan.Days, plan.Scenario.Play.Seed);
        using var borrowed = climates.Borrow(0);
        var site = new PastSite(plan, past, borrowed.Climate);
        var nights = new OwnNights(site);
        return
        [
            .. plan
                .Batches.Zip(past.Batches)
                .Where(pair => pair.Second.IsBegun)
                .Select(pair => new BatchReader(site, nights, pair.First, pair.Second).Read()),
        ];
    }
}
