namespace BenchSim.Study.Invest;

/// <summary>
/// What one must believe of one input, all others as given, for the mean net present value to be 0 or more. Where every possible value will
/// do, or none, there is no number to name.
/// </summary>
public sealed record BreakEven
{
    /// <summary>The input.</summary>
    public required InvestInput Input { get; init; }

    /// <summary>Its value in the case.</summary>
    public required double Value { get; init; }

    /// <summary>True when more of it helps: it must be at least <see cref="At"/>; false when it must be at most that.</summary>
    public required bool IsFloor { get; init; }

    /// <summary>
    /// The value at which the case breaks even. Positive infinity of a floor and negative infinity of a ceiling: no value will do. Positive
    /// infinity of a ceiling: any value will do, as 0 of a floor.
    /// </summary>
    public required double At { get; init; }

    /// <summary>Lower end of its 95 % interval (resampled seasons); may be infinite as <see cref="At"/>.</summary>
    public required double Low { get; init; }

    /// <summary>Upper end of its 95 % interval; may be infinite as <see cref="At"/>.</summary>
    public required double High { get; init; }

    /// <summary>Whether no value of the input, all others as given, makes the case pay.</summary>
    public bool IsHopeless => IsFloor ? double.IsPositiveInfinity(At) : double.IsNegativeInfinity(At);
}
