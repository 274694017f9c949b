using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Plays seasons without limits of place and tells which batch stands where on each day. Not safe for use by several threads.</summary>
public sealed class WantedPlaces
{
    private readonly SeasonPlayer player;
    private readonly Watch watch;
    private readonly SeasonResult result = new();

    /// <summary>Makes one.</summary>
    /// <param name="player">Plays the seasons.</param>
    public WantedPlaces(SeasonPlayer player)
    {
        ArgumentNullException.ThrowIfNull(player);
        this.player = player;
        var kinds = Enum.GetValues<SpaceKind>().Length;
        ByBatch = [.. player.Plan.Batches.Select(_ => Enumerable.Range(0, kinds).Select(_ => new int[player.Plan.Days]).ToArray())];
        watch = new Watch(ByBatch);
    }

    /// <summary>Places held just after the round of each day of the season played last: [batch][kind of space][day].</summary>
    public int[][][] ByBatch { get; }

    /// <summary>Plays a season.</summary>
    /// <param name="season">Number of the season, from 0.</param>
    public void Play(int season) => player.Play(season, PlaceLimits.None, result, watch);

    private sealed class Watch(int[][][] byBatch) : ISeasonWitness
    {
        public void Begins(SeasonCore core)
        {
            foreach (var kinds in byBatch)
            {
                foreach (var days in kinds)
                {
                    Array.Clear(days);
                }
            }
        }

        public void DayEnds(SeasonCore core, int day)
        {
            foreach (var batch in core.Batches)
            {
                if (batch.IsStanding)
                {
                    var kinds = byBatch[batch.Index];
                    kinds[(int)SpaceKind.Mat][day] = Places(batch, batch.OnMat);
                    kinds[(int)SpaceKind.Bench][day] = Places(batch, batch.OnBench);
                    kinds[(int)SpaceKind.Table][day] = Places(batch, batch.OnTable);
                }
            }
        }

        private static int Places(BatchState batch, List<Lot> lots)
        {
            var places = 0;
            foreach (var lot in lots)
            {
                places += lot.Count * batch.PlacesEach(lot.IsFlat);
            }

            return places;
        }
    }
}
