using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Study.Results;

/// <summary>Which space holds the plan back: each with more room in turn, on the same luck and the same plan.</summary>
public sealed record BottleneckResult
{
    /// <summary>The plan, as it is.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>Seasons played of each trial.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Confidence that every interval holds at once: 0.95.</summary>
    public required double Confidence { get; init; }

    /// <summary>Intervals in all: three a trial and a house, five a pair.</summary>
    public required int Comparisons { get; init; }

    /// <summary>Confidence of each interval: 1 - (1 - <see cref="Confidence"/>) / <see cref="Comparisons"/> (Bonferroni).</summary>
    public required double EachConfidence { get; init; }

    /// <summary>Chance that a season of the plan fits, weather holds excepted.</summary>
    public required Chance Fits { get; init; }

    /// <summary>Late plant-days of a season, mean.</summary>
    public required double LatePlantDays { get; init; }

    /// <summary>Each space the plan may use without limit, what brings most plants out in time first.</summary>
    public required ImmutableArray<BottleneckTrial> Unlimited { get; init; }

    /// <summary>Each space the plan may use one unit larger, what brings most plants out in time first.</summary>
    public required ImmutableArray<BottleneckTrial> Larger { get; init; }

    /// <summary>Every two of those spaces without limit at once, what saves most late plant-days first.</summary>
    public required ImmutableArray<BottleneckPair> Pairs { get; init; }

    /// <summary>Each colder house that the plan may use, as warm as the warmest, what brings most plants out in time first.</summary>
    public ImmutableArray<WarmerTrial> Warmer { get; init; } = [];

    /// <summary>Who waits for whom, as it is.</summary>
    public required ImmutableArray<WaitResult> Waits { get; init; }
}
