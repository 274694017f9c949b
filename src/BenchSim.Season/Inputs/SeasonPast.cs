using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>What became of trays or flats before the day from which a season is played.</summary>
public enum TrayEnd
{
    /// <summary>They stand.</summary>
    Stands,

    /// <summary>They went to the field, or to their grower.</summary>
    Out,

    /// <summary>They were thrown out, or are missing.</summary>
    Gone,

    /// <summary>Flats that were used up by potting up.</summary>
    UsedUp,
}

/// <summary>
/// The days of a season that are over, as they were: the season is played from a day on, and those before it are not drawn.
/// </summary>
public sealed record SeasonPast
{
    /// <summary>The first day that is played, 0 the first of the season: what is done on it before its round is of the past.</summary>
    public required int Today { get; init; }

    /// <summary>The batches, in the order of the plan.</summary>
    public required ImmutableArray<BatchPast> Batches { get; init; }

    /// <summary>
    /// Whether what was done and seen changes the luck that is left; else the season goes on with the luck that it was given. The weather
    /// of the days before is then the same in every season.
    /// </summary>
    public bool TellsOfLuck { get; init; }
}

/// <summary>The past of a batch.</summary>
public sealed record BatchPast
{
    /// <summary>A batch of which nothing has been sown: it is sown as the plan has it.</summary>
    public static BatchPast NotBegun { get; } =
        new()
        {
            Unsown = null,
            LastSown = -1,
            NextSown = 0,
            Trays = [],
        };

    /// <summary>Whether anything of it has been sown: then what the plan says of its sowing is over.</summary>
    public bool IsBegun => LastSown >= 0;

    /// <summary>Trays or flats still to be sown; null for all that the plan has.</summary>
    public required int? Unsown { get; init; }

    /// <summary>Day of the latest sowing; -1 before the first.</summary>
    public required int LastSown { get; init; }

    /// <summary>Index, from 0, of the next tray or flat to be sown.</summary>
    public required int NextSown { get; init; }

    /// <summary>Trays filled by potting up; at most those planned.</summary>
    public int Filled { get; init; }

    /// <summary>Its trays and flats.</summary>
    public required ImmutableArray<TrayPast> Trays { get; init; }

    /// <summary>What was seen of it, in order.</summary>
    public ImmutableArray<Sighting> Sightings { get; init; } = [];
}

/// <summary>The past of trays or flats that share it.</summary>
public sealed record TrayPast
{
    /// <summary>Whether they are flats.</summary>
    public required bool AreFlats { get; init; }

    /// <summary>Lowest index, from 0.</summary>
    public required int First { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Day of sowing.</summary>
    public required int SowDay { get; init; }

    /// <summary>Day of potting up; null where they were not filled by it.</summary>
    public int? PottedDay { get; init; }

    /// <summary>Spaces in which they stood, by position, each from the round of a day on.</summary>
    public required ImmutableArray<(int Space, int Day)> Path { get; init; }

    /// <summary>
    /// Leading stays that give them their past, but are not their own: of the flat that filled them, or from before the log begins. In
    /// these they hold no place.
    /// </summary>
    public int Borrowed { get; init; }

    /// <summary>What became of them.</summary>
    public TrayEnd End { get; init; }

    /// <summary>The day on which they went; not read where they stand.</summary>
    public int EndDay { get; init; }

    /// <summary>Plants that went out, where they were counted; else null.</summary>
    public int? Plants { get; init; }
}
