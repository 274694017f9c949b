using BenchSim.Season.Climate;

namespace BenchSim.Season.Planning;

/// <summary>The years of weather that a plan is held against before a season is played.</summary>
internal static class WeatherYears
{
    /// <summary>Years drawn where a generator makes the weather.</summary>
    public const int Generated = 200;

    private const int MostSearched = 1_000_000;

    /// <summary>
    /// One season for each distinct weather, in order of the weathers: a season is the only handle a source gives on them.
    /// </summary>
    public static int[] Of(WeatherSource source, ulong seed)
    {
        if (source.Distinct is not { } distinct)
        {
            return [.. Enumerable.Range(0, Generated)];
        }

        var seasons = new SortedDictionary<int, int>();
        for (var season = 0; seasons.Count < distinct && season < MostSearched; season++)
        {
            seasons.TryAdd(source.Which(seed, season), season);
        }

        return [.. seasons.Values];
    }
}
