using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// What happened to one batch in one season, told in plain words: each move, each wait and for what, who held the places, and the luck
/// drawn.
/// </summary>
public sealed class SeasonStory
{
    private SeasonStory(ImmutableArray<string> lines) => Lines = lines;

    /// <summary>The story, a line each.</summary>
    public ImmutableArray<string> Lines { get; }

    /// <summary>Plays a season again and tells what became of a batch.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="batchId">Id of the batch.</param>
    /// <exception cref="ArgumentException">The plan has no such batch.</exception>
    public static SeasonStory Tell(SeasonPlan plan, ulong seed, int season, string batchId)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = -1;
        for (var at = 0; at < plan.Batches.Length; at++)
        {
            if (string.Equals(plan.Batches[at].Order.Id, batchId, StringComparison.Ordinal))
            {
                index = at;
            }
        }

        if (index < 0)
        {
            throw new ArgumentException($"The plan has no batch \"{batchId}\".", nameof(batchId));
        }

        var teller = new BatchTeller(plan, season, index);
        var result = new SeasonResult();
        new SeasonPlayer(plan, seed).Play(season, PlaceLimits.AsGiven, result, teller);
        return new SeasonStory(teller.Close(result));
    }
}
