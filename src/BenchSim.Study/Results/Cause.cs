namespace BenchSim.Study.Results;

/// <summary>Why a season does not fit.</summary>
public enum Cause
{
    /// <summary>With places without limit the same season would have fitted.</summary>
    Place,

    /// <summary>Even with room, too few seedlings came up.</summary>
    Germination,

    /// <summary>Even with room, plants were not ready in time.</summary>
    SlowGrowth,

    /// <summary>Even with room, the weather held trays back.</summary>
    Hold,
}
