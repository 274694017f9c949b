namespace BenchSim.Season.Play;

/// <summary>Why a tray or flat is thrown out.</summary>
public enum DiscardReason
{
    /// <summary>A tray too long past due.</summary>
    OverHeld,

    /// <summary>A flat too long past its pot-up stage.</summary>
    FlatOverHeld,

    /// <summary>Never came up.</summary>
    NeverCameUp,

    /// <summary>A flat left over when all planned trays were filled.</summary>
    Surplus,
}
