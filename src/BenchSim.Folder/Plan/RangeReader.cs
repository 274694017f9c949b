using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>Reads the rows of ranges.csv.</summary>
internal sealed class RangeReader(CellReader cells, Choices choices, Scenario scenario)
{
    private readonly Dictionary<(string What, string Of), SourcePlace> _seen = [];

    /// <summary>Reads the rows; those with a fault are left out.</summary>
    public ImmutableArray<RangeRow> Read(CsvTable table) => [.. table.Rows.Select(Read).OfType<RangeRow>()];

    private RangeRow? Read(CsvRow row)
    {
        var before = cells.Faults.Count;
        var written = row.Read(RangeFields.Table, WrittenRange.Nothing, cells);
        if (written.What.Length == 0 || ColumnOf(row["what"]) is not { } column)
        {
            return null;
        }

        var owners = Owners(row["of"], column);
        var (low, isLowRelative) = End(row["low"], column);
        var (high, isHighRelative) = End(row["high"], column);
        var shape = written.Shape ?? column.UsualShape;
        if (low is { } least && high is { } most)
        {
            CheckEnds(row, column, (least, isLowRelative), (most, isHighRelative), shape);
            CheckGrowth(row["low"], column, owners, isLowRelative ? null : least);
        }

        foreach (var owner in owners.DefaultIfEmpty(""))
        {
            CheckOnce(row["what"], column.Field.Name, owner);
        }

        return cells.Faults.Count > before || low is null || high is null
            ? null
            : new RangeRow(column.Field.Name, owners, low.Value, high.Value, isLowRelative, shape);
    }

    private DoubtColumn? ColumnOf(Cell cell)
    {
        var found = DoubtColumn.All.FirstOrDefault(column => Spelling.IsSame(column.Field.Name, cell.Text));
        if (found is null)
        {
            var near = DoubtColumn.All.Select(column => column.Field.Name).MinBy(name => Spelling.Distance(name, cell.Text));
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which is no value that may be wrong",
                near is not null && Spelling.Distance(near, cell.Text) <= 2
                    ? $"did you mean {Words.Quote(near)}"
                    : $"write one of {string.Join(", ", DoubtColumn.All.Select(column => column.Field.Name))}"
            );
        }

        return found;
    }

    private ImmutableArray<string> Owners(Cell cell, DoubtColumn column)
    {
        if (!column.IsOfCrops && !column.IsOfHouses)
        {
            cells.RefuseWhereGiven(cell, $"is for values of crops and houses, and {column.Field.Name} is of the site", "leave it empty");
            return [];
        }

        string[] names = [.. cell.Text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        return [.. names.Select(name => column.IsOfCrops ? Crop(cell, name) : HouseOf(cell, name)).OfType<string>()];
    }

    private string? Crop(Cell cell, string name)
    {
        if (choices.Crops.MayHave(name))
        {
            return choices.Crops.Meant(name);
        }

        Refuse(cell, name, "crop", choices.Crops.Nearest(name));
        return null;
    }

    private string? HouseOf(Cell cell, string name)
    {
        if (scenario.Houses.FirstOrDefault(house => Spelling.IsSame(house.Id, name)) is { } found)
        {
            return found.Id;
        }

        Refuse(cell, name, "house", null);
        return null;
    }

    private void Refuse(Cell cell, string name, string thing, string? near) =>
        cells.Refuse(
            cell,
            $"names {Words.Quote(name)}, and there is no {thing} of that name",
            near is null ? $"name a {thing} by its id, several with | between them" : $"did you mean {Words.Quote(near)}"
        );

    // A change in percent has a sign; a share without one is a share.
    private (double? End, bool IsRelative) End(Cell cell, DoubtColumn column)
    {
        if (cell.IsBlank)
        {
            return (null, false);
        }

        if (cell.Text[0] is not ('+' or '-' or '\u2212') || !cell.Text.EndsWith('%'))
        {
            return (column.Read(new WrittenCell(cells, cell)), false);
        }

        if (!column.MayBeRelative)
        {
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, and {column.Field.Name} has no ends in percent of itself",
                "write the end itself, as the value is written"
            );
            return (null, true);
        }

        var sign = cell.Text[0] == '+' ? 1 : -1;
        var change = cells.Number(cell with { Text = cell.Text[1..^1].Trim() }, 0, sign > 0 ? 1000 : 99);
        return (1 + (sign * change / 100), true);
    }

    private void CheckEnds(
        CsvRow row,
        DoubtColumn column,
        (double At, bool IsRelative) low,
        (double At, bool IsRelative) high,
        RangeShape shape
    )
    {
        if (low.IsRelative != high.IsRelative)
        {
            cells.Refuse(row["high"], "is written otherwise than low", "write both ends as values, or both as changes in percent");
        }
        else if (!(high.At > low.At))
        {
            cells.Refuse(row["high"], "is not above low", "write the least under low and the most under high");
        }
        else if (shape == RangeShape.Lognormal && !(low.At > 0))
        {
            cells.Refuse(row["shape"], "lognormal has no place for a low end of 0 or less", "write uniform or triangular");
        }
        else if (shape == RangeShape.Odds && (column.Kind != DoubtKind.Share || !(low.At > 0 && high.At < 1)))
        {
            cells.Refuse(
                row["shape"],
                "odds is for a share whose ends lie between 0 % and 100 %",
                "write uniform or triangular, or ends between them"
            );
        }
    }

    // Days to field size may count those before the crop is up and those on the table; what is left must be some.
    private void CheckGrowth(Cell low, DoubtColumn column, ImmutableArray<string> owners, double? least)
    {
        var tooSlow = scenario
            .Crops.Where(crop => column.IsGrowth && (owners.IsEmpty || owners.Contains(crop.Id, StringComparer.Ordinal)))
            .MaxBy(crop => crop.DaysOutsideGrowth);
        if (tooSlow is not null && least <= tooSlow.DaysOutsideGrowth)
        {
            cells.Refuse(
                low,
                $"is {Words.Number(least.Value)}, and {Words.Number(tooSlow.DaysOutsideGrowth)} days of {Words.Quote(tooSlow.Id)} "
                    + "go to coming up and hardening",
                "write more days than that"
            );
        }
    }

    private void CheckOnce(Cell cell, string what, string owner)
    {
        if (!_seen.TryAdd((what, owner), cell.Place))
        {
            var whose = owner.Length == 0 ? "" : $" of {Words.Quote(owner)}";
            cells.Refuse(cell, $"{what}{whose} has a row already, on line {_seen[(what, owner)].Line}", "keep one row for a value");
        }
    }
}
