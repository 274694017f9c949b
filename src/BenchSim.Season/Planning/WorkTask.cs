using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>One job on one batch, on its planned date.</summary>
/// <param name="On">Planned date, a work day.</param>
/// <param name="Kind">Job.</param>
/// <param name="Batch">Batch.</param>
/// <param name="Pieces">Trays, or flats where <paramref name="AreFlats"/>: those handled, and for potting up the trays filled.</param>
/// <param name="AreFlats">True when the pieces are open flats.</param>
/// <param name="Hours">Work, hours; null for thinning where the site gives no time for it.</param>
public sealed record WorkTask(DateOnly On, WorkKind Kind, BatchPlan Batch, int Pieces, bool AreFlats, double? Hours);
