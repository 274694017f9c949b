using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Learning;

/// <summary>Learns crops from seasons, and tries what was learned on a plan.</summary>
public static class LearnRunner
{
    /// <summary>Learns.</summary>
    /// <param name="plan">The plan whose dates are tried.</param>
    /// <param name="seasons">The seasons, read by the crops as they were before.</param>
    /// <param name="crops">The crops: as they were before these seasons were learned from, and as they are in force.</param>
    /// <param name="deviations">How far off values may be.</param>
    /// <param name="cancel">Stops it.</param>
    public static LearnResult Run(
        SeasonPlan plan,
        ImmutableArray<LearnedSeason> seasons,
        IEnumerable<(Crop Before, Crop InForce)> crops,
        Deviations deviations,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(crops);
        var taught = ImmutableArray.CreateBuilder<TaughtCrop>();
        foreach (var (before, inForce) in crops)
        {
            cancel.ThrowIfCancellationRequested();
            var lessons = CropLessons.Of(before, seasons, deviations);
            if (lessons.HasAny)
            {
                TaughtValue Tried(LearnedValue value) => new(value, PlannedAnew.With(plan, value.Kind.With(inForce, value.Value.New)));
                taught.Add(new TaughtCrop(lessons, [.. lessons.Values.Select(Tried)]));
            }
        }

        return new LearnResult
        {
            Plan = plan,
            Seasons = seasons,
            Crops = taught.ToImmutable(),
            Work = WorkLessons.Of(plan.Scenario.Rules.Minutes, seasons.SelectMany(season => season.Plan.Scenario.Log), deviations),
            Houses = HouseLessons.Of(plan, seasons, deviations),
            Deviations = deviations,
        };
    }
}
