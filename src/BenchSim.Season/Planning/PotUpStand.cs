using BenchSim.Season.Stands;

namespace BenchSim.Season.Planning;

/// <summary>
/// The chance of the stand of a batch that is potted up: enough seedlings must come to fill the trays, the trays must have the cells for
/// them, and enough of what is potted must reach the field.
/// </summary>
public static class PotUpStand
{
    /// <summary>
    /// Chance that at least the wanted plants reach the field, averaged over the packet's law and that of the losses: seedlings are
    /// binomial of the seeds, as many of them are potted as the trays have cells, and the plants are what the batch keeps of the potted.
    /// </summary>
    /// <param name="packet">Law of the packet's germination.</param>
    /// <param name="seeds">Seeds sown, 0 or more; beyond 2,147,483,647 a seed more changes nothing.</param>
    /// <param name="seedlingOf">Chance that a seed brings a seedling that can be potted, given the packet's germination.</param>
    /// <param name="cells">Cells of the trays that are filled, 0 or more.</param>
    /// <param name="loss">Law of what is lost after potting up.</param>
    /// <param name="wanted">Plants wanted, 1 or more.</param>
    public static double Chance(BetaLaw packet, long seeds, Func<double, double> seedlingOf, long cells, StandLoss loss, int wanted)
    {
        ArgumentNullException.ThrowIfNull(packet);
        ArgumentNullException.ThrowIfNull(seedlingOf);
        ArgumentNullException.ThrowIfNull(loss);
        var sown = (int)Math.Min(seeds, int.MaxValue);
        var most = (int)Math.Min(cells, sown);
        if (wanted > most)
        {
            return 0;
        }

        var gains = new PlantGains(loss, wanted);
        return Stand.Averaged(packet, germination => gains.Reached(sown, seedlingOf(germination), most));
    }
}
