namespace BenchSim.Season.Play;

/// <summary>
/// Sees what happens in a season as it is played. A witness says only what it wants to see; without one nothing is told, which costs
/// nothing.
/// </summary>
public interface ISeasonWitness
{
    /// <summary>The season begins; luck has been drawn.</summary>
    /// <param name="season">The season, to be looked at until it ends.</param>
    void Begins(SeasonView season) { }

    /// <summary>
    /// The days that are over have been told as the log has them; what is told from here on is played. Not called where no season is under
    /// way.
    /// </summary>
    void PastEnds() { }

    /// <summary>Trays or flats were sown or moved.</summary>
    /// <param name="move">What moved.</param>
    void Moved(TrayMove move) { }

    /// <summary>A flat was potted up; its trays are given their places after this.</summary>
    /// <param name="potted">The flat and its trays.</param>
    void Potted(FlatPotted potted) { }

    /// <summary>Trays went to the field.</summary>
    /// <param name="trays">The trays.</param>
    void WentOut(TraysOut trays) { }

    /// <summary>Trays or flats were thrown out.</summary>
    /// <param name="trays">The trays.</param>
    void Discarded(TraysDiscarded trays) { }

    /// <summary>A mishap struck trays or flats.</summary>
    /// <param name="trays">The trays.</param>
    void Struck(TraysStruck trays) { }

    /// <summary>Sowings were given up.</summary>
    /// <param name="sowings">The sowings.</param>
    void GaveUp(SowingsGivenUp sowings) { }

    /// <summary>The work of a day is done: what stands and waits can be looked at.</summary>
    /// <param name="season">The season.</param>
    void DayEnds(SeasonView season) { }
}
