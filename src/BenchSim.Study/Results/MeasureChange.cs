using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>A measure of the base and of a variant, over the same seasons.</summary>
public sealed record MeasureChange
{
    /// <summary>What is measured.</summary>
    public required Measure Measure { get; init; }

    /// <summary>Mean of the base.</summary>
    public required double Base { get; init; }

    /// <summary>Mean of the variant.</summary>
    public required double Variant { get; init; }

    /// <summary>Mean of variant less base.</summary>
    public required double Difference { get; init; }

    /// <summary>
    /// Half the width of the paired Student interval of the difference, allowing for all comparisons made; NaN for one season.
    /// </summary>
    public required double HalfWidth { get; init; }

    /// <summary>Seasons in which the two are not the same.</summary>
    public required int Differing { get; init; }

    /// <summary>
    /// How many times smaller the variance of the difference is than with luck of their own; NaN when it cannot be told or the difference
    /// never varies.
    /// </summary>
    public required double VarianceRatio { get; init; }

    /// <summary>Lower end of the interval.</summary>
    public double Low => Difference - HalfWidth;

    /// <summary>Upper end of the interval.</summary>
    public double High => Difference + HalfWidth;

    /// <summary>Whether the interval leaves out no difference.</summary>
    public bool IsReal => Differing > 0 && (Low > 0 || High < 0);
}
