using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Editing;

/// <summary>Values of a crop that are to stand in crops.csv.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Name shown to people, by which a row may call it too.</param>
/// <param name="Cells">The values, by column.</param>
public sealed record CropValues(string Id, string Name, ImmutableSortedDictionary<string, string> Cells)
{
    /// <summary>
    /// Writes values into the text of crops.csv. A crop without a row gets one behind the others, a column that is not there stands behind
    /// the others too; every other character stays as it is.
    /// </summary>
    /// <param name="text">The text; null where there is no such file.</param>
    /// <param name="crops">The values.</param>
    public static Edit Write(string? text, IEnumerable<CropValues> crops)
    {
        ArgumentNullException.ThrowIfNull(crops);
        var edit = new Edit(text ?? Header(crops), null);
        foreach (var crop in crops)
        {
            var row = RowOf(edit.Text, crop);
            if (row < 0)
            {
                row = CsvEdit.Rows(edit.Text);
                edit = CsvEdit.Insert(
                    FileNames.Crops,
                    edit.Text,
                    row,
                    new Dictionary<string, string>(StringComparer.Ordinal) { ["id"] = crop.Id }
                );
            }

            foreach (var (column, value) in crop.InOrder())
            {
                edit = edit.Fault is null ? CsvEdit.Set(FileNames.Crops, edit.Text, row, column, value) : edit;
            }

            if (edit.Fault is not null)
            {
                return edit with { Text = text ?? "" };
            }
        }

        return edit;
    }

    private static string Header(IEnumerable<CropValues> crops)
    {
        var used = crops.SelectMany(crop => crop.Cells.Keys).ToHashSet(StringComparer.Ordinal);
        return string.Join(',', ["id", .. CropFields.Table.Names.Where(used.Contains)]) + "\n";
    }

    /// <summary>The text of a column in the row of a crop; null where there is no such row or column.</summary>
    /// <param name="text">The text of crops.csv.</param>
    /// <param name="id">Id of the crop.</param>
    /// <param name="name">Its name.</param>
    /// <param name="column">The column.</param>
    public static string? Cell(string text, string id, string name, string column)
    {
        var row = RowOf(text, new CropValues(id, name, ImmutableSortedDictionary<string, string>.Empty));
        return row < 0 ? null : CsvEdit.Cell(text, row, column);
    }

    // By the id, else by the name, as the reader finds it.
    private static int RowOf(string text, CropValues crop)
    {
        string[] ids = [.. Enumerable.Range(0, CsvEdit.Rows(text)).Select(row => CsvEdit.Cell(text, row, "id") ?? "")];
        var byId = Array.FindIndex(ids, id => Spelling.IsSame(id, crop.Id));
        return byId >= 0 ? byId : Array.FindIndex(ids, id => Spelling.IsSame(id, crop.Name));
    }

    private IEnumerable<(string Column, string Value)> InOrder() =>
        CropFields.Table.Names.Where(Cells.ContainsKey).Select(column => (column, Cells[column]));
}
