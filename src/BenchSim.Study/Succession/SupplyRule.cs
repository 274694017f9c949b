namespace BenchSim.Study.Succession;

/// <summary>
/// How long one set-out supplies: from so many days after it, for so many days. What lies between the end of one set-out's supply and the
/// beginning of the next one's is a gap.
/// </summary>
/// <param name="AfterDays">Days from setting out to the first day of supply, 0 or more.</param>
/// <param name="Days">Days of supply, 1 or more.</param>
public sealed record SupplyRule(int AfterDays, int Days)
{
    /// <summary>
    /// Days without supply between the first day of supply of the earliest set-out and that of the latest. The days before supply are the
    /// same for all and cancel out.
    /// </summary>
    /// <param name="setOut">Days of setting out, in any order.</param>
    public int GapDays(IEnumerable<int> setOut)
    {
        ArgumentNullException.ThrowIfNull(setOut);
        var gap = 0;
        int? end = null;
        foreach (var day in setOut.Order())
        {
            gap += end is { } covered ? Math.Max(0, day - covered) : 0;
            end = day + Days;
        }

        return gap;
    }
}
