using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Variants;

/// <summary>Turns the keys of a variant's table into cells of a CSV row.</summary>
internal static class OverlayCells
{
    /// <summary>The value as the cell of a column: a list is joined as crops.csv writes lists; an empty text clears the cell.</summary>
    /// <returns>The cell; null when a fault was added.</returns>
    public static Cell? Of(string column, TomlValue value, UnitSystem units, FaultList faults)
    {
        switch (value)
        {
            case TomlScalar scalar:
                return new Cell(scalar.Text, scalar.Place, column, units);
            case TomlList list when list.Items.All(item => item is TomlScalar):
                return new Cell(string.Join('|', list.Items.Cast<TomlScalar>().Select(item => item.Text)), list.Place, column, units);
            default:
                faults.Add(value.Place, $"{column} is not a single value", "write one value");
                return null;
        }
    }

    /// <summary>Reports a key that no variant may change.</summary>
    /// <param name="key">The key.</param>
    /// <param name="place">Where it is written.</param>
    /// <param name="because">Why it may not.</param>
    /// <param name="file">The file of the base that has it.</param>
    /// <param name="faults">Takes the fault.</param>
    public static void RefuseFixed(string key, SourcePlace place, string because, string file, FaultList faults) =>
        faults.Add(place, $"{key} cannot change in a variant: {because}", $"take the line out, or change it in {file}");

    /// <summary>Reports a key that no one knows, or that a variant may not change.</summary>
    public static void Refuse(
        string key,
        SourcePlace place,
        string heading,
        IReadOnlyList<string> known,
        FieldTable fields,
        FaultList faults
    )
    {
        var near = Spelling.Nearest(key, known);
        if (
            fields.Fields.FirstOrDefault(field => string.Equals(field.Name, key, StringComparison.Ordinal)) is { FixedBecause: var because }
        )
        {
            RefuseFixed(key, place, because, fields.Section, faults);
            return;
        }

        faults.Add(
            place,
            $"there is no key {Words.Quote(key)} in {heading}",
            fields.Former.TryGetValue(key, out var former) ? former.Instead
                : near is null ? $"the keys here are {Words.List(known)}"
                : $"did you mean {Words.Quote(near)}"
        );
    }
}
