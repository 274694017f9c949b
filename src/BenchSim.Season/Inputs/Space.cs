using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>What kind of space it is.</summary>
public enum SpaceKind
{
    /// <summary>Heat mat: bottom heat at a set temperature.</summary>
    Mat,

    /// <summary>Bench in a house.</summary>
    Bench,

    /// <summary>Hardening table, indoors or out.</summary>
    Table,
}

/// <summary>Somewhere trays stand, in whole places.</summary>
public sealed record Space
{
    /// <summary>Id, unique among houses and spaces.</summary>
    public required string Id { get; init; }

    /// <summary>Name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>Heat mat, bench or hardening table.</summary>
    public required SpaceKind Kind { get; init; }

    /// <summary>
    /// Whether it is a germination chamber: closed and dark, at a temperature of its own, in no house. It takes the part of a heat mat, but
    /// nothing grows in it once it is up.
    /// </summary>
    public bool IsChamber { get; init; }

    /// <summary>The house it stands in; null outdoors.</summary>
    public string? HouseId { get; init; }

    /// <summary>Places on the first day.</summary>
    public required int Places { get; init; }

    /// <summary>Later changes of the number of places, in order of date.</summary>
    public ImmutableArray<PlacesFrom> Changes { get; init; } = [];

    /// <summary>Set temperature of the medium on a mat, degrees Celsius; null elsewhere.</summary>
    public double? MatC { get; init; }

    /// <summary>What <see cref="MatC"/> was on the days of a season that are over, where it has been changed since; null for the same.
    /// </summary>
    public MatWas? MatWas { get; init; }

    /// <summary>Electricity of the mats; null elsewhere, or where it is not given.</summary>
    public MatPower? Power { get; init; }

    /// <summary>Extra places in the aisle that the relief "aisle" may use, 0 or more.</summary>
    public int AislePlaces { get; init; }

    /// <summary>Places of one unit, such as a mat or a bench: the step by which the space can grow; null where it is not given.</summary>
    public int? UnitPlaces { get; init; }

    /// <summary>Length and width where the places were worked out from them; no sides where they were given.</summary>
    public BenchSize Size { get; init; } = new(null, null, 0.95);

    /// <summary>How the places were worked out, in words ("given", or bench length by width); shown by check.</summary>
    public string PlacesNote { get; init; } = "given";
}

/// <summary>The set temperature of a mat on the first days of a season.</summary>
/// <param name="MatC">Set temperature, degrees Celsius.</param>
/// <param name="Until">First day of the season, 0 its first, on which it is set so no more.</param>
public sealed record MatWas(double MatC, int Until);

/// <summary>A number of places from a date on.</summary>
/// <param name="From">First day on which the number holds.</param>
/// <param name="Places">Whole places, 0 or more.</param>
public readonly record struct PlacesFrom(DateOnly From, int Places);

/// <summary>The sides of a bench and how much of it is used.</summary>
/// <param name="LengthM">Length, metres; null where it is not given.</param>
/// <param name="WidthM">Width, metres; null where it is not given.</param>
/// <param name="Usable">Share of its whole trays that is used, above 0, at most 1.</param>
public sealed record BenchSize(double? LengthM, double? WidthM, double Usable);
