using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>How likely the values of a range are.</summary>
public enum RangeShape
{
    /// <summary>All alike, from the lowest to the highest.</summary>
    Uniform,

    /// <summary>Most likely the value in force, less likely the farther from it, none beyond the ends.</summary>
    Triangular,

    /// <summary>The logarithm is normal; one in twenty lies below the low end, one in twenty above the high one.</summary>
    Lognormal,

    /// <summary>For shares: the log odds are normal; one in twenty lies below the low end, one in twenty above the high one.</summary>
    Odds,
}

/// <summary>A row of ranges.csv: what the user says a value may truly be. It changes nothing that is played but by <c>trust</c>.</summary>
/// <param name="What">Key or column of the value.</param>
/// <param name="Of">Ids of the crops or houses whose values move together; empty for a rule.</param>
/// <param name="Low">Low end, in the units used inside; a factor where it is relative.</param>
/// <param name="High">High end, above the low one.</param>
/// <param name="IsRelative">Whether the ends are factors on the value in force.</param>
/// <param name="Shape">How likely which part is.</param>
public sealed record RangeRow(string What, ImmutableArray<string> Of, double Low, double High, bool IsRelative, RangeShape Shape);
