using System.Collections.Immutable;
using BenchSim.Season.Planning;

namespace BenchSim.Study.Coming;

/// <summary>What the next days bring, by seasons played on from a day.</summary>
public sealed record ComingDays
{
    /// <summary>Days, the day itself counted, on which jobs are looked for.</summary>
    public const int JobDays = 7;

    /// <summary>Days, the day itself counted, for which the room left is told.</summary>
    public const int RoomDays = 10;

    /// <summary>The day from which the seasons were played.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Seasons played.</summary>
    public required int Seasons { get; init; }

    /// <summary>Jobs that are at least <see cref="Likelihood.Maybe"/>, in the order in which they are to be done.</summary>
    public required ImmutableArray<ComingJob> Jobs { get; init; }

    /// <summary>
    /// Places that are free after the round of each day in at least <see cref="Likelihoods.SureOfTen"/> seasons of 10, below 0 where more
    /// stand there than it has places: by position of the space and day; fewer days where the season ends.
    /// </summary>
    public required ImmutableArray<ImmutableArray<int>> Free { get; init; }

    /// <summary>Batches that are at least <see cref="Likelihood.Likely"/> to be late, in the order of the plan.</summary>
    public required ImmutableArray<ComingDelay> Late { get; init; }
}

/// <summary>A job of the next days on one batch.</summary>
public sealed record ComingJob
{
    /// <summary>Job.</summary>
    public required WorkKind Kind { get; init; }

    /// <summary>Position of the batch.</summary>
    public required int Batch { get; init; }

    /// <summary>Whether the pieces are flats.</summary>
    public required bool AreFlats { get; init; }

    /// <summary>
    /// Trays or flats, for potting up the trays filled: the middle number of those seasons in which it happens, on the day itself where it
    /// is for that, else over all the days that are looked at.
    /// </summary>
    public required int Pieces { get; init; }

    /// <summary>Position of the space from which most of them come; null for a sowing.</summary>
    public int? From { get; init; }

    /// <summary>Position of the space to which most of them go; null for potting up and for what goes to the field.</summary>
    public int? To { get; init; }

    /// <summary>True where it is to be done on the day itself: it begins then in at least half of the seasons.</summary>
    public required bool IsToday { get; init; }

    /// <summary>How likely it begins on the day itself, where it is for that; else how likely it begins within the days.</summary>
    public required Likelihood Likelihood { get; init; }

    /// <summary>The first day on which it may begin: 1 in 10 of those seasons in which it happens have begun by then.</summary>
    public required DateOnly First { get; init; }

    /// <summary>The last: 9 in 10 of them have begun by then.</summary>
    public required DateOnly Last { get; init; }
}

/// <summary>A batch of which too few plants are out in time in at least half of the seasons, every late day counted.</summary>
public sealed record ComingDelay
{
    /// <summary>Position of the batch.</summary>
    public required int Batch { get; init; }

    /// <summary>How likely it is late.</summary>
    public required Likelihood Likelihood { get; init; }

    /// <summary>
    /// Days from the planned set-out date to the middle tray's, the middle number of the seasons in which it is late; null where mostly no
    /// tray goes out.
    /// </summary>
    public required int? Days { get; init; }

    /// <summary>Whether in most of those seasons too few plants go out at all.</summary>
    public required bool IsShort { get; init; }

    /// <summary>Whether in most of those seasons the weather holds trays that are ready.</summary>
    public required bool IsHeld { get; init; }

    /// <summary>
    /// Position of the space that most often has no place for it; null where that is so in less than half of those seasons.
    /// </summary>
    public required int? NoRoomIn { get; init; }
}
