using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Shelves;

/// <summary>Turns the rows of the crop shelf into crops.</summary>
internal sealed partial class CropReader(CellReader cells, Shelf trays, SiteDraft site)
{
    private static readonly (string Word, Hardiness Value)[] HardinessWords =
    [
        ("hardy", Hardiness.Hardy),
        ("half-hardy", Hardiness.HalfHardy),
        ("tender", Hardiness.Tender),
        ("very tender", Hardiness.VeryTender),
    ];

    private static readonly (string Word, bool FromSowing)[] CountWords = [("sowing", true), ("emergence", false)];

    private const int MostNamed = 6;

    // Blank is an answer in these.
    private static readonly string[] MayBeBlank =
    [
        "id",
        "name",
        "like",
        "germination_curve",
        "max_mat",
        "min_night",
        "benches",
        "mats",
        "harvest_after_days",
        "harvest_days",
    ];

    private static readonly ImmutableArray<string> NeededColumns =
    [
        .. FolderReference.ColumnsOf(FolderReference.CropFile).Where(column => !MayBeBlank.Contains(column, StringComparer.Ordinal)),
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

        var draft = ReadCells(row);
        CheckPairs(row);
        if (cells.Faults.Count == before && missing.Length == 0)
        {
            CheckGrowth(row, draft);
        }

        return cells.Faults.Count > before || missing.Length > 0 ? null : draft with { GrowthDays = GrowthDays(draft) };
    }

    // Values that could not be read are 0 here; the crop is then thrown away.
    private Crop ReadCells(ShelfRow row) =>
        new()
        {
            Id = row.Id,
            Name = cells.Name(row["name"]) ?? row.Id,
            Hardiness = cells.Choice(row["hardiness"], HardinessWords) ?? default,
            EmergeBaseC = Temperature(row, "emerge_base"),
            EmergeOptimumC = Temperature(row, "emerge_optimum"),
            EmergeCeilingC = Temperature(row, "emerge_ceiling"),
            EmergeHeat = cells.Number(row["emerge_heat"], 0.1, 10_000) ?? 0,
            EmergeSigma = cells.Number(row["emerge_sigma"], 0, 2) ?? 0,
            EmergeCv = cells.Number(row["emerge_cv"], 0, 2) ?? 0,
            GerminationCurve = Curve(row["germination_curve"]),
            GerminateAtC = Temperature(row, "germinate_at"),
            BottomHeat = cells.YesNo(row["bottom_heat"]) ?? default,
            MaxMatC = cells.Temperature(row["max_mat"]),
            LeaveMatAt = cells.Fraction(row["leave_mat_at"], aboveNone: true, belowAll: true) ?? 0,
            EmergeGiveUpDays = Whole(row, "emerge_give_up_days", 1, 365),
            Germination = cells.Fraction(row["germination"], aboveNone: true) ?? 0,
            SeedsPerCell = Whole(row, "seeds_per_cell", 1, 100),
            KeepPerCell = Whole(row, "keep_per_cell", 1, 100),
            StandLoss = cells.Fraction(row["stand_loss"], belowAll: true) ?? 0,
            GrowthBaseC = Temperature(row, "growth_base"),
            GrowthCapC = Temperature(row, "growth_cap"),
            ReferenceC = Temperature(row, "reference"),
            DaysToReady = new(
                cells.Number(row["days_to_ready"], 0.1, 365) ?? 0,
                cells.Choice(row["counted_from"], CountWords) ?? false,
                cells.YesNo(row["includes_hardening"]) ?? false
            ),
            GrowthDays = 0,
            GrowthCv = cells.Number(row["growth_cv"], 0, 2) ?? 0,
            PotUpDays = cells.Number(row["pot_up_days"], 0, 365) ?? 0,
            PotUpCheckDays = cells.Number(row["pot_up_check_days"], 0, 100) ?? 0,
            PotUpLoss = cells.Fraction(row["pot_up_loss"], belowAll: true) ?? 0,
            MinNightC = cells.Temperature(row["min_night"]),
            Benches = SpaceIds(row["benches"], SpaceKind.Bench),
            Mats = SpaceIds(row["mats"], SpaceKind.Mat),
            HardeningNights = Whole(row, "hardening_nights", 0, 100),
            HardenAboveC = Temperature(row, "harden_above"),
            DamageBelowC = Temperature(row, "damage_below"),
            FieldAboveC = Temperature(row, "field_above"),
            HoldDays = Whole(row, "hold_days", 0, 365),
            DiscardAfterDays = Whole(row, "discard_after_days", 1, 365),
            FlatHoldDays = Whole(row, "flat_hold_days", 0, 365),
            FlatDiscardDays = Whole(row, "flat_discard_days", 1, 365),
            HarvestAfterDays = cells.Whole(row["harvest_after_days"], 0, 365),
            HarvestDays = cells.Whole(row["harvest_days"], 1, 365),
            TrayId = TrayId(row["tray"]),
            Sources = row
                .Cells.Where(pair => pair.Key is not ("id" or "name" or "like"))
                .ToImmutableSortedDictionary(pair => pair.Key, pair => pair.Value.Source, StringComparer.Ordinal),
        };

    private double Temperature(ShelfRow row, string column) => cells.Temperature(row[column]) ?? 0;

    private int Whole(ShelfRow row, string column, int least, int most) => cells.Whole(row[column], least, most) ?? 0;

    private string TrayId(Cell cell)
    {
        if (cells.Name(cell) is { } id && trays.IsWhole && trays.Find(id) is null)
        {
            cells.Faults.Add(
                cell.Place,
                $"there is no tray type {Words.Quote(id)}",
                Hint(trays.Nearest(id), "name one of the built-in library or of trays.csv")
            );
        }

        return cell.Text;
    }

    private ImmutableArray<string> SpaceIds(Cell cell, SpaceKind kind)
    {
        var word = kind == SpaceKind.Mat ? "mat" : "bench";
        var ids = ImmutableArray.CreateBuilder<string>();
        foreach (var part in cell.Text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (cells.Name(cell with { Text = part }) is not { } id)
            {
                continue;
            }

            if (site.SpaceIds.Count == 0)
            {
                // The spaces could not be read; that is said elsewhere.
                continue;
            }

            if (!site.SpaceIds.TryGetValue(id, out var found))
            {
                var near = Spelling.Nearest(id, site.SpaceIds.Where(pair => pair.Value == kind).Select(pair => pair.Key));
                cells.Faults.Add(cell.Place, $"there is no space {Words.Quote(id)}", Hint(near, $"name a {word} of site.toml"));
            }
            else if (found is not null && found != kind)
            {
                cells.Faults.Add(cell.Place, $"{Words.Quote(id)} is not a {word}", $"name only spaces of kind = \"{word}\" in {cell.Name}");
            }
            else if (ids.Contains(id))
            {
                cells.Refuse(cell, $"names {Words.Quote(id)} a second time", "name each space once");
            }
            else
            {
                ids.Add(id);
            }
        }

        return ids.ToImmutable();
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
