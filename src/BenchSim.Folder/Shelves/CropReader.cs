using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Library;
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
    private static readonly ImmutableArray<string> s_neededColumns =
    [
        .. CropFields.Table.Fields.Where(field => CropFields.IsSourced(field.Name) && !field.Kind.TakesNone).Select(field => field.Name),
    ];

    private readonly FinishChecks _spaces = new(cells, site);

    /// <summary>Reads a row; null when it had a fault.</summary>
    public Crop? Read(ShelfRow row)
    {
        row = WithUsual(row);
        var before = cells.Faults.Count;
        var missing = s_neededColumns.Where(column => row[column].IsBlank).ToArray();
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
        _spaces.CheckSpaces(row["benches"], draft.Benches, SpaceKind.Bench);
        _spaces.CheckSpaces(row["mats"], draft.Mats, SpaceKind.Mat);
        _spaces.Check(column => row[column], draft.Finish, !draft.Finish.IsEmpty);
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
                TrayId = trays.Meant(draft.TrayId),
                Benches = site.SpacesMeant(draft.Benches),
                Mats = site.SpacesMeant(draft.Mats),
                Finish = site.SpacesMeant(draft.Finish),
                GrowthDays = GrowthDays(draft),
                Sources = row.Sources(CropFields.IsSourced),
            };
    }

    // How far losses come in lumps is known of no crop; a new one has what those of the library have, with their source.
    private static ShelfRow WithUsual(ShelfRow row)
    {
        const string column = CropFields.StandLossCorrelation;
        if (row.HasNoLender || !row[column].IsBlank)
        {
            return row;
        }

        var usual = new Cell(Crop.UsualStandLossCorrelation.ToString(CultureInfo.InvariantCulture), row.Place, column, UnitSystem.Metric);
        var source = BuiltInLibrary.Crops[0].Sources[column];
        return row with { Cells = new(row.Cells, StringComparer.Ordinal) { [column] = new ShelfCell(usual, source) } };
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

    private static string Hint(string? near, string otherwise) => near is null ? otherwise : $"did you mean {Words.Quote(near)}";

    /// <summary>
    /// Days from emergence to field size at the reference temperature, without hardening: what is left of days_to_ready when the days to
    /// median emergence at germinate_at (docs/model.md section 4) and the nights of hardening are taken off where it counts them.
    /// </summary>
    private static double GrowthDays(Crop crop)
    {
        var written = crop.DaysToReady!;
        var emergence = written.FromSowing ? crop.EmergeHeat / EmergenceRate.Of(crop, crop.GerminateAtC) : 0;
        return written.Days - emergence - (written.WithHardening ? crop.HardeningNights : 0);
    }
}
