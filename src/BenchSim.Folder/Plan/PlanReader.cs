using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Shelves;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
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
    private static readonly string[] s_potUpColumns = ["flat", "flats", "seeds_per_flat"];

    /// <summary>Splits the file into rows.</summary>
    /// <param name="file">Text of plan.csv.</param>
    public IReadOnlyList<CsvRow> Split(FileText file)
    {
        var table = CsvTable.Read(file, PlanFields.Table, CsvTable.MostRows, cells, site.Units);
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

        return table.Rows;
    }

    /// <summary>Reads a row.</summary>
    public PlanRow Read(CsvRow row)
    {
        var line = row.Read(PlanFields.Table, PlanFields.Nothing, cells);
        var crop = FindCrop(row["crop"], line.Order.CropId);
        CheckSuccession(row, line);
        new FinishChecks(cells, site).Check(
            column => row[column],
            line.Order.Finish,
            !line.Order.Finish.IsEmpty || crop is null || !crop.Finish.IsEmpty
        );
        line = line with
        {
            Order = line.Order with { CropId = crop?.Id ?? line.Order.CropId, Finish = site.SpacesMeant(line.Order.Finish) },
        };
        line = line is { Times: > 1, EveryDays: > 0 } ? line : line with { EveryDays = 0, Times = 1 };
        var germination = line.Order.Germination > 0 ? line.Order.Germination : crop?.Germination ?? 0;
        var read = new PlanRow(
            row,
            row.Has("id") ? row["id"].Place : new SourcePlace(row.Cells.FirstOrDefault().Place.File ?? FileNames.Plan, row.Line, 1),
            line with
            {
                Order = line.Order with { Germination = germination, TakesCropGermination = line.Order.Germination <= 0 },
            }
        )
        {
            Crop = crop,
        };
        read = FindTrays(read);
        CheckDates(read);
        return read;
    }

    private PlanRow FindTrays(PlanRow read)
    {
        var (row, order) = (read.Row, read.Order);
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

        if (order.Method == Method.Direct)
        {
            foreach (var column in s_potUpColumns.Where(column => !row[column].IsBlank))
            {
                cells.Refuse(row[column], "is only for the method pot up", "write pot up in the column method, or leave this empty");
            }

            var seeds = order.SeedsPerCell > 0 ? order.SeedsPerCell : read.Crop?.SeedsPerCell ?? 1;
            return Of(read, order with { TrayId = tray?.Id ?? "", SeedsPerCell = seeds }) with { Tray = tray };
        }

        if (!row["seeds_per_cell"].IsBlank)
        {
            cells.Refuse(
                row["seeds_per_cell"],
                "is only for the method direct: potting up puts one seedling in a cell",
                "leave it empty, or use seeds_per_flat"
            );
        }

        var flat = FindFlat(row, read.Place);
        return Of(
            read,
            order with
            {
                TrayId = tray?.Id ?? "",
                FlatId = flat?.Id,
                SeedsPerCell = 1,
                SeedsPerFlat = order.SeedsPerFlat > 0 ? order.SeedsPerFlat : flat?.SeedsPerFlat ?? 0,
            }
        ) with
        {
            Tray = tray,
            Flat = flat,
        };
    }

    private static PlanRow Of(PlanRow read, BatchOrder order) => read with { Line = read.Line with { Order = order } };

    private TrayType? FindFlat(CsvRow row, SourcePlace rowPlace)
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

    private void CheckSuccession(CsvRow row, PlanLine line)
    {
        if (line.Times > 1 && row["every_days"].IsBlank)
        {
            cells.Refuse(
                row["times"],
                $"is {line.Times}, but every_days is empty",
                "write the days from one succession to the next in every_days"
            );
        }

        if (line.EveryDays > 0 && row["times"].IsBlank)
        {
            cells.Refuse(row["every_days"], $"is {line.EveryDays}, but times is empty", "write the number of successions in times");
        }
    }

    private void CheckDates(PlanRow read)
    {
        var (row, order) = (read.Row, read.Order);
        var (sow, setOut) = (row["sow"], row["set_out"]);
        if (sow.IsBlank && setOut.IsBlank && (row.Has("sow") || row.Has("set_out")))
        {
            var place = row.Has("sow") ? sow.Place : setOut.Place;
            cells.Faults.Add(place, "this batch has neither a sow nor a set_out date", "write one of them, or both");
        }

        CheckSeason(sow, order.Sow, read.Line);
        CheckSeason(setOut, order.SetOut, read.Line);
        if (order.SetOut <= order.Sow)
        {
            cells.Refuse(
                setOut,
                $"is {Words.Date(order.SetOut.Value)}, not after the sow date {Words.Date(order.Sow.Value)}",
                "write a later date"
            );
        }

        var sown = order.Sow ?? order.SetOut;
        if (order.TestedOn > sown)
        {
            var name = order.Sow is null ? "set_out" : "sow";
            cells.Refuse(
                row["tested_on"],
                $"is {Words.Date(order.TestedOn.Value)}, after {name}, which is {Words.Date(sown.Value)}",
                "write the date of a test made before sowing"
            );
        }
    }

    private void CheckSeason(Cell cell, DateOnly? first, PlanLine line)
    {
        if (first is not { } date || site.Window is not { } season)
        {
            return;
        }

        var last = date.AddDays(line.EveryDays * (line.Times - 1));
        if (date < season.Opens || date > season.Closes)
        {
            cells.Refuse(cell, $"is {Words.Date(date)}, outside the season", SpaceReader.SeasonWords(season));
        }
        else if (last > season.Closes)
        {
            cells.Refuse(
                cell,
                $"of the last of {line.Times} successions is {Words.Date(last)}, outside the season",
                SpaceReader.SeasonWords(season)
            );
        }
    }

    private Crop? FindCrop(Cell cell, string id)
    {
        if (id.Length == 0 || choices.Crops.MayHave(id))
        {
            return id.Length == 0 ? null : choices.Crops.Find(id);
        }

        var near = choices.Crops.Nearest(id);
        cells.Faults.Add(
            cell.Place,
            $"there is no crop {Words.Quote(id)}",
            near is null
                ? "name one of the built-in library (docs/library.md lists them), or add it to crops.csv with a related crop in the "
                    + "column like"
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
}
