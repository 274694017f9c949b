using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>
/// What one season tells of one owner of figures: a space, a batch, the whole. Filled anew season after season, in one pass over the
/// season's days, and only to be read by figures.
/// </summary>
public abstract class OwnerSeason
{
    private protected OwnerSeason() { }

    /// <summary>Takes from a season what is the owner's.</summary>
    /// <param name="season">The season with places as given.</param>
    /// <param name="roomy">The same season with places without limit.</param>
    internal abstract void Read(SeasonResult season, RoomySeason roomy);
}
