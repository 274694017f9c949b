using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Dense;

/// <summary>Direct sowing against dense sowing with later pot-up, crop by crop.</summary>
public sealed record DenseResult
{
    /// <summary>The plan as it stands.</summary>
    public required SeasonPlan Base { get; init; }

    /// <summary>Flat for batches that the plan sows directly.</summary>
    public required TrayType Flat { get; init; }

    /// <summary>Seasons played of each way.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Intervals shown in all: crops times measures, the chance of fit among them.</summary>
    public required int Comparisons { get; init; }

    /// <summary>Confidence of each interval, so that all hold at once with 95 % (Bonferroni).</summary>
    public required double EachConfidence { get; init; }

    /// <summary>Crops in order of id.</summary>
    public required ImmutableArray<DenseCrop> Crops { get; init; }

    /// <summary>Crops that cannot be sown both ways, in order of id.</summary>
    public required ImmutableArray<DenseSkip> Skipped { get; init; }
}
