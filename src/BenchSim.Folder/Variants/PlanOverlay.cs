using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Variants;

/// <summary>Lays the [[plan]] entries of a variant over the rows of plan.csv, one after the other.</summary>
internal sealed class PlanOverlay(VariantFile variant, UnitSystem units, CellReader cells)
{
    private const int MostShift = 365;

    private static readonly string[] s_dateColumns = ["sow", "set_out"];

    // Reads dates without a word: a bad date is reported where it is written.
    private readonly CellReader _quiet = new(new FaultList());

    /// <summary>The rows as the variant has them.</summary>
    public List<CsvRow> Lay(IReadOnlyList<CsvRow> rows)
    {
        var laid = rows.ToList();
        foreach (var entry in variant.Plan)
        {
            var change = Read(entry);
            var chosen = Chosen(entry, laid);
            if (change.IsDropped && chosen.Count > 0 && chosen.Count == laid.Count)
            {
                cells.Faults.Add(entry.Place, "this drops the last line of the plan", "keep one line at least");
                return laid;
            }

            var positions = chosen.Order().ToArray();
            foreach (var at in positions.Where(_ => !change.IsDropped))
            {
                laid[at] = Over(laid[at], entry, change);
            }

            foreach (var at in positions.Reverse().Where(_ => change.IsDropped))
            {
                laid.RemoveAt(at);
            }
        }

        return laid;
    }

    private Change Read(TomlTable entry)
    {
        var given = new List<Cell>();
        Cell? shift = null;
        var isDropped = false;
        foreach (var (key, value) in entry.Entries)
        {
            if (!VariantFields.Plan.Names.Contains(key, StringComparer.Ordinal) && !IsColumn(key))
            {
                Refuse(key, value);
            }
            else if (OverlayCells.Of(key, value.Value, units, cells.Faults) is { } cell)
            {
                shift = key is "shift_days" ? cell : shift;
                isDropped |= key is "drop" && Kinds.YesNo.TryRead(new WrittenCell(cells, cell), out var isYes) && isYes;
                if (IsColumn(key))
                {
                    given.Add(cell);
                }
            }
        }

        var days = shift is { } written ? Days(written) : 0;
        if (given.Count == 0 && shift is null && !entry.Entries.ContainsKey("drop"))
        {
            cells.Faults.Add(
                entry.Place,
                "this [[plan]] changes nothing",
                "add a column of plan.csv with its new value, shift_days = 7, or drop = true"
            );
        }

        return new Change(given, days, shift ?? default, isDropped);
    }

    private static bool IsColumn(string key) => VariantFields.PlanColumns.Contains(key, StringComparer.Ordinal);

    private void Refuse(string key, TomlEntry value)
    {
        if (key is "id")
        {
            cells.Faults.Add(
                value.KeyPlace,
                "there is no key \"id\" in [[plan]] of a variant: what is drawn for a batch depends on its name",
                "choose lines with batch = \"id\""
            );
            return;
        }

        OverlayCells.Refuse(
            key,
            value.KeyPlace,
            VariantFields.Plan.Heading,
            [.. VariantFields.Plan.Names, .. VariantFields.PlanColumns],
            PlanFields.Table,
            cells.Faults
        );
    }

    // Whole has no negative numbers in a plan; here a week earlier is -7.
    private int Days(Cell cell)
    {
        if (
            int.TryParse(
                cell.Text,
                System.Globalization.NumberStyles.AllowLeadingSign,
                System.Globalization.CultureInfo.InvariantCulture,
                out var days
            )
            && Math.Abs((long)days) <= MostShift
        )
        {
            return days;
        }

        cells.Refuse(cell, $"is {Words.Quote(cell.Text)}", $"write whole days, -{MostShift} to {MostShift}; a minus means earlier");
        return 0;
    }

    private HashSet<int> Chosen(TomlTable entry, List<CsvRow> rows)
    {
        var before = cells.Faults.Count;
        var (batch, crop) = (Selector(entry, "batch"), Selector(entry, "crop"));
        if (batch is null && crop is null && cells.Faults.Count == before)
        {
            cells.Faults.Add(entry.Place, "this [[plan]] chooses no lines", "add batch = \"id\", batch = \"prefix*\" or crop = \"tomato\"");
        }

        if (cells.Faults.Count > before)
        {
            return [];
        }

        var chosen = Enumerable
            .Range(0, rows.Count)
            .Where(at =>
                (batch is not { } id || LineSelector.Matches(rows[at]["id"].Text, id.Text))
                && (crop is not { } name || Spelling.IsSame(rows[at]["crop"].Text, name.Text))
            )
            .ToHashSet();
        if (chosen.Count == 0)
        {
            RefuseNothing(batch, crop, rows);
        }

        return chosen;
    }

    private Cell? Selector(TomlTable entry, string key)
    {
        if (!entry.Entries.TryGetValue(key, out var found))
        {
            return null;
        }

        if (found.Value is TomlScalar { Text.Length: > 0 } scalar)
        {
            return new Cell(scalar.Text, scalar.Place, key, units);
        }

        cells.Faults.Add(
            found.Value.Place,
            $"{key} names nothing",
            "write one name in quotation marks, and add a [[plan]] for each further one"
        );
        return null;
    }

    private void RefuseNothing(Cell? batch, Cell? crop, List<CsvRow> rows)
    {
        if (rows.Count == 0)
        {
            return;
        }

        var column = batch is null ? "crop" : "id";
        var cell = batch ?? crop!.Value;
        var known = rows.Select(row => row[column].Text).Distinct(StringComparer.Ordinal).ToArray();
        var succession = batch is null
            ? null
            : known.FirstOrDefault(id =>
                cell.Text.StartsWith(id + "-", StringComparison.Ordinal) && cell.Text[(id.Length + 1)..].All(char.IsAsciiDigit)
            );
        var near = Spelling.Nearest(cell.Text.TrimEnd('*'), known);
        cells.Faults.Add(
            cell.Place,
            $"no line of the plan has {(batch is null ? "the crop" : "the batch")} "
                + $"{Words.Quote(cell.Text)}"
                + (batch is not null && crop is not null ? $" and the crop {Words.Quote(crop.Value.Text)}" : ""),
            succession is not null ? $"it is a succession of {Words.Quote(succession)}: all successions of a line change together"
                : near is null || (batch is not null && crop is not null) ? "name one of plan.csv"
                : $"did you mean {Words.Quote(near)}"
        );
    }

    // The row's own place becomes that of the entry: what planning finds wrong with the batch now comes from the variant.
    private CsvRow Over(CsvRow row, TomlTable entry, Change change)
    {
        var laid = row.With(change.Cells);
        foreach (var column in s_dateColumns.Where(column => change.Days != 0 && laid.Has(column)))
        {
            if (_quiet.Date(laid[column]) is { } date)
            {
                laid.Put(laid[column] with { Text = Words.Date(date.AddDays(change.Days)), Place = change.Shift.Place });
            }
        }

        if (laid.Has("id"))
        {
            laid.Put(laid["id"] with { Place = entry.Place });
        }

        return laid;
    }

    private sealed record Change(List<Cell> Cells, int Days, Cell Shift, bool IsDropped);
}
