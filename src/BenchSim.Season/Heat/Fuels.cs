using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>Built-in fuels (tests/Published/data/fuels.csv). Heat contents are higher heating values.</summary>
public static class Fuels
{
    private const double LitresPerGallon = 3.785411784;

    /// <summary>Propane, by the gallon: 91,452 Btu.</summary>
    public static Fuel Propane { get; } =
        new(
            "propane",
            "propane",
            "gal",
            96.4870,
            Eia("91,452 Btu a gallon"),
            0.80,
            Memory("power-vented unit heater"),
            "L",
            LitresPerGallon
        );

    /// <summary>No. 2 heating oil, by the gallon: 138,500 Btu.</summary>
    public static Fuel HeatingOil { get; } =
        new(
            "oil",
            "No. 2 heating oil",
            "gal",
            146.1253,
            Eia("138,500 Btu a gallon"),
            0.775,
            Memory("oil furnace, 75 to 80 %"),
            "L",
            LitresPerGallon
        );

    /// <summary>Natural gas, by the therm: 100,000 Btu.</summary>
    public static Fuel NaturalGas { get; } =
        new(
            "gas",
            "natural gas",
            "therm",
            105.5056,
            Eia("100,000 Btu a therm, by definition"),
            0.80,
            Memory("power-vented unit heater"),
            "kWh",
            105.5056 / 3.6
        );

    /// <summary>Electricity, by the kilowatt-hour.</summary>
    public static Fuel Electricity { get; } =
        new(
            "electricity",
            "electricity",
            "kWh",
            3.6,
            new(Trust.Derived, "1 kWh = 3.6 MJ by definition (3,412 Btu)"),
            1,
            Extension("resistance heat, 293 kWh a million Btu"),
            "kWh",
            1
        );

    /// <summary>Firewood, by the cord: about 20 million Btu; kind and moisture of the wood matter much.</summary>
    public static Fuel Wood { get; } =
        new(
            "wood",
            "firewood",
            "cord",
            21101.12,
            Eia("20 million Btu a cord, an estimate"),
            0.60,
            Extension("wood stove or boiler"),
            "stacked m3",
            3.624556
        );

    /// <summary>All, in order of id.</summary>
    public static ImmutableArray<Fuel> All { get; } = [Electricity, NaturalGas, HeatingOil, Propane, Wood];

    private static Provenance Eia(string what) => new(Trust.Seen, $"{what}, United States Energy Information Administration");

    private static Provenance Extension(string what) => new(Trust.Seen, $"{what}, University of Massachusetts Extension table");

    private static Provenance Memory(string what) => new(Trust.Memory, $"{what}, extension energy publications, from memory");
}
