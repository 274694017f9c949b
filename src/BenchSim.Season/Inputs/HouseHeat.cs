using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>What heats a house.</summary>
public sealed record HouseHeat
{
    /// <summary>Fuel.</summary>
    public required Fuel Fuel { get; init; }

    /// <summary>Useful heat over heat content, above 0, at most 1 (a heat pump may have more).</summary>
    public required double Efficiency { get; init; }

    /// <summary>Price of a <see cref="Fuel.Unit"/> of fuel, in the user's money; null when not given.</summary>
    public double? Price { get; init; }

    /// <summary>Outdoor temperature of the coldest night the heater must stand up to, degrees Celsius; null when not given.</summary>
    public double? DesignOutdoorC { get; init; }

    /// <summary>Heat that all heaters of the house give together, as rated, watts; null when not given.</summary>
    public double? OutputW { get; init; }

    /// <summary>Where <see cref="OutputW"/> is written.</summary>
    public SourcePlace OutputPlace { get; init; }
}
