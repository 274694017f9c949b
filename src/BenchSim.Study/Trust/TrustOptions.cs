namespace BenchSim.Study.Trust;

/// <summary>How much is played to see what hangs on values.</summary>
public sealed record TrustOptions
{
    /// <summary>Sets of values where nothing else is asked for.</summary>
    public const int UsualSets = 256;

    /// <summary>Seasons of each set where nothing else is asked for.</summary>
    public const int UsualSeasons = 100;

    /// <summary>Fewest sets: parts of a range must hold some.</summary>
    public const int LeastSets = 32;

    /// <summary>Fewest seasons: luck must show.</summary>
    public const int LeastSeasons = 10;

    /// <summary>Sets of values, <see cref="LeastSets"/> or more; a power of 2 fills the ranges best.</summary>
    public int Sets { get; init; } = UsualSets;

    /// <summary>Seasons of each set, <see cref="LeastSeasons"/> or more.</summary>
    public int Seasons { get; init; } = UsualSeasons;

    /// <summary>Seed of all luck and of the sets.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Threads to play on, 1 or more; 0 for one a core. The answer does not depend on it.</summary>
    public int Threads { get; init; }

    /// <summary>Seasons in which the values given are played by themselves, as <c>run</c> plays them; 1 or more.</summary>
    public required int GivenSeasons { get; init; }

    /// <summary>Seasons in which each value is moved alone, and in which a group is changed: half of those of a set.</summary>
    public int FewerSeasons => Math.Max(LeastSeasons, Seasons / 2);

    /// <summary>Sets in which a group of values is changed: a quarter of all.</summary>
    public int GroupSets => Math.Max(LeastSets / 2, Sets / 4);
}
