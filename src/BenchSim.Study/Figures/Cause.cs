namespace BenchSim.Study.Figures;

/// <summary>
/// Why a season does not fit with every late day counted: hold if it fits with days of weather hold excepted; else place, thrown out,
/// germination or slow growth, by the same season played with places without limit (docs/model.md section 9).
/// </summary>
public enum Cause
{
    /// <summary>With places without limit the same season would have fitted.</summary>
    Place,

    /// <summary>
    /// Even with room, fewer plants than the service goal ever reached the field, and at least half of the plants that are short belong to
    /// batches of which trays or flats were thrown out after standing too long for the weather, the date or lack of hands.
    /// </summary>
    ThrownOut,

    /// <summary>Even with room, fewer plants than the service goal ever reached the field: too few came up or lived.</summary>
    Germination,

    /// <summary>Even with room, enough plants reached the field, but too late.</summary>
    SlowGrowth,

    /// <summary>Days of weather hold alone made it late.</summary>
    Hold,
}
