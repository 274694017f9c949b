using BenchSim.Folder.Faults;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Toml;

/// <summary>A section of site.toml while it is read: hands out its values and reports keys that no one knows.</summary>
internal sealed class Section
{
    private readonly TomlTable _table;
    private readonly FaultList _faults;
    private readonly UnitSystem _units;

    /// <summary>Opens a section and reports its unknown keys.</summary>
    /// <param name="name">Name in the reference, such as "house" or "space.changes".</param>
    /// <param name="table">The table.</param>
    /// <param name="faults">Takes the faults.</param>
    /// <param name="units">Units of numbers that say none.</param>
    /// <param name="isWhole">False when a missing key may only be unreadable.</param>
    public Section(string name, TomlTable table, FaultList faults, UnitSystem units, bool isWhole)
        : this(name, table, faults, isWhole, units)
    {
        var known = FolderReference.KeysOf(name);
        foreach (var (key, entry) in table.Entries.Where(pair => !known.Contains(pair.Key, StringComparer.Ordinal)))
        {
            if (faults.IsFull)
            {
                // Looking for near names takes time, and no one would see them.
                faults.Add(entry.KeyPlace, "there are more unknown keys", "check that it is the right file");
                return;
            }

            faults.Add(entry.KeyPlace, $"there is no key {Words.Quote(key)} in {FolderReference.HeadingOf(name)}", Hint(key, known));
        }
    }

    private Section(string name, TomlTable table, FaultList faults, bool isWhole, UnitSystem units) =>
        (Name, _table, _faults, _units, IsWhole) = (name, table, faults, units, isWhole);

    public string Name { get; }

    /// <summary>False when a missing key may only be unreadable.</summary>
    public bool IsWhole { get; }

    public SourcePlace Place => _table.Place;

    /// <summary>The same section with other units; its unknown keys are not reported again.</summary>
    public Section With(UnitSystem units) => new(Name, _table, _faults, IsWhole, units);

    /// <summary>Whether the key is written.</summary>
    public bool Has(string key) => _table.Entries.ContainsKey(Known(key));

    /// <summary>Where the key is written; the section's heading when it is not.</summary>
    public SourcePlace PlaceOf(string key) => _table.Entries.TryGetValue(key, out var entry) ? entry.KeyPlace : Place;

    /// <summary>Whether the key is written as a list.</summary>
    public bool IsList(string key) => _table.Entries.TryGetValue(key, out var entry) && entry.Value is TomlList;

    /// <summary>Reads every key of a table into a record; what is not written, or is wrong, stays as it is.</summary>
    public TRecord Read<TRecord>(FieldTable<TRecord> table, TRecord record, CellReader cells)
    {
        foreach (var field in table.Values)
        {
            if (field.IsRequired && !Has(field.Name) && IsWhole)
            {
                _faults.Add(Place, $"{table.Heading} has no {field.Name}", $"add a line such as {field.Name} = {field.Example}");
            }

            record = field.Read(new WrittenKey(this, field, cells), record);
        }

        return record;
    }

    /// <summary>Reports one of two keys that is written without the other.</summary>
    /// <param name="one">A key.</param>
    /// <param name="exampleOfOne">An example of it.</param>
    /// <param name="other">The key that goes with it.</param>
    /// <param name="exampleOfOther">An example of that.</param>
    public void RefuseHalf(string one, string exampleOfOne, string other, string exampleOfOther)
    {
        if (!IsWhole || Has(one) == Has(other))
        {
            return;
        }

        var (given, missing, example) = Has(one) ? (one, other, exampleOfOther) : (other, one, exampleOfOne);
        _faults.Add(
            PlaceOf(given),
            $"{given} is given but {missing} is not",
            $"add a line such as {missing} = {example}, or leave both out"
        );
    }

    /// <summary>A single value; blank when it is not written.</summary>
    public Cell Scalar(string key, bool mayBeEmpty = false)
    {
        if (!_table.Entries.TryGetValue(Known(key), out var entry))
        {
            return new Cell("", Place, key, _units);
        }

        if (entry.Value is TomlScalar scalar)
        {
            if (scalar.Text.Length == 0 && !mayBeEmpty)
            {
                _faults.Add(scalar.Place, $"{key} is empty", "write a value, or take the line out");
            }

            return new Cell(scalar.Text, scalar.Place, key, _units);
        }

        _faults.Add(entry.Value.Place, $"{key} is a list", "write one value");
        return new Cell("", entry.Value.Place, key, _units);
    }

    /// <summary>A single value that must be there.</summary>
    public Cell Required(string key, string example)
    {
        var cell = Scalar(key);
        if (!Has(key) && IsWhole)
        {
            _faults.Add(Place, $"{FolderReference.HeadingOf(Name)} has no {key}", $"add a line such as {key} = {example}");
        }

        return cell;
    }

    /// <summary>The values of a list; empty when it is not written.</summary>
    /// <param name="key">Key.</param>
    /// <param name="form">What a list of this key looks like, for the message where it is none; null for a list of words.</param>
    /// <param name="instead">What to do about an empty text in it; null to write a value or take it out.</param>
    public IReadOnlyList<Cell> List(string key, string? form = null, string? instead = null)
    {
        form ??= "a list such as [\"Mon\", \"Tue\"]";
        instead ??= "write a value between the quotation marks, or take them out";
        var cells = new List<Cell>();
        foreach (var item in Items(key, form))
        {
            if (item is TomlScalar { Text: var text } && string.IsNullOrWhiteSpace(text))
            {
                _faults.Add(item.Place, $"{key} has an empty text in its list", instead);
            }
            else if (item is TomlScalar scalar)
            {
                cells.Add(new Cell(scalar.Text, scalar.Place, key, _units));
            }
            else
            {
                _faults.Add(item.Place, $"{key} has a list inside its list", "write single values between the brackets");
            }
        }

        return cells;
    }

    /// <summary>The tables of a list, for a key such as changes = [{ ... }]; empty when it is not written.</summary>
    public IReadOnlyList<Section> Sections(string key)
    {
        var name = Name.Length == 0 ? key : $"{Name}.{key}";
        var sections = new List<Section>();
        var headingOfOne =
            Name.Length == 0 && _table.Entries.TryGetValue(key, out var entry) && entry.Value is TomlTable single ? single : null;
        if (headingOfOne is not null)
        {
            _faults.Add(headingOfOne.Place, $"[{key}] has single brackets", $"write [[{key}]]: there may be several");
            return [new Section(name, headingOfOne, _faults, _units, IsWhole)];
        }

        foreach (var item in Items(key, "a list of tables such as [{ from = 2027-05-01, places = 40 }]"))
        {
            if (item is TomlTable table)
            {
                sections.Add(new Section(name, table, _faults, _units, IsWhole));
            }
            else
            {
                _faults.Add(
                    item.Place,
                    $"{key} holds something that is not a table",
                    "write tables such as { from = 2027-05-01, places = 40 }"
                );
            }
        }

        return sections;
    }

    private List<TomlValue> Items(string key, string form)
    {
        if (!_table.Entries.TryGetValue(Known(key), out var entry))
        {
            return [];
        }

        if (entry.Value is TomlList list)
        {
            return list.Items;
        }

        _faults.Add(entry.Value.Place, $"{key} is not a list", $"write {form}");
        return [];
    }

    // Reading a key that the reference does not list is a mistake of the program, not of the user.
    private string Known(string key) =>
        FolderReference.KeysOf(Name).Contains(key, StringComparer.Ordinal)
            ? key
            : throw new InvalidOperationException($"the key {key} of {Name} is not in the reference");

    private static string Hint(string key, IReadOnlyList<string> known)
    {
        if (Spelling.Nearest(key, known) is { } near)
        {
            return $"did you mean {Words.Quote(near)}";
        }

        var elsewhere = FolderReference.HeadingsWith(key);
        return elsewhere.Length > 0 ? $"it belongs in {Words.List(elsewhere, "or")}" : $"the keys here are {Words.List(known)}";
    }
}
