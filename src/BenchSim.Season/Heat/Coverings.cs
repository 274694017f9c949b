using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>Built-in coverings (tests/Published/data/ucover.csv). Where a material has a value that was seen and one from memory, the
/// seen one is used.</summary>
public static class Coverings
{
    private const string Column = "greenhouse engineering column in a trade magazine (heat loss = U A dT)";
    private const string Makers = "greenhouse makers' association, reprinted by a trade page: single glass 88 %, double glass 77 %";
    private const string Course = "extension farm energy course on greenhouse glazing: twin-wall polycarbonate 78 to 82 %";
    private const string Film = "greenhouse engineering texts, from memory: new film 85 to 90 %, two layers 75 to 78 %";
    private const string Extension = "extension heating tables, from memory";

    /// <summary>All, in order of id.</summary>
    public static ImmutableArray<Covering> All { get; } =
    [
        new("concrete-block", "concrete block, 8 in", 2.896, Memory(Extension), 0, Derived("no light comes through")),
        new("concrete-poured", "poured concrete, 6 in", 4.259, Memory(Extension), 0, Derived("no light comes through")),
        new("double-glass", "double glass", 3.691, Memory(Extension), 0.77, Seen(Makers)),
        new("double-poly", "double polyethylene, inflated", 4.543, Seen(Column), 0.76, Memory(Film)),
        new("double-poly-curtain", "double polyethylene with a night curtain", 1.987, Memory(Extension), 0.76, Memory(Film)),
        new("double-poly-ir", "double polyethylene with infrared film", 2.839, Memory(Extension), 0.76, Memory(Film)),
        new(
            "double-poly-over-glass",
            "double polyethylene over glass",
            2.839,
            Memory(Extension),
            0.67,
            Memory("double film over glass: 0.76 x 0.88")
        ),
        new("foam-board", "foam board wall, 1 in", 1.022, Memory(Extension), 0, Derived("no light comes through")),
        new("glass", "single glass", 6.416, Memory("ASAE EP406 class of values, quoted second-hand"), 0.88, Seen(Makers)),
        new("polycarbonate", "double-wall polycarbonate", 3.975, Seen(Column), 0.8, Seen(Course)),
        new("single-poly", "single polyethylene", 7.098, Seen(Column), 0.87, Memory(Film)),
    ];

    private static Provenance Seen(string source) => new(Trust.Seen, source);

    private static Provenance Derived(string source) => new(Trust.Derived, source);

    private static Provenance Memory(string source) => new(Trust.Memory, source);
}
