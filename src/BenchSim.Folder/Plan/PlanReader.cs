using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Shelves;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Folder.Variants;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>Crops and tray types that a plan may name.</summary>
/// <param name="Crops">Crops.</param>
/// <param name="Trays">Tray types.</param>
internal sealed record Choices(ShelfReading<Crop> Crops, ShelfReading<TrayType> Trays);

/// <summary>Reads the rows of plan.csv.</summary>
internal sealed class PlanReader(CellReader cells, SiteDraft site, Choices choices)
{
    private const int MostPlants = 10_000_000;
    private const int MostTrays = 100_000;
    private const int MostSeeds = 100_000;
    private const int MostTolerance = 60;

    // A thousand successions a year apart still end within the calendar.
    /// <summary>Most sowings of a row.</summary>
    public const int MostTimes = 1000;

    /// <summary>Most days from a sowing of a row to the next.</summary>
    public const int MostEveryDays = 365;

    private static readonly string[] PotUpColumns = ["flat", "flats", "seeds_per_flat"];

    private static readonly (string Word, Method Value)[] MethodWords =
    [
        ("direct", Method.Direct),
        ("pot up", Method.PotUp),
        ("pot-up", Method.PotUp),
        ("potup", Method.PotUp),
    ];

    /// <summary>Reads every row.</summary>
    /// <param name="file">Text of plan.csv.</param>
    /// <param name="variant">A variant to lay over it; null for none.</param>
    public List<PlanRow> Read(FileText file, VariantFile? variant = null)
    {
        var table = CsvTable.Read(
            file,
            FolderReference.ColumnsOf(FolderReference.PlanFile),
            FolderReference.RequiredColumnsOf(FolderReference.PlanFile),
            CsvTable.MostRows,
            cells.Faults,
            site.Units
        );
        if (table.Rows.Count == 0 && table.Header.Line > 0)
        {
            cells.Faults.Add(table.Header, "the plan has no rows", "add a line for each batch below the column names");
        }

        if (table.Header.Line > 0 && !table.Has("sow") && !table.Has("set_out"))
        {
            cells.Faults.Add(
                table.Header,
                "there is no column \"sow\" and no column \"set_out\"",
                "add one of them, or both, to the first line"
            );
        }

        var rows = variant is null ? table.Rows : new PlanOverlay(variant, site, cells).Lay(table.Rows);
        return [.. rows.Select(ReadRow)];
    }

    private PlanRow ReadRow(CsvRow row)
    {
        var id = cells.Name(Written(row, "id"));
        var cropId = cells.Name(Written(row, "crop"));
        var crop = FindCrop(row["crop"], cropId);
        var method = cells.Choice(row["method"], MethodWords, shown: 2) ?? Method.Direct;
        var (every, times) = ReadSuccession(row);
        var read = new PlanRow
        {
            Row = row,
            Place = row.Has("id") ? row["id"].Place : new SourcePlace(FolderReference.PlanFile, row.Line, 1),
            Id = id,
            Crop = crop,
            Grower = cells.Name(row["grower"]) ?? "site",
            Plants = cells.Whole(Written(row, "plants"), 1, MostPlants),
            Sow = cells.Date(row["sow"]),
            SetOut = cells.Date(row["set_out"]),
            EarlierDays = cells.Whole(row["earlier"], 0, MostTolerance) ?? 0,
            LaterDays = cells.Whole(row["later"], 0, MostTolerance) ?? 0,
            EveryDays = every,
            Times = times,
            Method = method,
            Trays = cells.Whole(row["trays"], 1, MostTrays),
            Germination = cells.Fraction(row["germination"], aboveNone: true) ?? crop?.Germination ?? 0,
            TestedOn = cells.Date(row["tested_on"]),
            Packet = cells.Name(row["packet"]),
            ThousandSeeds = cells.Number(row["thousand_seeds"], 0, 1_000_000),
            Note = row["note"].Text,
        };
        read = ReadTrays(row, read);
        CheckDates(read);
        return read;
    }

    private PlanRow ReadTrays(CsvRow row, PlanRow read)
    {
        var seedsPerCell = cells.Whole(row["seeds_per_cell"], 1, 100);
        var seedsPerFlat = cells.Whole(row["seeds_per_flat"], 1, MostSeeds);
        var flats = cells.Whole(row["flats"], 1, MostTrays);
        var tray = FindTray(row["tray"].IsBlank ? row["tray"] with { Text = read.Crop?.TrayId ?? "" } : row["tray"], row["crop"].Place);
        if (tray is { IsFlat: true })
        {
            cells.Refuse(
                row["tray"],
                $"is {Words.Quote(tray.Id)}, an open flat",
                "name a cell tray; a flat to sow dense in goes in the column flat, with method pot up"
            );
            tray = null;
        }

        if (read.Method == Method.Direct)
        {
            foreach (var column in PotUpColumns.Where(column => !row[column].IsBlank))
            {
                cells.Refuse(row[column], "is only for the method pot up", "write pot up in the column method, or leave this empty");
            }

            return read with
            {
                Tray = tray,
                SeedsPerCell = seedsPerCell ?? read.Crop?.SeedsPerCell ?? 1,
            };
        }

        if (!row["seeds_per_cell"].IsBlank)
        {
            cells.Refuse(
                row["seeds_per_cell"],
                "is only for the method direct: potting up puts one seedling in a cell",
                "leave it empty, or use seeds_per_flat"
            );
        }

        var flat = ReadFlat(row, read.Place);
        return read with { Tray = tray, Flat = flat, Flats = flats, SeedsPerFlat = seedsPerFlat ?? flat?.SeedsPerFlat ?? 0 };
    }

    private TrayType? ReadFlat(CsvRow row, SourcePlace rowPlace)
    {
        var cell = row["flat"];
        if (cell.IsBlank)
        {
            cells.Faults.Add(
                row.Has("flat") ? cell.Place : rowPlace,
                "this batch is to be potted up but names no flat",
                "write the open flat it is sown in in the column flat"
            );
            return null;
        }

        if (FindTray(cell, cell.Place) is not { } flat || flat.IsFlat)
        {
            return FindTrayQuietly(cell);
        }

        cells.Refuse(cell, $"is {Words.Quote(flat.Id)}, a tray with {flat.Cells} cells", "name an open flat (a tray type with 0 cells)");
        return null;
    }

    private (int EveryDays, int Times) ReadSuccession(CsvRow row)
    {
        var every = cells.Whole(row["every_days"], 1, MostEveryDays);
        var times = cells.Whole(row["times"], 1, MostTimes);
        if (times > 1 && row["every_days"].IsBlank)
        {
            cells.Refuse(
                row["times"],
                $"is {times}, but every_days is empty",
                "write the days from one succession to the next in every_days"
            );
        }

        if (every is not null && row["times"].IsBlank)
        {
            cells.Refuse(row["every_days"], $"is {every}, but times is empty", "write the number of successions in times");
        }

        return times is > 1 && every is not null ? (every.Value, times.Value) : (0, 1);
    }

    private void CheckDates(PlanRow read)
    {
        var row = read.Row;
        var (sow, setOut) = (row["sow"], row["set_out"]);
        if (sow.IsBlank && setOut.IsBlank && (row.Has("sow") || row.Has("set_out")))
        {
            var place = row.Has("sow") ? sow.Place : setOut.Place;
            cells.Faults.Add(place, "this batch has neither a sow nor a set_out date", "write one of them, or both");
        }

        CheckSeason(sow, read.Sow, read);
        CheckSeason(setOut, read.SetOut, read);
        if (read.SetOut <= read.Sow)
        {
            cells.Refuse(
                setOut,
                $"is {Words.Date(read.SetOut.Value)}, not after the sow date {Words.Date(read.Sow.Value)}",
                "write a later date"
            );
        }

        var sown = read.Sow ?? read.SetOut;
        if (read.TestedOn > sown)
        {
            var name = read.Sow is null ? "set_out" : "sow";
            cells.Refuse(
                row["tested_on"],
                $"is {Words.Date(read.TestedOn.Value)}, after {name}, which is {Words.Date(sown.Value)}",
                "write the date of a test made before sowing"
            );
        }
    }

    private void CheckSeason(Cell cell, DateOnly? first, PlanRow read)
    {
        if (first is not { } date || site.Window is not { } season)
        {
            return;
        }

        var last = date.AddDays(read.EveryDays * (read.Times - 1));
        if (date < season.Opens || date > season.Closes)
        {
            cells.Refuse(cell, $"is {Words.Date(date)}, outside the season", SpaceReader.SeasonWords(season));
        }
        else if (last > season.Closes)
        {
            cells.Refuse(
                cell,
                $"of the last of {read.Times} successions is {Words.Date(last)}, outside the season",
                SpaceReader.SeasonWords(season)
            );
        }
    }

    private Crop? FindCrop(Cell cell, string? id)
    {
        if (id is null || choices.Crops.MayHave(id))
        {
            return id is null ? null : choices.Crops.Find(id);
        }

        var near = choices.Crops.Nearest(id);
        cells.Faults.Add(
            cell.Place,
            $"there is no crop {Words.Quote(id)}",
            near is null
                ? "name one of the built-in library (docs/library.md lists them), or add it to crops.csv with a related crop in the column like"
                : $"did you mean {Words.Quote(near)}"
        );
        return null;
    }

    private TrayType? FindTray(Cell cell, SourcePlace place)
    {
        if (cells.Name(cell) is not { } id || choices.Trays.MayHave(id))
        {
            return FindTrayQuietly(cell);
        }

        var near = choices.Trays.Nearest(id);
        cells.Faults.Add(
            cell.Place.File is null ? place : cell.Place,
            $"there is no tray type {Words.Quote(id)}",
            near is null
                ? "name one of the built-in library (docs/library.md lists them), or add it to trays.csv"
                : $"did you mean {Words.Quote(near)}"
        );
        return null;
    }

    private TrayType? FindTrayQuietly(Cell cell) => cell.IsBlank ? null : choices.Trays.Find(cell.Text);

    private Cell Written(CsvRow row, string column)
    {
        var cell = row[column];
        if (cell.IsBlank && row.Has(column))
        {
            cells.Refuse(
                cell,
                "is empty",
                column switch
                {
                    "id" => "give the batch a name of its own",
                    "crop" => "name the crop",
                    _ => "write how many plants the field wants",
                }
            );
        }

        return cell;
    }
}
