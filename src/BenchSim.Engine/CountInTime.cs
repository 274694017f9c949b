namespace BenchSim.Engine;

/// <summary>
/// A whole number that changes in steps, and its exact sum over the periods up to a horizon: a change is counted at once for all periods it
/// is still to last, which is cheaper than adding the number up at the end of each.
/// </summary>
public struct CountInTime
{
    /// <summary>The number now.</summary>
    public int Value { get; private set; }

    /// <summary>Its sum over all periods up to the horizon, should it not change again.</summary>
    public long Sum { get; private set; }

    /// <summary>Changes the number.</summary>
    /// <param name="by">How much more; below 0, less.</param>
    /// <param name="periodsLeft">Periods to the horizon, this one included, 0 or more.</param>
    public void Change(int by, int periodsLeft)
    {
        Value += by;
        Sum += (long)by * periodsLeft;
    }
}
