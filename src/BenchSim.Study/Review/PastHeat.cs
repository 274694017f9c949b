using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Review;

/// <summary>The heat that houses took in the days that are over, by the places of the log and the weather observed.</summary>
internal static class PastHeat
{
    /// <summary>Watt-hours by house and day of a plan that is under way, its past alone.</summary>
    /// <param name="then">The plan, with its past.</param>
    /// <param name="seed">Seed of all luck; the days that are over are the same in every season.</param>
    public static long[][] WattHours(SeasonPlan then, ulong seed)
    {
        var season = new SeasonResult();
        new SeasonPlayer(then, seed).Play(0, PlaceLimits.AsGiven, season);
        return [.. season.HeatWattHours.Select(days => days[..then.Past!.Today])];
    }
}
