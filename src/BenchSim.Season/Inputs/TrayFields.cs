using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>The columns of trays.csv.</summary>
public static class TrayFields
{
    /// <summary>Name of the file.</summary>
    public const string File = "trays.csv";

    /// <summary>A tray type of which nothing is said.</summary>
    public static TrayType Nothing { get; } =
        new()
        {
            Id = "",
            Name = "",
            Cells = 0,
        };

    /// <summary>Whether a column is a value of the tray type, which has a source: not its id or its name.</summary>
    public static bool IsSourced(string column) => column is not ("id" or "name");

    /// <summary>The columns, in the order of the reference.</summary>
    public static FieldTable<TrayType> Table { get; } =
        FieldTable
            .Of(File, File, Nothing)
            .Key("id", Kinds.Name, tray => tray.Id)
            .Means("Tray type. An id of the built-in library overrides just the cells that are filled.")
            .Required("name the tray type of this row")
            .Key("name", Kinds.Title, tray => tray.Name, (tray, name) => tray with { Name = name })
            .Means("Name shown to people.", leftOut: "the id")
            .Key("cells", new WholeKind(0, 5000, "cell", isBare: true), tray => tray.Cells, (tray, cells) => tray with { Cells = cells })
            .Means("Cells a tray; 0 for an open flat.", leftOut: "required for a new type")
            .Key(
                "seeds_per_flat",
                new WholeKind(1, 100_000, "seed", isBare: true),
                tray => tray.SeedsPerFlat,
                (tray, seeds) => tray with { SeedsPerFlat = seeds }
            )
            .Means("Seeds sown in one open flat.", leftOut: "required for a new open flat")
            .Key(
                "medium_litres",
                new NumberKind(0, 1000, "litres", "litres", "litres"),
                tray => tray.MediumLitres,
                (tray, litres) => tray with { MediumLitres = litres }
            )
            .Means("Potting mix that fills one tray, settled: the volume of its cells.", leftOut: "required for a new type")
            .Key(
                "places_each",
                new WholeKind(1, 100, "place", isBare: true),
                tray => tray.PlacesEach,
                (tray, places) => tray with { PlacesEach = places }
            )
            .Means("Places one tray takes.", Why.Ours)
            .Table();
}
