using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>All spaces of a kind together: what the season wants of them against what there is.</summary>
public sealed record GroupResult : Told<GroupSeason>
{
    /// <summary>Mats, benches or tables.</summary>
    public required SpaceKind Kind { get; init; }

    /// <summary>Places by day, all spaces of the kind.</summary>
    public required ImmutableArray<int> Places { get; init; }

    /// <inheritdoc cref="GroupFigures.Wanted"/>
    public ImmutableArray<DaySpread> Wanted
    {
        get => this[GroupFigures.Wanted];
        init => this[GroupFigures.Wanted] = value;
    }

    /// <inheritdoc cref="GroupFigures.Waiting"/>
    public ImmutableArray<DaySpread> Waiting
    {
        get => this[GroupFigures.Waiting];
        init => this[GroupFigures.Waiting] = value;
    }

    /// <inheritdoc cref="GroupFigures.RunsOut"/>
    public Chance RunsOut
    {
        get => this[GroupFigures.RunsOut];
        init => this[GroupFigures.RunsOut] = value;
    }

    /// <inheritdoc cref="GroupFigures.RunsOutOn"/>
    public DateSpread RunsOutOn
    {
        get => this[GroupFigures.RunsOutOn];
        init => this[GroupFigures.RunsOutOn] = value;
    }

    /// <inheritdoc cref="GroupFigures.Shortage"/>
    public Estimate Shortage
    {
        get => this[GroupFigures.Shortage];
        init => this[GroupFigures.Shortage] = value;
    }

    /// <inheritdoc cref="GroupFigures.ShortageOn"/>
    public DateSpread ShortageOn
    {
        get => this[GroupFigures.ShortageOn];
        init => this[GroupFigures.ShortageOn] = value;
    }

    /// <inheritdoc cref="GroupFigures.WorstWaiting"/>
    public Estimate WorstWaiting
    {
        get => this[GroupFigures.WorstWaiting];
        init => this[GroupFigures.WorstWaiting] = value;
    }

    /// <inheritdoc cref="GroupFigures.WorstWaitingOn"/>
    public DateSpread WorstWaitingOn
    {
        get => this[GroupFigures.WorstWaitingOn];
        init => this[GroupFigures.WorstWaitingOn] = value;
    }
}
