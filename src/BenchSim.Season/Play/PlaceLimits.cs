namespace BenchSim.Season.Play;

/// <summary>Whether the spaces have their places or no limit.</summary>
public enum PlaceLimits
{
    /// <summary>Every space has its places.</summary>
    AsGiven,

    /// <summary>No space has a limit: every crop gets its first open preference ("wanted places").</summary>
    None,
}
