using BenchSim.Season.Values;

namespace BenchSim.Season.Doubt;

/// <summary>How a value may be off.</summary>
public enum DoubtKind
{
    /// <summary>By a factor: days that growers count.</summary>
    Days,

    /// <summary>By a factor: heat sums and coefficients, which nobody sees.</summary>
    Amount,

    /// <summary>By a factor: how far batches or seedlings differ.</summary>
    Spread,

    /// <summary>A share: by a factor on its odds.</summary>
    Share,

    /// <summary>By so many degrees.</summary>
    Temperature,
}

/// <summary>
/// How far a value may be off on a farm, by what it is and where it comes from: a judgement, which the user overrules for any value
/// (docs/trust.md has it as a table).
/// </summary>
public static class Judgement
{
    /// <summary>Standard deviations from the middle of a normal law to its 5 % and its 95 %.</summary>
    public const double Reach = 1.6448536269514722;

    /// <summary>
    /// For a temperature how far off it may be at most, kelvin; else the standard deviation of the logarithm of the value, or of the odds of
    /// a share. 0 for a value that the user wrote.
    /// </summary>
    /// <param name="kind">How the value may be off.</param>
    /// <param name="trust">Where it comes from.</param>
    public static double Off(DoubtKind kind, Trust trust)
    {
        var (read, remembered, assumed) = kind switch
        {
            DoubtKind.Days => (0.08, 0.15, 0.25),
            DoubtKind.Amount => (0.15, 0.25, 0.40),
            DoubtKind.Spread => (0.30, 0.40, 0.50),
            DoubtKind.Share => (0.20, 0.40, 0.60),
            _ => (1.0, 2.0, 3.0),
        };
        return trust switch
        {
            Trust.User => 0,
            Trust.Seen or Trust.Derived => read,
            Trust.Assumption => assumed,
            _ => remembered,
        };
    }
}
