using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Shelves;

/// <content>What the values of a crop must be to one another.</content>
internal sealed partial class CropReader
{
    // Reads cells a second time without a word: a bad cell was reported already and has nothing to be compared with.
    private readonly CellReader _quiet = new(new FaultList());

    // Pairs are checked even where another cell of the row is bad, so that one pass shows all of it.
    private void CheckPairs(ShelfRow row)
    {
        Ordered(row, "emerge_base", "emerge_optimum", mayBeEqual: false);
        Ordered(row, "emerge_optimum", "emerge_plateau", mayBeEqual: true);
        Ordered(row, row["emerge_plateau"].IsBlank ? "emerge_optimum" : "emerge_plateau", "emerge_ceiling", mayBeEqual: false);
        Ordered(row, "growth_base", "reference", mayBeEqual: false);
        Ordered(row, "reference", "growth_cap", mayBeEqual: true);
        Ordered(row, "damage_below", "table_above", mayBeEqual: true);
        Ordered(row, "damage_below", "field_above", mayBeEqual: true);
        Ordered(row, "hold_days", "discard_after_days", mayBeEqual: false);
        Together(row, "harvest_after_days", "harvest_days");
        Together(row, "weeks_min", "weeks_max");
        OrderedWeeks(row);
    }

    private void Together(ShelfRow row, string one, string other)
    {
        if (row[one].IsBlank != row[other].IsBlank)
        {
            var (given, missing) = row[one].IsBlank ? (other, one) : (one, other);
            cells.Faults.Add(Written(row, given), $"{given} is given and {missing} is not", "write both, or neither");
        }
    }

    private void OrderedWeeks(ShelfRow row)
    {
        if (_quiet.Number(row["weeks_min"], 0, 52) is { } least && _quiet.Number(row["weeks_max"], 0, 52) is { } most && most < least)
        {
            cells.Faults.Add(
                Written(row, "weeks_max", "weeks_min"),
                $"weeks_max is {Words.Number(most)} weeks, below weeks_min, which is {Words.Number(least)} weeks",
                "write weeks_max at or above weeks_min"
            );
        }
    }

    private void Ordered(ShelfRow row, string lowColumn, string highColumn, bool mayBeEqual)
    {
        var isDays = highColumn.EndsWith("days", StringComparison.Ordinal);
        if (
            Value(row[lowColumn], isDays) is not { } low
            || Value(row[highColumn], isDays) is not { } high
            || low < high
            || (mayBeEqual && low == high)
        )
        {
            return;
        }

        string Told(double value) => isDays ? $"{Words.Number(value)} days" : Words.Temperature(value, site.Units);
        cells.Faults.Add(
            Written(row, highColumn, lowColumn),
            $"{highColumn} is {Told(high)}, {(mayBeEqual ? "below" : "not above")} {lowColumn}, which is {Told(low)}",
            $"write {highColumn} {(mayBeEqual ? "at or above" : "above")} {lowColumn}"
        );
    }

    private double? Value(Cell cell, bool isDays) => isDays ? _quiet.Whole(cell, 0, 365) : _quiet.Temperature(cell);

    private void CheckGrowth(ShelfRow row, Crop crop)
    {
        if (EmergenceRate.Of(crop, crop.GerminateAtC) <= 0)
        {
            var cell = Written(row, "germinate_at", "emerge_base", "emerge_ceiling");
            cells.Faults.Add(
                cell,
                $"nothing comes up at germinate_at, which is {Words.Temperature(crop.GerminateAtC, site.Units)}",
                $"write a temperature between emerge_base ({Words.Temperature(crop.EmergeBaseC, site.Units)}) and emerge_ceiling "
                    + $"({Words.Temperature(crop.EmergeCeilingC, site.Units)})"
            );
            return;
        }

        var days = GrowthDays(crop);
        if (days <= 0)
        {
            cells.Faults.Add(
                Written(row, "days_to_ready", "counted_from", "includes_hardening", "hardening_nights", "emerge_heat", "germinate_at"),
                $"days_to_ready is {Words.Number(crop.DaysToReady!.Days)}, and the days to emergence and the hardening it counts "
                    + $"leave {Words.Number(days)} days to grow",
                "write more days, or say otherwise in counted_from and includes_hardening"
            );
        }
    }

    // The first of the columns that the user wrote: the others are the library's. The row itself when all are.
    private static SourcePlace Written(ShelfRow row, params string[] columns)
    {
        foreach (var column in columns)
        {
            if (row.Cells.TryGetValue(column, out var cell) && cell.Source.Trust == Trust.User)
            {
                return cell.Cell.Place;
            }
        }

        return row.Place;
    }
}
