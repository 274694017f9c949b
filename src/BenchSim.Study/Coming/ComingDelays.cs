using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Coming;

/// <summary>Sums up how late the batches of many seasons are.</summary>
internal static class ComingDelays
{
    public static ImmutableArray<ComingDelay> Of(SeasonPlan plan, ImmutableArray<ComingSeason> seasons) =>
        [.. plan.Batches.Select((_, index) => Of(index, seasons)).OfType<ComingDelay>()];

    private static ComingDelay? Of(int batch, ImmutableArray<ComingSeason> seasons)
    {
        LateBatch[] late = [.. seasons.Where(season => season.Late.ContainsKey(batch)).Select(season => season.Late[batch])];
        var likelihood = Likelihoods.Of(late.Length, seasons.Length);
        if (likelihood < Likelihood.Likely)
        {
            return null;
        }

        var room = late.Where(each => each.NoRoomIn >= 0).GroupBy(each => each.NoRoomIn).OrderByDescending(each => each.Count()).ToArray();
        return new ComingDelay
        {
            Batch = batch,
            Likelihood = likelihood,
            Days = late.Select(each => each.Days ?? int.MaxValue).Order().ElementAt((late.Length - 1) / 2) is < int.MaxValue and var days
                ? days
                : null,
            IsShort = IsMost(late.Count(each => each.IsShort)),
            IsHeld = IsMost(late.Count(each => each.IsHeld)),
            NoRoomIn = IsMost(late.Count(each => each.NoRoomIn >= 0)) ? room[0].Key : null,
        };

        bool IsMost(int some) => 2 * some >= late.Length;
    }
}
