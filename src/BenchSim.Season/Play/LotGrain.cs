namespace BenchSim.Season.Play;

/// <summary>How trays are kept together. None of these changes a result: a test says so.</summary>
internal enum LotGrain
{
    /// <summary>Lots split when only part can move, and stay split.</summary>
    AsSplit,

    /// <summary>Lots that differ in nothing but their indices are joined after each round.</summary>
    Merged,

    /// <summary>Every tray is a lot of its own.</summary>
    TrayByTray,
}
