using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>Who waits for whom: trays that stand in one space, or are not sown yet, and are refused a place elsewhere. In tray-days: places refused, by days.</summary>
public sealed record WaitResult
{
    /// <summary>Space in which they stand; null for trays that are not sown yet.</summary>
    public required Space? From { get; init; }

    /// <summary>Space of first preference of those that refuse them.</summary>
    public required Space By { get; init; }

    /// <summary>Tray-days refused by week, the first week from day 0.</summary>
    public required ImmutableArray<DaySpread> ByWeek { get; init; }

    /// <summary>Tray-days refused in a season.</summary>
    public required Estimate TrayDays { get; init; }

    /// <summary>Chance that some tray of a season waits so.</summary>
    public required Chance Happens { get; init; }
}
