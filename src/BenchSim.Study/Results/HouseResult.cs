using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>One house over the seasons: its fuel.</summary>
public sealed record HouseResult : Told<HouseSeason>
{
    /// <summary>The house; <see cref="House.Heat"/> tells the fuel and its unit.</summary>
    public required House House { get; init; }

    /// <inheritdoc cref="HouseFigures.DaysOpen"/>
    public Estimate DaysOpen
    {
        get => this[HouseFigures.DaysOpen];
        init => this[HouseFigures.DaysOpen] = value;
    }

    /// <summary>Fuel of the season, in the unit it is bought by; null when the shell or heater is not given or it is unheated.</summary>
    public Estimate? Fuel
    {
        get => Has(HouseFigures.Fuel) ? this[HouseFigures.Fuel] : null;
        init => Figures = With(HouseFigures.Fuel, value);
    }

    /// <summary>Fuel by calendar month of the play, in the same unit; empty when <see cref="Fuel"/> is null.</summary>
    public required ImmutableArray<MonthFuel> Months { get; init; }
}
