using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Shelves;

/// <content>What the values of a crop must be to one another.</content>
internal sealed partial class CropReader
{
    private void CheckTogether(ShelfRow row, Crop crop)
    {
        Below(row, "emerge_base", crop.EmergeBaseC, "emerge_optimum", crop.EmergeOptimumC, " C");
        Below(row, "emerge_optimum", crop.EmergeOptimumC, "emerge_ceiling", crop.EmergeCeilingC, " C");
        Below(row, "growth_base", crop.GrowthBaseC, "reference", crop.ReferenceC, " C");
        Below(row, "hold_days", crop.HoldDays, "discard_after_days", crop.DiscardAfterDays, " days");
        Below(row, "flat_hold_days", crop.FlatHoldDays, "flat_discard_days", crop.FlatDiscardDays, " days");
        NotAbove(row, "reference", crop.ReferenceC, "growth_cap", crop.GrowthCapC);
        NotAbove(row, "damage_below", crop.DamageBelowC, "harden_above", crop.HardenAboveC);
        cells.Choice(row["counted_from"], CountWords);
        cells.YesNo(row["includes_hardening"]);
        if (crop.EmergeBaseC < crop.EmergeOptimumC && crop.EmergeOptimumC < crop.EmergeCeilingC)
        {
            CheckGrowth(row, crop);
        }
    }

    private void CheckGrowth(ShelfRow row, Crop crop)
    {
        if (EmergenceRate.At(crop.GerminateAtC, crop.EmergeBaseC, crop.EmergeOptimumC, crop.EmergeCeilingC) <= 0)
        {
            var cell = Written(row, "germinate_at", "emerge_base", "emerge_ceiling");
            cells.Faults.Add(
                cell,
                $"nothing comes up at germinate_at, which is {Words.Number(crop.GerminateAtC)} C",
                $"write a temperature between emerge_base ({Words.Number(crop.EmergeBaseC)} C) and emerge_ceiling ({Words.Number(crop.EmergeCeilingC)} C)");
            return;
        }

        var days = GrowthDays(row, crop);
        if (days <= 0)
        {
            cells.Faults.Add(
                Written(row, "days_to_ready", "counted_from", "includes_hardening", "hardening_nights", "emerge_heat", "germinate_at"),
                $"days_to_ready is {Words.Number(crop.GrowthDays)}, and the days to emergence and the hardening it counts leave {Words.Number(days)} days to grow",
                "write more days, or say otherwise in counted_from and includes_hardening");
        }
    }

    private void Below(ShelfRow row, string lowColumn, double low, string highColumn, double high, string unit)
    {
        if (low >= high)
        {
            cells.Faults.Add(
                Written(row, highColumn, lowColumn),
                $"{highColumn} is {Words.Number(high)}{unit}, not above {lowColumn}, which is {Words.Number(low)}{unit}",
                $"write {highColumn} above {lowColumn}");
        }
    }

    private void NotAbove(ShelfRow row, string lowColumn, double low, string highColumn, double high)
    {
        if (low > high)
        {
            cells.Faults.Add(
                Written(row, highColumn, lowColumn),
                $"{highColumn} is {Words.Number(high)} C, below {lowColumn}, which is {Words.Number(low)} C",
                $"write {highColumn} at or above {lowColumn}");
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

    // "10 C 61 % | 15 C 80 %"
    private ImmutableArray<GerminationPoint> Curve(Cell cell)
    {
        var points = new List<GerminationPoint>();
        foreach (var part in cell.Text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var (temperature, percent) = SplitPoint(part);
            if (temperature.Length == 0 || percent.Length == 0)
            {
                cells.Refuse(cell, $"has a point {Words.Quote(part)}", "write a temperature and a share in each, such as 10 C 61 % | 15 C 80 %");
                return [];
            }

            if (cells.Temperature(cell with { Text = temperature }) is not { } celsius || cells.Fraction(cell with { Text = percent }) is not { } share)
            {
                return [];
            }

            if (points.Count > 0 && celsius <= points[^1].TemperatureC)
            {
                cells.Refuse(cell, $"is not in order of temperature at {Words.Quote(part)}", "write the coldest point first");
                return [];
            }

            points.Add(new GerminationPoint(celsius, Math.Round(share * 100, 6)));
        }

        return [.. points];
    }

    // The share is the last number of a point, with the per cent sign after it: "10 C 61 %" is "10 C" and "61 %".
    private static (string Temperature, string Percent) SplitPoint(string point)
    {
        if (!point.EndsWith('%'))
        {
            return ("", "");
        }

        var number = point[..^1].TrimEnd();
        var start = number.LastIndexOf(' ');
        return start < 0 ? ("", "") : (number[..start].Trim(), number[(start + 1)..] + " %");
    }
}
