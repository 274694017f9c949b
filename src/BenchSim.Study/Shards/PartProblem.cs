namespace BenchSim.Study.Shards;

/// <summary>Why bytes could not be read as a part of a run.</summary>
public enum PartProblem
{
    /// <summary>Nothing: they were read.</summary>
    None,

    /// <summary>They do not begin like a part.</summary>
    NotAPart,

    /// <summary>They begin like a part, but the rest is cut short or changed.</summary>
    Damaged,

    /// <summary>A part of another version of the format.</summary>
    OtherVersion,
}
