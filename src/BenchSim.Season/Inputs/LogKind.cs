namespace BenchSim.Season.Inputs;

/// <summary>What a row of the log says was done or seen.</summary>
public enum LogKind
{
    /// <summary>Nothing is said.</summary>
    Unsaid,

    /// <summary>Trays or flats were sown and put to a space.</summary>
    Sown,

    /// <summary>Seedlings were counted that are up.</summary>
    Up,

    /// <summary>Flats were used up, and trays filled with their seedlings.</summary>
    PottedUp,

    /// <summary>Trays or flats went to another space.</summary>
    Moved,

    /// <summary>Trays were judged of field size.</summary>
    Ready,

    /// <summary>Trays were judged not of field size yet.</summary>
    NotReady,

    /// <summary>Cells with a plant were counted.</summary>
    Good,

    /// <summary>Trays went to the field.</summary>
    SetOut,

    /// <summary>Trays or flats went otherwise.</summary>
    ThrownOut,

    /// <summary>So many stand in a space, whatever the rows before say.</summary>
    Counted,

    /// <summary>A space was gone through whole: what was not counted there is not there.</summary>
    Walked,

    /// <summary>Trays went to their grower.</summary>
    HandedOver,

    /// <summary>Trays were covered on a cold night.</summary>
    Covered,

    /// <summary>Trays were carried in on a cold night.</summary>
    CarriedIn,

    /// <summary>The lowest temperature of a night by one's own thermometer.</summary>
    Low,

    /// <summary>A night without heat, a missed watering, mice.</summary>
    Mishap,

    /// <summary>Fuel was delivered, or a meter read.</summary>
    Fuel,
}
