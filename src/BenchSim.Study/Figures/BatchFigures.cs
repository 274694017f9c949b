using System.Collections.Immutable;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What one season tells of one batch.</summary>
public sealed class BatchSeason : OwnerSeason
{
    private readonly int _batch;
    private readonly int _wanted;
    private readonly int _setOutDay;

    internal BatchSeason(PlanShape shape, int batch)
    {
        (_batch, _wanted, _setOutDay) = (batch, shape.Wanted[batch], shape.SetOutDay[batch]);
        Spaces = shape.Places.Length;
    }

    /// <summary>Reasons for throwing out, in order of name.</summary>
    internal static ImmutableArray<DiscardReason> Reasons { get; } =
    [.. Enum.GetValues<DiscardReason>().OrderBy(reason => reason.ToString(), StringComparer.Ordinal)];

    internal int Spaces { get; }

    internal BatchOutcome Outcome { get; private set; } = new();

    internal long[] Discarded { get; } = new long[Reasons.Length];

    internal bool IsComplete => Outcome.PlantsInTime >= _wanted;

    internal int DaysLate => Outcome.OutLast < 0 ? -1 : Math.Max(0, Outcome.OutLast - _setOutDay);

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        Outcome = season.Batches[_batch];
        for (var at = 0; at < Discarded.Length; at++)
        {
            Discarded[at] = Outcome.Discarded[(int)Reasons[at]];
        }
    }
}

/// <summary>The figures of a batch.</summary>
public static class BatchFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<BatchSeason> All { get; } = new();

    /// <summary>Day the first tray (or flat) is sown.</summary>
    public static DateFigure<BatchSeason> SownFirst { get; } =
        All.Date("sown_first", "first sown", batch => batch.Outcome.SownFirst, "first tray or flat sown");

    /// <summary>Day the last tray (or flat) is sown.</summary>
    public static DateFigure<BatchSeason> SownLast { get; } =
        All.Date("sown_last", "last sown", batch => batch.Outcome.SownLast, "last tray or flat sown");

    /// <summary>Day the last tray (or flat) leaves the mats.</summary>
    public static DateFigure<BatchSeason> OffMat { get; } =
        All.Date("off_mat", "off the mats", batch => batch.Outcome.OffMat, "last tray or flat off the mats");

    /// <summary>Day the last flat is potted up.</summary>
    public static DateFigure<BatchSeason> PottedUp { get; } =
        All.Date("potted_up", "potted up", batch => batch.Outcome.PottedUp, "last flat potted up");

    /// <summary>Day the first tray reaches a table.</summary>
    public static DateFigure<BatchSeason> OnTable { get; } =
        All.Date("on_table", "first on a table", batch => batch.Outcome.OnTable, "first tray on a table");

    /// <summary>Day the first tray goes out.</summary>
    public static DateFigure<BatchSeason> OutFirst { get; } =
        All.Date("out_first", "first out", batch => batch.Outcome.OutFirst, "first tray out");

    /// <summary>Day the median tray goes out.</summary>
    public static DateFigure<BatchSeason> OutMedian { get; } =
        All.Date("out_median", "median out", batch => batch.Outcome.OutMedian, "median tray out");

    /// <summary>Day the last tray goes out.</summary>
    public static DateFigure<BatchSeason> OutLast { get; } =
        All.Date("out_last", "last out", batch => batch.Outcome.OutLast, "last tray out");

    /// <summary>Chance that the batch brings its wanted plants in time.</summary>
    public static ChanceFigure<BatchSeason> Complete { get; } =
        All.Chance("complete", "complete in time", batch => batch.IsComplete, "chance that the wanted plants are out in time");

    /// <summary>Plants that reach the field.</summary>
    public static AmountFigure<BatchSeason> PlantsOut { get; } =
        All.Amount("plants_out", "plants out", "plants", batch => batch.Outcome.PlantsOut, "plants that reach the field");

    /// <summary>Wanted plants that reach the field in time (days a weather hold was the only hindrance not counted as late).</summary>
    public static AmountFigure<BatchSeason> PlantsInTime { get; } =
        All.Amount(
            "plants_in_time",
            "plants in time",
            "plants",
            batch => batch.Outcome.PlantsInTime,
            "wanted plants out in time, days held by weather alone not counted as late"
        );

    /// <summary>Wanted plants that never reach the field.</summary>
    public static AmountFigure<BatchSeason> PlantsShort { get; } =
        All.Amount(
            "plants_short",
            "plants never out",
            "plants",
            batch => batch.Outcome.PlantsShort,
            "wanted plants that never reach the field"
        );

    /// <summary>Late plant-days: for each wanted plant its days late, plants that never go out charged to the season's end.</summary>
    public static AmountFigure<BatchSeason> LatePlantDays { get; } =
        All.Wide(
            "late_plant_days",
            "late plant-days",
            "plant-days",
            batch => batch.Outcome.LatePlantDays,
            "for each wanted plant its days late"
        );

    /// <summary>
    /// Days the last tray goes out after the planned date, weather holds included, in seasons in which one goes out; never below 0.
    /// </summary>
    public static AmountFigure<BatchSeason> DaysLate { get; } =
        All.Joined(
            new AmountFigure<BatchSeason>("days_late", "days late", "days", batch => batch.DaysLate)
            {
                IsOfSome = true,
                Meaning = "days the last tray goes out after the planned date, weather included, over the seasons in which one goes out",
            }
        );

    /// <summary>Trays over-held.</summary>
    public static AmountFigure<BatchSeason> OverHeld { get; } =
        All.Amount("over_held", "trays over-held", "trays", batch => batch.Outcome.OverHeld, "trays that stood too long past due");

    /// <summary>Trays or flats given up unsown.</summary>
    public static AmountFigure<BatchSeason> GivenUp { get; } =
        All.Amount("given_up", "given up unsown", "trays or flats", batch => batch.Outcome.GivenUp);

    /// <summary>Tray-days on which a weather hold was the only hindrance.</summary>
    public static AmountFigure<BatchSeason> HoldTrayDays { get; } =
        All.Wide(
            "hold_tray_days",
            "tray-days held by the weather alone",
            "tray-days",
            batch => batch.Outcome.HoldTrayDays,
            "tray-days held back by the weather alone"
        );

    /// <summary>Trays and flats thrown out, by <see cref="DiscardReason"/> in order of name.</summary>
    public static RowFigure<BatchSeason> Discarded { get; } =
        All.Joined(
            new RowFigure<BatchSeason>(
                "discarded",
                "reason",
                "thrown out",
                "trays or flats",
                _ => BatchSeason.Reasons.Length,
                batch => batch.Discarded
            )
        );

    /// <summary>Tray-days waited for a place, by position of the first preference in the scenario.</summary>
    public static RowFigure<BatchSeason> BlockedTrayDays { get; } =
        All.Joined(
            new RowFigure<BatchSeason>(
                "blocked_tray_days",
                "space",
                "tray-days waited for a place",
                "tray-days",
                batch => batch.Spaces,
                batch => batch.Outcome.BlockedTrayDays
            )
            {
                IsWide = true,
                Meaning = "tray-days waited for a place, mean of the seasons, by space of first preference",
            }
        );
}
