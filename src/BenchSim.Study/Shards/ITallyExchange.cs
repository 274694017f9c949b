using BenchSim.Study.Counting;

namespace BenchSim.Study.Shards;

/// <summary>
/// Carries counts out of a tally or into an empty one. Each tally names its counts to it once, in one order, so that what is written and what
/// is read cannot differ.
/// </summary>
internal interface ITallyExchange
{
    /// <summary>A number of seasons, 0 to all that were played.</summary>
    void Seasons(ref int seasons);

    /// <summary>Sums over the seasons, 0 or more each.</summary>
    void Sums(long[] sums);

    /// <summary>A quantity that every season has.</summary>
    void Every(ExactTally tally);

    /// <summary>A quantity that only some seasons have.</summary>
    /// <param name="tally">The tally.</param>
    /// <param name="most">Largest value it can have.</param>
    void Some(ExactTally tally, int most);

    /// <summary>A quantity of wide range that every season has.</summary>
    void Every(WideTally tally);

    /// <summary>A quantity that every season has on each day.</summary>
    void Every(DayTally tally);
}
