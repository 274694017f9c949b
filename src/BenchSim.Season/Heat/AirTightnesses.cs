using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>Built-in ranges of air changes (tests/Published/data/ucover.csv): a classic table of ASAE EP406 and extension bulletins, from
/// memory.</summary>
public static class AirTightnesses
{
    private static readonly Provenance s_table = new(
        Trust.Memory,
        "classic table of ASAE EP406, NRAES-33 and extension bulletins, from memory"
    );

    /// <summary>All, tightest first.</summary>
    public static ImmutableArray<AirTightness> All { get; } =
    [
        new("new-film", "new, double plastic film", 0.5, 1, s_table),
        new("new-rigid", "new, glass or rigid sheets", 0.75, 1.5, s_table),
        new("old-kept", "old glass, well kept", 1, 2, s_table),
        new("old-poor", "old glass, poor", 2, 4, s_table),
    ];

    /// <summary>The tightness of an id; null when there is none.</summary>
    /// <param name="id">Id.</param>
    public static AirTightness? Find(string id) =>
        All.FirstOrDefault(tightness => string.Equals(tightness.Id, id, StringComparison.Ordinal));
}
