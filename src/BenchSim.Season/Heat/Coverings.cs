using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>Built-in coverings (tests/Published/data/ucover.csv). Where a material has a value that was seen and one from memory, the
/// seen one is used.</summary>
public static class Coverings
{
    private const string Column = "greenhouse engineering column in a trade magazine (heat loss = U A dT)";
    private const string Extension = "extension heating tables, from memory";

    /// <summary>All, in order of id.</summary>
    public static ImmutableArray<Covering> All { get; } =
    [
        new("concrete-block", "concrete block, 8 in", 2.896, Memory(Extension)),
        new("concrete-poured", "poured concrete, 6 in", 4.259, Memory(Extension)),
        new("double-glass", "double glass", 3.691, Memory(Extension)),
        new("double-poly", "double polyethylene, inflated", 4.543, Seen(Column)),
        new("double-poly-curtain", "double polyethylene with a night curtain", 1.987, Memory(Extension)),
        new("double-poly-ir", "double polyethylene with infrared film", 2.839, Memory(Extension)),
        new("double-poly-over-glass", "double polyethylene over glass", 2.839, Memory(Extension)),
        new("foam-board", "foam board wall, 1 in", 1.022, Memory(Extension)),
        new("glass", "single glass", 6.416, Memory("ASAE EP406 class of values, quoted second-hand")),
        new("polycarbonate", "double-wall polycarbonate", 3.975, Seen(Column)),
        new("single-poly", "single polyethylene", 7.098, Seen(Column)),
    ];

    /// <summary>The covering of an id; null when there is none.</summary>
    /// <param name="id">Id.</param>
    public static Covering? Find(string id) => All.FirstOrDefault(covering => string.Equals(covering.Id, id, StringComparison.Ordinal));

    private static Provenance Seen(string source) => new(Trust.Seen, source);

    private static Provenance Memory(string source) => new(Trust.Memory, source);
}
