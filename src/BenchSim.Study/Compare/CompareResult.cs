using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Compare;

/// <summary>A base and its variants, played on the same luck.</summary>
public sealed record CompareResult
{
    /// <summary>Plan of the base, as played: to the last day that the base or a variant needs.</summary>
    public required SeasonPlan Base { get; init; }

    /// <summary>Seasons played of each.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Confidence that every interval shown holds at once: 0.95.</summary>
    public required double Confidence { get; init; }

    /// <summary>Intervals shown in all: variants times measures, the chance of fit among them.</summary>
    public required int Comparisons { get; init; }

    /// <summary>Confidence of each interval: 1 - (1 - <see cref="Confidence"/>) / <see cref="Comparisons"/> (Bonferroni).</summary>
    public required double EachConfidence { get; init; }

    /// <summary>Measures beside the chance of fit.</summary>
    public required ImmutableArray<Measure> Measures { get; init; }

    /// <summary>The variants in the order asked for.</summary>
    public required ImmutableArray<VariantResult> Variants { get; init; }
}
