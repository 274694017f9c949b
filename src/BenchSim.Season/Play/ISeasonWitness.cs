namespace BenchSim.Season.Play;

/// <summary>Sees what happens in a season as it is played; used to tell a batch's story. Null when nobody looks, so that it costs nothing. A witness says only what it wants to see.</summary>
internal interface ISeasonWitness
{
    /// <summary>The season begins; luck has been drawn.</summary>
    void Begins(SeasonCore core) { }

    /// <summary>Trays were sown (from -1) or moved.</summary>
    void Moved(BatchState batch, bool flat, int first, int count, int from, int to, double hour) { }

    /// <summary>Trays were set out with so many plants, after so many days of weather hold.</summary>
    void WentOut(BatchState batch, Lot lot, int plants, double hour) { }

    /// <summary>A flat was potted up into trays.</summary>
    void Potted(BatchState batch, int flat, int seedlings, int firstTray, int trays, double hour) { }

    /// <summary>Trays were thrown out.</summary>
    void Discarded(BatchState batch, Lot lot, DiscardReason reason, double hour) { }

    /// <summary>Sowings were given up.</summary>
    void GaveUp(BatchState batch, int count, double hour) { }

    /// <summary>The work of a day is done: what still waits can be looked at.</summary>
    void DayEnds(SeasonCore core, int day) { }
}
