using System.Collections.Immutable;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>One grower's use of the site over the seasons.</summary>
public sealed record GrowerResult : Told<GrowerSeason>
{
    /// <summary>Name as written in the plan.</summary>
    public required string Grower { get; init; }

    /// <summary>Batches of the grower.</summary>
    public required int Batches { get; init; }

    /// <summary>Share of all tray-days, 0 to 1 (mean of the grower over mean of all).</summary>
    public required double Share { get; init; }

    /// <summary>
    /// Share of the fuel cost, or of the fuel heat where no price is given, 0 to 1: each house's by place-days held in it; not-a-number
    /// when no house has fuel.
    /// </summary>
    public double FuelShare { get; init; } = double.NaN;

    /// <inheritdoc cref="GrowerFigures.TrayDays"/>
    public Estimate TrayDays
    {
        get => this[GrowerFigures.TrayDays];
        init => this[GrowerFigures.TrayDays] = value;
    }

    /// <inheritdoc cref="GrowerFigures.Peak"/>
    public Estimate Peak
    {
        get => this[GrowerFigures.Peak];
        init => this[GrowerFigures.Peak] = value;
    }

    /// <inheritdoc cref="GrowerFigures.TrayDaysBySpace"/>
    public ImmutableArray<Estimate> TrayDaysBySpace
    {
        get => this[GrowerFigures.TrayDaysBySpace];
        init => this[GrowerFigures.TrayDaysBySpace] = value;
    }
}
