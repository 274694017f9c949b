using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Library;

/// <summary>
/// One row of the built-in library, as text, with the source of each cell. Columns are named as in crops.csv and trays.csv.
/// </summary>
/// <param name="Id">Id of the crop or tray type.</param>
/// <param name="Cells">The cell of every column of the file, by column name; empty where the cell is blank.</param>
/// <param name="Sources">Where each cell comes from, by column name: every cell that is not blank has one, except id and name.</param>
public sealed record LibraryRow(
    string Id,
    ImmutableSortedDictionary<string, string> Cells,
    ImmutableSortedDictionary<string, Provenance> Sources
);
