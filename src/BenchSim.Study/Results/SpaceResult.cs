using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>One space over the seasons. Arrays by day have one entry a day of the play, day 0 first.</summary>
public sealed record SpaceResult : Told<SpaceSeason>
{
    /// <summary>The space.</summary>
    public required Space Space { get; init; }

    /// <summary>Places by day.</summary>
    public required ImmutableArray<int> Places { get; init; }

    /// <inheritdoc cref="SpaceFigures.Held"/>
    public ImmutableArray<DaySpread> Held
    {
        get => this[SpaceFigures.Held];
        init => this[SpaceFigures.Held] = value;
    }

    /// <inheritdoc cref="SpaceFigures.Wanted"/>
    public ImmutableArray<DaySpread> Wanted
    {
        get => this[SpaceFigures.Wanted];
        init => this[SpaceFigures.Wanted] = value;
    }

    /// <inheritdoc cref="SpaceFigures.Waiting"/>
    public ImmutableArray<DaySpread> Waiting
    {
        get => this[SpaceFigures.Waiting];
        init => this[SpaceFigures.Waiting] = value;
    }

    /// <inheritdoc cref="SpaceFigures.Peak"/>
    public Estimate Peak
    {
        get => this[SpaceFigures.Peak];
        init => this[SpaceFigures.Peak] = value;
    }

    /// <inheritdoc cref="SpaceFigures.PeakOn"/>
    public DateSpread PeakOn
    {
        get => this[SpaceFigures.PeakOn];
        init => this[SpaceFigures.PeakOn] = value;
    }

    /// <inheritdoc cref="SpaceFigures.DaysFull"/>
    public Estimate DaysFull
    {
        get => this[SpaceFigures.DaysFull];
        init => this[SpaceFigures.DaysFull] = value;
    }

    /// <inheritdoc cref="SpaceFigures.TrayDays"/>
    public Estimate TrayDays
    {
        get => this[SpaceFigures.TrayDays];
        init => this[SpaceFigures.TrayDays] = value;
    }

    /// <inheritdoc cref="SpaceFigures.WaitedDays"/>
    public Estimate WaitedDays
    {
        get => this[SpaceFigures.WaitedDays];
        init => this[SpaceFigures.WaitedDays] = value;
    }
}
