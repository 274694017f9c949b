using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>One house over the seasons: its fuel.</summary>
public sealed record HouseResult
{
    /// <summary>The house; <see cref="House.Heat"/> tells the fuel and its unit.</summary>
    public required House House { get; init; }

    /// <summary>Days open.</summary>
    public required Estimate DaysOpen { get; init; }

    /// <summary>Fuel of the season, in <see cref="Season.Heat.Fuel.Unit"/>; null when the shell or heater is not given or it is unheated.</summary>
    public required Estimate? Fuel { get; init; }

    /// <summary>Fuel by calendar month of the play, in the same unit; empty when <see cref="Fuel"/> is null.</summary>
    public required ImmutableArray<MonthFuel> Months { get; init; }
}
