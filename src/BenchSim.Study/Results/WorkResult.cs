using System.Collections.Immutable;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>The season's work.</summary>
public sealed record WorkResult : Told<WorkSeason>
{
    /// <inheritdoc cref="WorkFigures.Sown"/>
    public Estimate Sown
    {
        get => this[WorkFigures.Sown];
        init => this[WorkFigures.Sown] = value;
    }

    /// <inheritdoc cref="WorkFigures.Potted"/>
    public Estimate Potted
    {
        get => this[WorkFigures.Potted];
        init => this[WorkFigures.Potted] = value;
    }

    /// <inheritdoc cref="WorkFigures.Moved"/>
    public Estimate Moved
    {
        get => this[WorkFigures.Moved];
        init => this[WorkFigures.Moved] = value;
    }

    /// <inheritdoc cref="WorkFigures.SetOut"/>
    public Estimate SetOut
    {
        get => this[WorkFigures.SetOut];
        init => this[WorkFigures.SetOut] = value;
    }

    /// <inheritdoc cref="WorkFigures.CarriedIn"/>
    public Estimate CarriedIn
    {
        get => this[WorkFigures.CarriedIn];
        init => this[WorkFigures.CarriedIn] = value;
    }

    /// <inheritdoc cref="WorkFigures.Hours"/>
    public Estimate Hours
    {
        get => this[WorkFigures.Hours];
        init => this[WorkFigures.Hours] = value;
    }

    /// <inheritdoc cref="WorkFigures.HoursByWeek"/>
    public ImmutableArray<Estimate> HoursByWeek
    {
        get => this[WorkFigures.HoursByWeek];
        init => this[WorkFigures.HoursByWeek] = value;
    }
}
