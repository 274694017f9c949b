using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Study.Review;

/// <summary>A job on a batch, as it was planned and as the log has it.</summary>
public sealed record ReviewedJob
{
    /// <summary>Job.</summary>
    public required WorkKind Kind { get; init; }

    /// <summary>The day on which it was planned; null where it was not.</summary>
    public required DateOnly? Planned { get; init; }

    /// <summary>The day by which at least half of the pieces that were done were done; null where no line says so.</summary>
    public required DateOnly? Done { get; init; }

    /// <summary>The day on which it was due: that which was agreed, or else that of the plan as it is.</summary>
    public required DateOnly Due { get; init; }

    /// <summary>Trays planned, or flats; for potting up the trays filled.</summary>
    public required int PiecesPlanned { get; init; }

    /// <summary>The same by the log.</summary>
    public required int PiecesDone { get; init; }

    /// <summary>Whether the pieces are flats.</summary>
    public required bool AreFlats { get; init; }

    /// <summary>Days later than planned, below 0 for earlier; null where one of the two is not known.</summary>
    public int? DaysLate => Done is { } done && Planned is { } planned ? done.DayNumber - planned.DayNumber : null;

    /// <summary>The jobs on a batch, in the order of a tray's way.</summary>
    /// <param name="scenario">Scenario of the log.</param>
    /// <param name="agreed">The batch as it was agreed; null where it was not.</param>
    /// <param name="now">The batch as the plan has it; null where it is no longer planned.</param>
    /// <param name="rows">Rows of the log on the batch.</param>
    internal static ImmutableArray<ReviewedJob> Of(Scenario scenario, BatchPlan? agreed, BatchPlan? now, IReadOnlyList<LogEntry> rows)
    {
        var kinds = scenario.Spaces.ToDictionary(space => space.Id, space => (SpaceKind?)space.Kind, StringComparer.Ordinal);
        var batch = (now ?? agreed)!;
        return
        [
            .. new (WorkKind Kind, Func<LogEntry, bool> IsRow)[]
            {
                (WorkKind.Sow, row => row.What == LogKind.Sown),
                (WorkKind.OffMat, IsOffMat),
                (WorkKind.PotUp, row => row.What == LogKind.PottedUp),
                (WorkKind.ToTable, row => row.What == LogKind.Moved && KindOf(row.Space) == SpaceKind.Table),
                (WorkKind.SetOut, row => row.What is LogKind.SetOut or LogKind.HandedOver),
            }
                .Where(job => DateOf(batch, job.Kind) is not null)
                .Select(job => Of(job.Kind, agreed, batch, [.. rows.Where(job.IsRow)])),
        ];

        bool IsOffMat(LogEntry row) =>
            row.What == LogKind.Moved && KindOf(row.Space) == SpaceKind.Bench && KindOf(row.From) is (null or SpaceKind.Mat);

        SpaceKind? KindOf(string? space) => space is null ? null : kinds.GetValueOrDefault(space);
    }

    // Null for a job that the batch does not have.
    private static DateOnly? DateOf(BatchPlan? batch, WorkKind kind) =>
        kind switch
        {
            WorkKind.Sow => batch?.SowOn,
            WorkKind.OffMat => batch?.OffMatOn,
            WorkKind.PotUp => batch?.PotUpOn,
            WorkKind.ToTable => batch?.TableOn,
            _ => batch?.SetOutOn,
        };

    private static ReviewedJob Of(WorkKind kind, BatchPlan? agreed, BatchPlan batch, LogEntry[] rows)
    {
        var areFlats = batch.Flat is not null && kind is (WorkKind.Sow or WorkKind.OffMat);
        int Pieces(LogEntry row) => kind == WorkKind.PotUp ? row.Trays ?? 0 : (row.Trays ?? 0) + (row.Flats ?? 0);
        (DateOnly On, int Pieces)[] done = [.. rows.OrderBy(row => row.Date).Select(row => (row.Date, Pieces(row)))];
        var all = done.Sum(row => row.Pieces);
        return new ReviewedJob
        {
            Kind = kind,
            Planned = DateOf(agreed, kind),
            Due = DateOf(agreed, kind) ?? DateOf(batch, kind)!.Value,
            Done = Middle(done, all),
            PiecesPlanned =
                agreed is null ? 0
                : areFlats ? agreed.Flats
                : agreed.Trays,
            PiecesDone = all,
            AreFlats = areFlats,
        };
    }

    private static DateOnly? Middle((DateOnly On, int Pieces)[] done, int all)
    {
        var soFar = 0;
        foreach (var (on, pieces) in done)
        {
            soFar += pieces;
            if (2 * soFar >= all)
            {
                return on;
            }
        }

        return null;
    }
}
