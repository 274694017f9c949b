using BenchSim.Folder.Faults;

namespace BenchSim.Folder.Shelves;

/// <summary>
/// The names by which people call the rows of a shelf: the id or the name shown to people, whatever the case, with or without spaces,
/// hyphens and underscores; and for a tray with cells their number, as in "200" or "200 cells". A name that fits two rows fits none.
/// </summary>
internal sealed class ShelfNames
{
    private static readonly string[] s_trayEndings = ["trays", "tray", "cells", "cell"];

    // Names of two rows are kept with no id.
    private readonly Dictionary<string, string?> _ids = new(StringComparer.Ordinal);

    /// <summary>Gathers the names.</summary>
    public ShelfNames(IEnumerable<ShelfRow> rows)
    {
        ShelfRow[] all = [.. rows];
        Add(all, row => Spelling.Loose(row.Id));
        Add(all, row => Spelling.Loose(row["name"].Text));
        Add(all, row => row["cells"].IsBlank ? "" : WithoutEnding(Spelling.Loose(row.Id)));
    }

    /// <summary>The id that a written name means; null where there is none, or more than one.</summary>
    public string? Find(string written)
    {
        var loose = Spelling.Loose(written);
        return _ids.GetValueOrDefault(loose) ?? (WithoutEnding(loose) is var bare && IsNumber(bare) ? _ids.GetValueOrDefault(bare) : null);
    }

    // Ids come before names: what is an id already stays one.
    private void Add(ShelfRow[] rows, Func<ShelfRow, string> nameOf)
    {
        var taken = _ids.Keys.ToHashSet(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            var name = nameOf(row);
            if (
                name.Length > 0
                && !taken.Contains(name)
                && !_ids.TryAdd(name, row.Id)
                && !string.Equals(_ids[name], row.Id, StringComparison.Ordinal)
            )
            {
                _ids[name] = null;
            }
        }
    }

    private static string WithoutEnding(string name)
    {
        foreach (var ending in s_trayEndings)
        {
            name = name.EndsWith(ending, StringComparison.Ordinal) ? name[..^ending.Length] : name;
        }

        return IsNumber(name) ? name : "";
    }

    private static bool IsNumber(string name) => name.Length > 0 && name.All(char.IsAsciiDigit);
}
