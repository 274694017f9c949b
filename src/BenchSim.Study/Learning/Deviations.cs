using BenchSim.Season.Values;

namespace BenchSim.Study.Learning;

/// <summary>
/// How far off a value in force may be before anything is counted: the standard deviation of its logarithm, of a share that of its log
/// odds. By where the value comes from.
/// </summary>
/// <param name="Read">Of a value that was read in a source, or worked out from it; above 0.</param>
/// <param name="Remembered">Of one from memory, of common practice, and of your own without a source; above 0.</param>
/// <param name="Assumed">Of an assumption, and of one borrowed from a relative; above 0.</param>
public sealed record Deviations(double Read, double Remembered, double Assumed)
{
    /// <summary>Those in use where nothing else is said; assumptions.</summary>
    public static Deviations Usual { get; } = new(0.15, 0.30, 0.50);

    /// <summary>That of a value.</summary>
    /// <param name="from">Where it comes from.</param>
    public double Of(Provenance from)
    {
        ArgumentNullException.ThrowIfNull(from);
        return from.Trust switch
        {
            Season.Values.Trust.Seen or Season.Values.Trust.Derived => Read,
            Season.Values.Trust.User when from.Source.Length > 0 => Read,
            Season.Values.Trust.User or Season.Values.Trust.CommonPractice or Season.Values.Trust.Memory => Remembered,
            _ => Assumed,
        };
    }
}
