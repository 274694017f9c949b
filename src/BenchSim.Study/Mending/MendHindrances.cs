using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Mending;

/// <summary>What stands in the way once all is done: the crops that are still late, and for what.</summary>
internal static class MendHindrances
{
    private const int Most = 3;
    private const double LeastShare = 0.005;

    /// <summary>The worst crops first.</summary>
    /// <param name="plays">Plays.</param>
    /// <param name="plan">The plan with all that is done.</param>
    /// <param name="seasons">Seasons to play.</param>
    public static ImmutableArray<MendHindrance> Of(MendPlays plays, SeasonPlan plan, int seasons)
    {
        var given = plays.Play([plan], 0, seasons).Tally.Plans[0];
        var roomy = plays.Play([plan], 0, seasons, PlaceLimits.None).Tally.Plans[0];
        return
        [
            .. Enumerable
                .Range(0, plan.Batches.Length)
                .GroupBy(at => plan.Batches[at].Order.CropId, StringComparer.Ordinal)
                .Select(crop => Of(plan, given, roomy, [.. crop]))
                .Where(each => each.Plants >= 1)
                .OrderByDescending(each => each.Plants)
                .Take(Most),
        ];
    }

    private static MendHindrance Of(SeasonPlan plan, MendTally.OfPlan given, MendTally.OfPlan roomy, int[] batches)
    {
        double seasons = given.Seasons;
        double Late(int at) => given.LateInAll[at] / seasons;
        var late = batches.Sum(Late);
        var forRoom = batches.Sum(at => given.LateForRoom[at]) / seasons;
        var always = batches.Sum(at => roomy.LateForRoom[at]) / seasons;
        var shortOf = Math.Min(batches.Sum(at => roomy.Short[at]) / seasons, always);
        (MendReason Reason, double Plants)[] parts =
        [
            (MendReason.Room, Math.Max(0, forRoom - always)),
            (MendReason.Weather, late - forRoom),
            (MendReason.Short, shortOf),
            (MendReason.Date, always - shortOf),
        ];
        var wanted = batches.Sum(at => (double)plan.Batches[at].Order.Plants);
        return new MendHindrance(
            plan.Batches[batches.MaxBy(Late)],
            late < LeastShare * wanted ? 0 : late,
            parts.MaxBy(part => part.Plants).Reason
        );
    }
}
