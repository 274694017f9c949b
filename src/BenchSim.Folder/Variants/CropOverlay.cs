using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Library;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Variants;

/// <summary>Lays the [crops.ID] tables of a variant over the rows of crops.csv.</summary>
internal sealed class CropOverlay(VariantFile variant, UnitSystem units, FaultList faults)
{
    private static readonly CsvColumns s_columns = new(CropFields.Table);

    /// <summary>The rows with the variant's cells in them; a crop that has no row gets one.</summary>
    /// <param name="rows">Rows of crops.csv; empty when there is no such file.</param>
    public List<CsvRow> Lay(IReadOnlyList<CsvRow> rows)
    {
        var laid = rows.ToList();
        foreach (var (crop, table) in variant.Crops)
        {
            var cells = new List<Cell>();
            foreach (var (key, entry) in table.Entries)
            {
                if (!VariantFields.CropColumns.Contains(key, StringComparer.Ordinal))
                {
                    OverlayCells.Refuse(key, entry.KeyPlace, $"[crops.{crop}]", VariantFields.CropColumns, CropFields.Table, faults);
                }
                else if (OverlayCells.Of(key, entry.Value, units, faults) is { } cell)
                {
                    cells.Add(cell);
                }
            }

            var id = new Cell(crop, table.Place, "id", units);
            var at = laid.FindIndex(row => Spelling.IsSame(row["id"].Text, crop));
            if (at >= 0)
            {
                laid[at] = laid[at].With(cells);
            }
            else if (IsKnown(id, cells, laid))
            {
                laid.Add(new CsvRow(table.Place.Line, s_columns).With([id, .. cells]));
            }
        }

        RefuseRemoved(laid);
        return laid;
    }

    // A slip in the name of a crop would make a new crop that lacks everything.
    private bool IsKnown(Cell id, List<Cell> cells, List<CsvRow> rows)
    {
        if (cells.Exists(cell => cell.Name is "like") || BuiltInLibrary.Crops.Any(row => Spelling.IsSame(row.Id, id.Text)))
        {
            return true;
        }

        var near = Spelling.Nearest(id.Text, BuiltInLibrary.Crops.Select(row => row.Id).Concat(rows.Select(row => row["id"].Text)));
        faults.Add(
            id.Place,
            $"there is no crop {Words.Quote(id.Text)}",
            near is null
                ? "name one of the built-in library or of crops.csv, or a related crop in the key like"
                : $"did you mean {Words.Quote(near)}"
        );
        return false;
    }

    private void RefuseRemoved(List<CsvRow> rows)
    {
        foreach (var removed in variant.Removed)
        {
            var users = rows.Where(row =>
                    Names(row["benches"], removed.Text) || Names(row["mats"], removed.Text) || Names(row["finish"], removed.Text)
                )
                .Select(row => row["id"].Text)
                .ToArray();
            if (users.Length > 0)
            {
                var shown = users.Length <= 3 ? users : [.. users.Take(2), $"{users.Length - 2} more"];
                faults.Add(
                    removed.Place,
                    $"the space {Words.Quote(removed.Text)} is removed, but {FileNames.Crops} lists it for {Words.List(shown)}",
                    "give these crops other benches and mats in [crops], or keep the space"
                );
            }
        }
    }

    private static bool Names(Cell cell, string id) =>
        cell.Text.Split('|', StringSplitOptions.TrimEntries).Contains(id, StringComparer.Ordinal);
}
