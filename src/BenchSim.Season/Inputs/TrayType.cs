using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>A kind of tray: a cell tray, or an open flat for dense sowing.</summary>
public sealed record TrayType
{
    /// <summary>Id, as written in the plan.</summary>
    public required string Id { get; init; }

    /// <summary>Name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>Cells a tray; 0 for an open flat.</summary>
    public required int Cells { get; init; }

    /// <summary>Seeds sown in one open flat when the plan does not say; 0 for a cell tray.</summary>
    public int SeedsPerFlat { get; init; }

    /// <summary>Potting mix that fills one tray, settled, litres: the volume of its cells.</summary>
    public double MediumLitres { get; init; }

    /// <summary>Places one tray takes, 1 or more.</summary>
    public int PlacesEach { get; init; } = 1;

    /// <summary>Where each value comes from, by column name of trays.csv.</summary>
    public ImmutableSortedDictionary<string, Provenance> Sources { get; init; } = ImmutableSortedDictionary<string, Provenance>.Empty;

    /// <summary>True for an open flat.</summary>
    public bool IsFlat => Cells == 0;
}
