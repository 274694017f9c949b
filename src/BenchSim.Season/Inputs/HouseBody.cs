using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The size of a house and what it is covered with: what it loses, and what the sun brings.</summary>
public sealed record HouseBody
{
    /// <summary>Shell, from the dimensions.</summary>
    public required HouseShell Shell { get; init; }

    /// <summary>Name of the covering shown to people.</summary>
    public required string Covering { get; init; }

    /// <summary>U value of the covering, watts a square metre and kelvin, above 0.</summary>
    public required double UValue { get; init; }

    /// <summary>Changes of the air an hour, 0 or more.</summary>
    public required double AirChanges { get; init; }

    /// <summary>Share of the sun that comes through covering and frame, 0 to 1.</summary>
    public required double Transmission { get; init; }

    /// <summary>Share of that which warms air and ground and is not spent on drying leaves, 0 to 1.</summary>
    public double SunShare { get; init; } = HouseSun.UsualShare;

    /// <summary>Where each value comes from, by key of [[house]], those of the heater too.</summary>
    public ImmutableSortedDictionary<string, Provenance> Sources { get; init; } = ImmutableSortedDictionary<string, Provenance>.Empty;

    /// <summary>The keys as they are written, those of the heater too.</summary>
    public HeatKeys Written { get; init; } = new();

    /// <summary>Heat lost for each kelvin.</summary>
    public HeatLoss Loss => HeatLoss.Of(Shell, UValue, AirChanges);

    /// <summary>What the sun does in it.</summary>
    /// <param name="ventedK">Rise over outdoors that open vents leave in full sun, kelvin.</param>
    public HouseSun SunWith(double ventedK) => HouseSun.Of(Loss, Shell.FloorM2, Transmission, SunShare, ventedK);
}
