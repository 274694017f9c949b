using System.Collections.Immutable;

namespace BenchSim.Folder.Library;

/// <summary>
/// The crops and tray types that come with the program. Each list is read once, on first use, from the tables beside this file;
/// docs/sources.md says in plain words where the values come from.
/// </summary>
public static class BuiltInLibrary
{
    private static readonly Lazy<ImmutableArray<LibraryRow>> s_lazyCrops = new(() => LibraryTables.Read("crops.csv", "crop_sources.csv"));
    private static readonly Lazy<ImmutableArray<LibraryRow>> s_lazyTrays = new(() => LibraryTables.Read("trays.csv", "tray_sources.csv"));

    /// <summary>The crops, in the order of the table: relatives beside each other.</summary>
    public static ImmutableArray<LibraryRow> Crops => s_lazyCrops.Value;

    /// <summary>The tray types: cell trays from the largest cell to the smallest, then the open flat.</summary>
    public static ImmutableArray<LibraryRow> Trays => s_lazyTrays.Value;
}
