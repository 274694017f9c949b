using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>
/// Who waits for whom: trays that stand in one space, or are not sown yet, and are refused a place elsewhere. In tray-days: places refused,
/// by days.
/// </summary>
public sealed record WaitResult : Told<WaitSeason>
{
    /// <summary>Space in which they stand; null for trays that are not sown yet.</summary>
    public required Space? From { get; init; }

    /// <summary>Space of first preference of those that refuse them.</summary>
    public required Space By { get; init; }

    /// <inheritdoc cref="WaitFigures.ByWeek"/>
    public ImmutableArray<DaySpread> ByWeek
    {
        get => this[WaitFigures.ByWeek];
        init => this[WaitFigures.ByWeek] = value;
    }

    /// <inheritdoc cref="WaitFigures.TrayDays"/>
    public Estimate TrayDays
    {
        get => this[WaitFigures.TrayDays];
        init => this[WaitFigures.TrayDays] = value;
    }

    /// <inheritdoc cref="WaitFigures.Happens"/>
    public Chance Happens
    {
        get => this[WaitFigures.Happens];
        init => this[WaitFigures.Happens] = value;
    }
}
