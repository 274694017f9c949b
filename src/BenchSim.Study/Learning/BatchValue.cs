namespace BenchSim.Study.Learning;

/// <summary>
/// The value that one batch had, such as its degree-days of growth, as far as it is known: seen not ready at the one and ready at the
/// other. Equal ends are a value that is known.
/// </summary>
/// <param name="Above">It lies above this, or is this where both are equal; 0 where nothing bounds it from below.</param>
/// <param name="UpTo">It is at most this; infinite where nothing bounds it from above.</param>
public readonly record struct BatchValue(double Above, double UpTo)
{
    /// <summary>Whether the value itself is known.</summary>
    public bool IsKnown => Above.Equals(UpTo);
}
