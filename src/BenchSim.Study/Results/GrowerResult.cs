using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>One grower's use of the site over the seasons.</summary>
public sealed record GrowerResult
{
    /// <summary>Name as written in the plan.</summary>
    public required string Grower { get; init; }

    /// <summary>Batches of the grower.</summary>
    public required int Batches { get; init; }

    /// <summary>Tray-days held, all spaces.</summary>
    public required Estimate TrayDays { get; init; }

    /// <summary>Mean tray-days held by position in <see cref="Scenario.Spaces"/>.</summary>
    public required ImmutableArray<double> TrayDaysBySpace { get; init; }

    /// <summary>Share of all tray-days, 0 to 1 (mean of the grower over mean of all).</summary>
    public required double Share { get; init; }

    /// <summary>Share of the fuel cost, or of the fuel heat where no price is given, 0 to 1: each house's by place-days held in it; not-a-number when no house has fuel.</summary>
    public double FuelShare { get; init; } = double.NaN;

    /// <summary>Most places held on any day.</summary>
    public required Estimate Peak { get; init; }
}
