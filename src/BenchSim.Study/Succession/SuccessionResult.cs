using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Succession;

/// <summary>A trial of schedules for one line of a plan, all on the same luck.</summary>
public sealed record SuccessionResult
{
    /// <summary>The plan as it is.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>The line.</summary>
    public required SuccessionLine Line { get; init; }

    /// <summary>How long one set-out supplies.</summary>
    public required SupplyRule Supply { get; init; }

    /// <summary>Seasons played of each schedule.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>The schedules: by days between sowings, then by number.</summary>
    public required ImmutableArray<ScheduleResult> Schedules { get; init; }
}
