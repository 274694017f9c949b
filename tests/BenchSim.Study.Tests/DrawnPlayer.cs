using BenchSim.Season.Play;

namespace BenchSim.Study.Tests;

/// <summary>Plays one season under some limits into a result.</summary>
internal delegate void DrawSeason(int season, PlaceLimits limits, SeasonResult result);

/// <summary>Plays seasons as they are drawn: once as given and, where a limit bit, once without.</summary>
internal static class DrawnPlayer
{
    public static PlaySeason Of(DrawSeason draw) =>
        (season, asGiven, withoutLimits) =>
        {
            draw(season, PlaceLimits.AsGiven, asGiven);
            if (withoutLimits is null || !asGiven.LimitEverBit)
            {
                return asGiven;
            }

            draw(season, PlaceLimits.None, withoutLimits);
            return withoutLimits;
        };
}
