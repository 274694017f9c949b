using System.Collections.Immutable;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Trust;

/// <summary>Works out what values do to the choice of a variant.</summary>
internal static class ChoiceStudy
{
    private const int Most = 5;

    /// <summary>The choice between the plan as it is and a variant, by plants out in time.</summary>
    /// <param name="variant">The variant.</param>
    /// <param name="doubts">The values.</param>
    /// <param name="player">Plays sets.</param>
    /// <param name="shares">The sample of sets.</param>
    /// <param name="given">What the plan brings at the values given.</param>
    /// <param name="outcomes">What it brings over the sample.</param>
    public static TrustChoice Of(
        (string Name, SeasonPlan Plan) variant,
        ValuesInDoubt doubts,
        SetPlayer player,
        ShareStudy shares,
        SetOutcomes given,
        SetOutcomes outcomes
    )
    {
        const int measure = TrustResult.InTimeAt;
        var withGiven = player.Play(variant.Plan, [TrustRunner.AsGiven(doubts)], given.Seasons);
        var with = player.Play(variant.Plan, shares.Sets, outcomes.Seasons);
        double[] gains = [.. with.Means(measure).Zip(outcomes.Means(measure), (more, less) => more - less)];
        return new TrustChoice(
            variant.Name,
            withGiven.Means(measure)[0] - given.Means(measure)[0],
            gains.Average(),
            Knowing.Changes(gains),
            Knowing.OfAll(gains),
            [.. Worth().Where(each => each.Plants.IsAboveNothing).Take(Most)]
        );

        // Chance alone gives each of many values some worth: those that move the gain are looked at, and the worth must stand a resampling.
        IEnumerable<(DoubtfulValue Value, ShareEstimate Plants)> Worth() =>
            doubts
                .Values.Select((value, at) => (Value: value, Part: shares.PartsOf(at)))
                .OrderByDescending(each => FirstShares.Of(each.Part, gains, shares.Parts, shares.All))
                .Take(2 * Most)
                .Select(each => (each.Value, shares.Resampled.Of(drawn => Knowing.OfOne(each.Part, gains, shares.Parts, drawn))))
                .OrderByDescending(each => each.Item2.Share);
    }
}
