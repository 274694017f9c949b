using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>Seasons of small sites, played.</summary>
internal static class Played
{
    public static SeasonResult PlayOnce(Scenario scenario, PlaceLimits? limits = null, int season = 0, LotGrain grain = LotGrain.AsSplit)
    {
        var result = new SeasonResult();
        new SeasonPlayer(SmallSite.Plan(scenario), scenario.Play.Seed, grain, null).Play(season, limits ?? PlaceLimits.AsGiven, result);
        return result;
    }

    /// <summary>Places held in a space on a run of days.</summary>
    public static int[] Held(SeasonResult result, int space, int first, int last) => result.Held[space][first..(last + 1)];
}
