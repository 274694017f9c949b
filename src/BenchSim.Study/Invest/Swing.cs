namespace BenchSim.Study.Invest;

/// <summary>What one input does to the net present value when it alone is lower or higher: a bar of the tornado.</summary>
public sealed record Swing
{
    /// <summary>The input.</summary>
    public required InvestInput Input { get; init; }

    /// <summary>Its value in the case.</summary>
    public required double Value { get; init; }

    /// <summary>Its lower value.</summary>
    public required double Low { get; init; }

    /// <summary>Its higher value.</summary>
    public required double High { get; init; }

    /// <summary>Whether the user gave the range; otherwise it is a quarter less and more.</summary>
    public required bool IsGiven { get; init; }

    /// <summary>Mean net present value at the lower value of the input.</summary>
    public required double AtLow { get; init; }

    /// <summary>Half the width of its 95 % interval; NaN for one season.</summary>
    public required double AtLowHalfWidth { get; init; }

    /// <summary>Mean net present value at the higher value of the input.</summary>
    public required double AtHigh { get; init; }

    /// <summary>Half the width of its 95 % interval; NaN for one season.</summary>
    public required double AtHighHalfWidth { get; init; }

    /// <summary>How far the net present value swings.</summary>
    public double Size => Math.Abs(AtHigh - AtLow);

    /// <summary>Whether the case pays at one end and not at the other.</summary>
    public bool TurnsTheCase => (AtLow > 0) != (AtHigh > 0);
}
