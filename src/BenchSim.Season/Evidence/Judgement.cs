using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>Trays that were judged of field size, or not yet.</summary>
/// <param name="IsReady">Whether they were.</param>
/// <param name="Day">The day.</param>
/// <param name="Trays">The trays of which it may have been said.</param>
internal sealed record Judgement(bool IsReady, int Day, (PathHeats Path, int Count)[] Trays)
{
    /// <summary>
    /// Between which two growths field size lies: above that of the last that was not ready, and at most that of the first that was. The
    /// last word holds: a later row that speaks against an earlier one outranks it.
    /// </summary>
    /// <param name="rows">The rows, in order.</param>
    /// <param name="reached">How much the trays of a row had grown, in any unit.</param>
    /// <returns>0 where nothing bounds it from below, infinite where nothing does from above.</returns>
    public static (double Above, double UpTo) Bounds(IEnumerable<Judgement> rows, Func<Judgement, double> reached)
    {
        var (low, high) = (0.0, double.PositiveInfinity);
        foreach (var row in rows)
        {
            var grown = reached(row);
            if (row.IsReady)
            {
                (low, high) = (low >= Math.Min(high, grown) ? 0 : low, Math.Min(high, grown));
            }
            else
            {
                (low, high) = (Math.Max(low, grown), high <= Math.Max(low, grown) ? double.PositiveInfinity : high);
            }
        }

        return (low, high);
    }
}
