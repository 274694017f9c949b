namespace BenchSim.Study.Levelling;

/// <summary>How a plan is levelled and how the levelled plan is tried.</summary>
public sealed record LevelOptions
{
    /// <summary>Seasons in which the levelled plan is played against the first, 1 or more.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Threads to play on, 1 or more; 0 for one a core. The answer does not depend on it.</summary>
    public int Threads { get; init; }

    /// <summary>Seasons from which the expected places are worked out, 1 or more. They are other seasons than those of the trial.</summary>
    public int ExpectedSeasons { get; init; } = 200;

    /// <summary>Share of the places that the expected trays may fill, above 0 to 1: what is left is for luck.</summary>
    public double Fill { get; init; } = 1;

    /// <summary>Effort of each of the two searches, in a unit of about a second's work, above 0.</summary>
    public double Effort { get; init; } = 20;
}
