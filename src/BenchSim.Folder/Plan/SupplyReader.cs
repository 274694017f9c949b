using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>Reads the rows of supplies.csv.</summary>
internal sealed class SupplyReader(CellReader cells, Choices choices)
{
    private readonly Dictionary<(string Item, string Variety), SourcePlace> _seen = [];

    /// <summary>Reads the rows; those with a fault are left out.</summary>
    public ImmutableArray<Supply> Read(CsvTable table) => [.. table.Rows.Select(Read).OfType<Supply>()];

    private Supply? Read(CsvRow row)
    {
        var before = cells.Faults.Count;
        var supply = row.Read(SupplyFields.Table, SupplyFields.Nothing, cells);
        var cell = row["item"];
        if (supply.Item.Length == 0)
        {
            return null;
        }

        var (item, isCrop) = Meant(cell, supply.Item);
        if (item is null)
        {
            return null;
        }

        if (!isCrop)
        {
            cells.RefuseWhereGiven(row["variety"], "is only for seed", "name a crop in the column item, or leave this empty");
        }

        if (!_seen.TryAdd((item, supply.Variety.ToUpperInvariant()), cell.Place))
        {
            cells.Refuse(
                cell,
                $"{Words.Quote(supply.Item)} has a row already, on line {_seen[(item, supply.Variety.ToUpperInvariant())].Line}",
                "keep one row for a thing, or name the variety"
            );
        }

        return cells.Faults.Count > before ? null : supply with { Item = item, Place = cell.Place };
    }

    // A crop, a tray type, or the carriers; null with a fault, and without one where a file that may name it could not be read.
    private (string? Item, bool IsCrop) Meant(Cell cell, string written)
    {
        if (Spelling.IsSame(written, Supply.Carrier) || Spelling.IsSame(written, Supply.Carrier + "s"))
        {
            return (Supply.Carrier, false);
        }

        if (choices.Crops.MayHave(written))
        {
            return (choices.Crops.Meant(written), true);
        }

        if (choices.Trays.MayHave(written))
        {
            return (choices.Trays.Meant(written), false);
        }

        var near = choices.Crops.Nearest(written) ?? choices.Trays.Nearest(written);
        cells.Refuse(
            cell,
            $"is {Words.Quote(written)}, and there is no crop and no tray type of that name",
            near is null ? "name a crop or a tray type, or write carrier" : $"did you mean {Words.Quote(near)}"
        );
        return (null, false);
    }
}
