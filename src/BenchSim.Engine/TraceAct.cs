namespace BenchSim.Engine;

/// <summary>What a process does in a step of a trace.</summary>
public enum TraceAct
{
    /// <summary>It is put down for its first turn, now or later.</summary>
    Starts,

    /// <summary>It waits for a moment.</summary>
    Pauses,

    /// <summary>It stands in line for places.</summary>
    Waits,

    /// <summary>It gets places, at once or after standing in line.</summary>
    Takes,

    /// <summary>It leaves places.</summary>
    Leaves,

    /// <summary>It has run to its end.</summary>
    Ends,
}
