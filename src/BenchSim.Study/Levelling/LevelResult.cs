using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Compare;

namespace BenchSim.Study.Levelling;

/// <summary>A plan, its levelled form, and what came of playing both on the same luck.</summary>
public sealed record LevelResult
{
    /// <summary>The plan.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>How it was levelled and tried.</summary>
    public required LevelOptions Options { get; init; }

    /// <summary>Batches that may be sown on more than one day.</summary>
    public required int Movable { get; init; }

    /// <summary>What to do.</summary>
    public required LevelVerdict Verdict { get; init; }

    /// <summary>The groups: mats, benches and tables.</summary>
    public required ImmutableArray<LevelledGroup> Groups { get; init; }

    /// <summary>Place-days expected beyond the share that may be filled, as planned.</summary>
    public required double OverBefore { get; init; }

    /// <summary>The same when levelled.</summary>
    public required double OverAfter { get; init; }

    /// <summary>No choice within the tolerances leaves fewer place-days than this.</summary>
    public required double OverBound { get; init; }

    /// <summary>True when it is proved that none leaves fewer than <see cref="OverAfter"/>.</summary>
    public required bool IsOverProved { get; init; }

    /// <summary>Days of shift, earlier and later added up.</summary>
    public required int ShiftDays { get; init; }

    /// <summary>No choice that leaves as few place-days shifts fewer days than this.</summary>
    public required int ShiftBound { get; init; }

    /// <summary>True when it is proved that none shifts fewer.</summary>
    public required bool IsShiftProved { get; init; }

    /// <summary>Sowings moved, in the order of the plan.</summary>
    public required ImmutableArray<MovedSowing> Moves { get; init; }

    /// <summary>The levelled plan; null when nothing moves.</summary>
    public SeasonPlan? Levelled { get; init; }

    /// <summary>The levelled plan against the plan, places as given; null when nothing moves.</summary>
    public CompareResult? Trial { get; init; }
}
