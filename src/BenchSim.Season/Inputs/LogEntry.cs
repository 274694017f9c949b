using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>One thing that was done or seen: a row of log.csv.</summary>
public sealed record LogEntry
{
    /// <summary>The day.</summary>
    public DateOnly Date { get; init; }

    /// <summary>What was done or seen.</summary>
    public LogKind What { get; init; }

    /// <summary>Id of the batch; null where the row is of no single batch.</summary>
    public string? BatchId { get; init; }

    /// <summary>Trays; null where the row names none.</summary>
    public int? Trays { get; init; }

    /// <summary>Open flats; null where the row names none.</summary>
    public int? Flats { get; init; }

    /// <summary>Id of the space they stood in; null where the row does not say.</summary>
    public string? From { get; init; }

    /// <summary>
    /// Id of the space they went to or stand in; for a lowest temperature and for fuel it may be that of a house. Null where the row names
    /// none, and outdoors.
    /// </summary>
    public string? Space { get; init; }

    /// <summary>
    /// Seedlings, cells or plants counted; the lowest temperature, degrees Celsius; fuel in the unit of the note. Null where nothing was
    /// counted.
    /// </summary>
    public double? Count { get; init; }

    /// <summary>The word that stands in the place of a count of seedlings or cells; <see cref="CountWord.None"/> for none.</summary>
    public CountWord Word { get; init; }

    /// <summary>Seeds or cells looked at; null where the row names none.</summary>
    public int? Of { get; init; }

    /// <summary>Work it took, minutes; null where nobody looked at a clock.</summary>
    public double? Minutes { get; init; }

    /// <summary>Who did it; may be empty.</summary>
    public string By { get; init; } = "";

    /// <summary>When it was written down; null for the same day.</summary>
    public DateOnly? Entered { get; init; }

    /// <summary>Anything; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>
    /// Whether what was counted was picked by lot and not by its looks: the note begins with "picked". Others are mostly of bad trays.
    /// </summary>
    public bool IsPicked => Note.TrimStart().StartsWith("picked", StringComparison.OrdinalIgnoreCase);

    /// <summary>Where its date is written.</summary>
    public SourcePlace Place { get; init; }
}
