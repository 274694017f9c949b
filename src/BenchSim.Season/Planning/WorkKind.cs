namespace BenchSim.Season.Planning;

/// <summary>A job of the season, in the order of a tray's way.</summary>
public enum WorkKind
{
    /// <summary>Fill and sow trays or flats.</summary>
    Sow,

    /// <summary>Take trays or flats off the mats to the benches.</summary>
    OffMat,

    /// <summary>Thin the cells of trays that were sown thicker than they are kept.</summary>
    Thin,

    /// <summary>Pot up the seedlings of flats into trays.</summary>
    PotUp,

    /// <summary>Move trays to the benches on which they finish.</summary>
    Finish,

    /// <summary>Move trays to the hardening table.</summary>
    ToTable,

    /// <summary>Load trays for the field.</summary>
    SetOut,
}
