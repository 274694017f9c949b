namespace BenchSim.Season.Values;

/// <summary>How far a value may be trusted.</summary>
public enum Trust
{
    /// <summary>The user wrote it in the scenario folder.</summary>
    User,

    /// <summary>Read in the named published source.</summary>
    Seen,

    /// <summary>Worked out from values read in the named source.</summary>
    Derived,

    /// <summary>Borrowed from a named relative's row, because the crop has none of its own.</summary>
    Borrowed,

    /// <summary>Common practice of the trade, no single source.</summary>
    CommonPractice,

    /// <summary>Recalled, not verified.</summary>
    Memory,

    /// <summary>Assumed by the authors of the library.</summary>
    Assumption,
}

/// <summary>Where a value comes from.</summary>
/// <param name="Trust">How far it may be trusted.</param>
/// <param name="Source">The source in words: a publication, a relative's row, or why it is assumed. May be empty for
/// <see cref="Trust.User"/>.</param>
public sealed record Provenance(Trust Trust, string Source)
{
    /// <summary>How far it may be trusted, in words.</summary>
    public string Words =>
        Trust switch
        {
            Trust.User => "yours",
            Trust.Seen => "seen in the source",
            Trust.Derived => "worked out from the source",
            Trust.Borrowed => "borrowed from a relative",
            Trust.CommonPractice => "common practice",
            Trust.Memory => "from memory",
            _ => "assumption",
        };

    /// <summary>A value the user wrote.</summary>
    public static Provenance User { get; } = new(Trust.User, "");
}
