using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Shelves;

/// <summary>Turns the rows of the crop shelf into crops.</summary>
internal sealed partial class CropReader(CellReader cells, Shelf trays, SiteDraft site)
{
    private const int MostNamed = 6;

    // Where none may be written, blank is an answer.
    private static readonly ImmutableArray<string> NeededColumns =
    [
        .. CropFields.Table.Fields.Where(field => CropFields.IsSourced(field.Name) && !field.Kind.TakesNone).Select(field => field.Name),
    ];

    /// <summary>Reads a row; null when it had a fault.</summary>
    public Crop? Read(ShelfRow row)
    {
        var before = cells.Faults.Count;
        var missing = NeededColumns.Where(column => row[column].IsBlank).ToArray();
        if (missing.Length > 0 && !row.HasNoLender)
        {
            var shown = missing.Length <= MostNamed ? missing : [.. missing.Take(MostNamed), $"{missing.Length - MostNamed} more"];
            cells.Faults.Add(
                row.Place,
                $"the new crop {Words.Quote(row.Id)} lacks {Words.List(shown)}",
                "fill these in, or name a related crop in the column like to borrow them from"
            );
        }

        var draft = row.Read(CropFields.Table, CropFields.Nothing with { Id = row.Id, Name = row.Id }, cells);
        CheckSpaces(row["benches"], draft.Benches, SpaceKind.Bench);
        CheckSpaces(row["mats"], draft.Mats, SpaceKind.Mat);
        CheckTray(row["tray"], draft.TrayId);
        CheckPairs(row);
        if (cells.Faults.Count == before && missing.Length == 0)
        {
            CheckGrowth(row, draft);
        }

        return cells.Faults.Count > before || missing.Length > 0
            ? null
            : draft with
            {
                GrowthDays = GrowthDays(draft),
                Sources = row.Sources(CropFields.IsSourced),
            };
    }

    private void CheckTray(Cell cell, string id)
    {
        if (id.Length > 0 && trays.IsWhole && trays.Find(id) is null)
        {
            cells.Faults.Add(
                cell.Place,
                $"there is no tray type {Words.Quote(id)}",
                Hint(trays.Nearest(id), "name one of the built-in library or of trays.csv")
            );
        }
    }

    private void CheckSpaces(Cell cell, ImmutableArray<string> ids, SpaceKind kind)
    {
        if (site.SpaceIds.Count == 0)
        {
            // The spaces could not be read; that is said elsewhere.
            return;
        }

        var word = SpaceFields.Word[kind];
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var id in ids)
        {
            if (!site.SpaceIds.TryGetValue(id, out var found))
            {
                var near = Spelling.Nearest(id, site.SpaceIds.Where(pair => pair.Value == kind).Select(pair => pair.Key));
                cells.Faults.Add(cell.Place, $"there is no space {Words.Quote(id)}", Hint(near, $"name a {word} of site.toml"));
            }
            else if (found is not null && found != kind)
            {
                cells.Faults.Add(cell.Place, $"{Words.Quote(id)} is not a {word}", $"name only spaces of kind = \"{word}\" in {cell.Name}");
            }
            else if (!seen.Add(id))
            {
                cells.Refuse(cell, $"names {Words.Quote(id)} a second time", "name each space once");
            }
        }
    }

    private static string Hint(string? near, string otherwise) => near is null ? otherwise : $"did you mean {Words.Quote(near)}";

    /// <summary>
    /// Days from emergence to field size at the reference temperature, without hardening: what is left of days_to_ready when the days to
    /// median emergence at germinate_at (docs/model.md section 4) and the nights of hardening are taken off where it counts them.
    /// </summary>
    private static double GrowthDays(Crop crop)
    {
        var written = crop.DaysToReady!;
        var emergence = written.FromSowing
            ? crop.EmergeHeat / EmergenceRate.At(crop.GerminateAtC, crop.EmergeBaseC, crop.EmergeOptimumC, crop.EmergeCeilingC)
            : 0;
        return written.Days - emergence - (written.WithHardening ? crop.HardeningNights : 0);
    }
}
