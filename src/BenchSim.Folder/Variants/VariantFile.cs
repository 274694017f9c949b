using BenchSim.Folder.Faults;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Variants;

/// <summary>What a variant file says, still as text with places: an overlay on the site, the crops and the plan.</summary>
internal sealed record VariantFile
{
    /// <summary>Sections of site.toml it gives, with just the keys it gives.</summary>
    public required TomlTable Site { get; init; }

    /// <summary>False when its grammar was broken, so that a key that is missing may only be unreadable.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>Ids of houses and spaces to take away, in the order of the file.</summary>
    public IReadOnlyList<TomlScalar> Removed { get; init; } = [];

    /// <summary>Whether it is planned anew.</summary>
    public bool IsPlannedAnew { get; init; }

    /// <summary>Cells over those of crops.csv, by crop.</summary>
    public IReadOnlyList<(string Crop, TomlTable Cells)> Crops { get; init; } = [];

    /// <summary>Changes of the plan, in the order of the file.</summary>
    public IReadOnlyList<TomlTable> Plan { get; init; } = [];

    /// <summary>The table [invest]; null when there is none.</summary>
    public TomlTable? Invest { get; init; }

    /// <summary>Both as one: this one first, another one over it.</summary>
    /// <param name="over">The other.</param>
    /// <param name="faults">Takes faults of what is put together.</param>
    public VariantFile Under(VariantFile over, FaultList faults) =>
        new()
        {
            Site = new SiteOverlay(over, faults).Over(Site),
            IsWhole = IsWhole && over.IsWhole,
            Removed = [.. Removed, .. over.Removed],
            IsPlannedAnew = IsPlannedAnew || over.IsPlannedAnew,
            Crops = [.. Crops, .. over.Crops],
            Plan = [.. Plan, .. over.Plan],
            Invest = over.Invest ?? Invest,
        };

    /// <summary>Whether an id is taken away.</summary>
    public bool Removes(string id) => Removed.Any(each => string.Equals(each.Text, id, StringComparison.Ordinal));

    /// <summary>Where the first id is taken away; null when none is.</summary>
    public SourcePlace? RemovePlace => Removed.Count == 0 ? null : Removed[0].Place;
}
