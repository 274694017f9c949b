using System.Collections.Immutable;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Trust;

/// <summary>Works out total shares of groups of values.</summary>
internal static class GroupStudy
{
    /// <summary>The groups, those with the largest share of the seasons that fit first.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="doubts">Its values.</param>
    /// <param name="player">Plays sets.</param>
    /// <param name="options">How much is played.</param>
    /// <param name="sets">The sample of sets.</param>
    /// <param name="outcomes">What it brought.</param>
    public static ImmutableArray<TrustGroup> Of(
        SeasonPlan plan,
        ValuesInDoubt doubts,
        SetPlayer player,
        TrustOptions options,
        double[][] sets,
        SetOutcomes outcomes
    )
    {
        var first = sets[..Math.Min(sets.Length, options.GroupSets)];
        var second = ValueSets.Others(first.Length, doubts.Values.Length, options.Seed);
        var resampled = new Bootstrap(first.Length, options.Seed);
        return
        [
            .. doubts
                .Values.Select(value => value.Column.Group)
                .Distinct()
                .Order()
                .Select(Group)
                .OrderByDescending(group => group.Fits.Share)
                .ThenByDescending(group => group.LatePlantDays.Share),
        ];

        TrustGroup Group(DoubtGroup group)
        {
            bool[] isInGroup = [.. doubts.Values.Select(value => value.Column.Group == group)];
            var mixed = player.Play(plan, TotalShares.Mixed(first, second, isInGroup), options.FewerSeasons);
            return new TrustGroup(
                group,
                isInGroup.Count(isIn => isIn),
                first.Length,
                Share(mixed, TrustResult.FitsAt),
                Share(mixed, TrustResult.LateAt)
            );
        }

        ShareEstimate Share(SetOutcomes mixed, int measure)
        {
            // The same seasons of both.
            var all = outcomes.Means(measure, mixed.Seasons);
            var (before, after, mean) = (all[..first.Length], mixed.Means(measure), all.Average());
            var variance = all.Sum(each => (each - mean) * (each - mean)) / (all.Length - 1);
            return resampled.Of(drawn => TotalShares.Of(before, after, variance, drawn));
        }
    }
}
