namespace BenchSim.Study.Counting;

/// <summary>
/// Carries counts out of a tally or into an empty one. Counts are named to it once, in one order, so that what is written and what is read
/// cannot differ.
/// </summary>
internal interface ITallyExchange
{
    /// <summary>A number of seasons, 0 to all that were played.</summary>
    void Seasons(ref int seasons);

    /// <summary>The numbers of every season.</summary>
    /// <param name="counts">The counts.</param>
    /// <param name="most">Largest number there can be.</param>
    void Numbers(ExactCounts counts, int most);

    /// <summary>The numbers of every season, of wide range.</summary>
    void Numbers(WideCounts counts);
}
