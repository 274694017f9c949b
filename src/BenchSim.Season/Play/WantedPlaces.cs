using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// Plays seasons without limits of place and tells which batch stands where on each day. Not safe for use by several threads.
/// </summary>
public sealed class WantedPlaces
{
    private readonly SeasonPlayer _player;
    private readonly Watch _watch;
    private readonly SeasonResult _result = new();

    /// <summary>Makes one.</summary>
    /// <param name="player">Plays the seasons.</param>
    public WantedPlaces(SeasonPlayer player)
    {
        ArgumentNullException.ThrowIfNull(player);
        _player = player;
        var kinds = Enum.GetValues<SpaceKind>().Length;
        ByBatch = [.. player.Plan.Batches.Select(_ => Enumerable.Range(0, kinds).Select(_ => new int[player.Plan.Days]).ToArray())];
        _watch = new Watch(ByBatch);
    }

    /// <summary>Places held just after the round of each day of the season played last: [batch][kind of space][day].</summary>
    public int[][][] ByBatch { get; }

    /// <summary>Plays a season.</summary>
    /// <param name="season">Number of the season, from 0.</param>
    public void Play(int season) => _player.Play(season, PlaceLimits.None, _result, _watch);

    private sealed class Watch(int[][][] byBatch) : ISeasonWitness
    {
        private static readonly SpaceKind[] s_kinds = Enum.GetValues<SpaceKind>();

        public void DayEnds(SeasonView season)
        {
            for (var batch = 0; batch < byBatch.Length; batch++)
            {
                foreach (var kind in s_kinds)
                {
                    byBatch[batch][(int)kind][season.Day] = season.PlacesHeld(batch, kind);
                }
            }
        }
    }
}
