using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
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

    /// <summary>Reports a key that no one knows.</summary>
    public static void Refuse(string key, SourcePlace place, string heading, IReadOnlyList<string> known, FaultList faults)
    {
        var near = Spelling.Nearest(key, known);
        faults.Add(
            place,
            $"there is no key {Words.Quote(key)} in {heading}",
            near is null ? $"the keys here are {Words.List(known)}" : $"did you mean {Words.Quote(near)}"
        );
    }
}
