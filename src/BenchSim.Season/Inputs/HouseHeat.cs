using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>What a house loses and what heats it.</summary>
public sealed record HouseHeat
{
    /// <summary>Shell, from the dimensions.</summary>
    public required HouseShell Shell { get; init; }

    /// <summary>Name of the covering shown to people.</summary>
    public required string Covering { get; init; }

    /// <summary>U value of the covering, watts a square metre and kelvin, above 0.</summary>
    public required double UValue { get; init; }

    /// <summary>Changes of the air an hour, 0 or more.</summary>
    public required double AirChanges { get; init; }

    /// <summary>Fuel.</summary>
    public required Fuel Fuel { get; init; }

    /// <summary>Useful heat over heat content, above 0, at most 1 (a heat pump may have more).</summary>
    public required double Efficiency { get; init; }

    /// <summary>Price of a <see cref="Fuel.Unit"/> of fuel, in the user's money; null when not given.</summary>
    public double? Price { get; init; }

    /// <summary>Outdoor temperature of the coldest night the heater must stand up to, degrees Celsius; null when not given.</summary>
    public double? DesignOutdoorC { get; init; }

    /// <summary>Where each value comes from, by key of [[house]].</summary>
    public System.Collections.Immutable.ImmutableSortedDictionary<string, Provenance> Sources { get; init; } =
        System.Collections.Immutable.ImmutableSortedDictionary<string, Provenance>.Empty;

    /// <summary>The keys as they are written, with the dimensions.</summary>
    public HeatKeys Written { get; init; } = new();

    /// <summary>Heat lost for each kelvin.</summary>
    public HeatLoss Loss => HeatLoss.Of(Shell, UValue, AirChanges);
}
