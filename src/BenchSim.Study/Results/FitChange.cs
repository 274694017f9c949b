using BenchSim.Study.Results;

namespace BenchSim.Study.Results;

/// <summary>The chance that a season fits, of the base and of a variant, on the same seasons.</summary>
public sealed record FitChange
{
    /// <summary>Chance of the base.</summary>
    public required Chance Base { get; init; }

    /// <summary>Chance of the variant.</summary>
    public required Chance Variant { get; init; }

    /// <summary>Seasons that fit in both.</summary>
    public required int Both { get; init; }

    /// <summary>Seasons that fit in the base alone.</summary>
    public required int OnlyBase { get; init; }

    /// <summary>Seasons that fit in the variant alone.</summary>
    public required int OnlyVariant { get; init; }

    /// <summary>Chance of the variant less that of the base, -1 to 1.</summary>
    public double Difference => (double)(OnlyVariant - OnlyBase) / Base.Seasons;

    /// <summary>Lower end of the interval of the difference, allowing for all comparisons made.</summary>
    public required double Low { get; init; }

    /// <summary>Upper end of the interval of the difference.</summary>
    public required double High { get; init; }

    /// <summary>
    /// How many times smaller the variance of the difference is than with luck of their own; NaN when it cannot be told or no season
    /// differs.
    /// </summary>
    public required double VarianceRatio { get; init; }

    /// <summary>Whether the interval leaves out no difference.</summary>
    public bool IsReal => Low > 0 || High < 0;

    /// <summary>Seasons with another answer.</summary>
    public int Differing => OnlyBase + OnlyVariant;
}
