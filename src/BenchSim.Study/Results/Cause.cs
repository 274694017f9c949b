namespace BenchSim.Study.Results;

/// <summary>
/// Why a season does not fit with every late day counted: hold if it fits with days of weather hold excepted; else place, germination or slow
/// growth, by the same season played with places without limit.
/// </summary>
public enum Cause
{
    /// <summary>With places without limit the same season would have fitted.</summary>
    Place,

    /// <summary>Even with room, fewer plants than the service goal ever reached the field.</summary>
    Germination,

    /// <summary>Even with room, enough plants reached the field, but too late.</summary>
    SlowGrowth,

    /// <summary>Days of weather hold alone made it late.</summary>
    Hold,
}
