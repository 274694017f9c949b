namespace BenchSim.Study.Shards;

/// <summary>A share of a run does not hold the counts of its seasons.</summary>
public sealed class PartRefusedException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="number">Number of the share, from 1.</param>
    /// <param name="inner">Where reading ended; null for nothing.</param>
    public PartRefusedException(int number, Exception? inner = null)
        : base("A share does not hold the counts of its seasons.", inner) => Number = number;

    /// <summary>Number of the share, from 1.</summary>
    public int Number { get; }
}
