using System.Collections.Immutable;
using BenchSim.Season.Evidence;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Learning;

/// <summary>A season that crops are learned from: what was seen of its batches.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Plan">Its plan.</param>
/// <param name="Batches">What was seen of those that were begun.</param>
public sealed record LearnedSeason(string Name, SeasonPlan Plan, ImmutableArray<BatchEvidence> Batches)
{
    /// <summary>Reads a season.</summary>
    /// <param name="name">What people call it.</param>
    /// <param name="plan">Its plan, with its past.</param>
    /// <param name="crops">
    /// The crops as they are to be learned, by id: the heat that trays have had is that of their laws, whatever the season was planned by.
    /// </param>
    public static LearnedSeason Of(string name, SeasonPlan plan, IReadOnlyDictionary<string, Crop> crops)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(crops);
        Crop Now(Crop crop) => crops.GetValueOrDefault(crop.Id, crop);
        plan = plan with
        {
            Scenario = plan.Scenario with { Crops = [.. plan.Scenario.Crops.Select(Now)] },
            Batches = [.. plan.Batches.Select(batch => batch with { Crop = Now(batch.Crop) })],
        };
        return new LearnedSeason(name, plan, SeasonEvidence.Of(plan));
    }
}
