namespace BenchSim.Study;

/// <summary>How a plan is played many times.</summary>
public sealed record StudyOptions
{
    /// <summary>Seasons to play, 1 or more.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Threads to play on, 1 or more; 0 for one a core. The answer does not depend on it.</summary>
    public int Threads { get; init; }
}
