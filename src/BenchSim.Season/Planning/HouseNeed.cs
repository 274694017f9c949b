using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// What a heated house with a known shell and heater needs on the days on which it is open, the plan played in each of the years.
/// </summary>
public sealed record HouseNeed
{
    /// <summary>The house; its <see cref="House.Heat"/> is given and tells the fuel and its unit.</summary>
    public required House House { get; init; }

    /// <summary>Fuel by calendar month, mean over the years, in order of month.</summary>
    public required ImmutableArray<MonthNeed> Months { get; init; }

    /// <summary>Fuel of the season, mean over the years, in <see cref="Fuel.Unit"/>.</summary>
    public required double Mean { get; init; }

    /// <summary>Fuel of the season in the mildest of the years, in <see cref="Fuel.Unit"/>.</summary>
    public required double Least { get; init; }

    /// <summary>Fuel of the season in the coldest of the years, in <see cref="Fuel.Unit"/>.</summary>
    public required double Most { get; init; }

    /// <summary>Heat lost on the coldest night the heater must stand up to; null where that night is not given.</summary>
    public required DesignLoad? Load { get; init; }
}
