using System.Collections.Immutable;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Variants;

/// <summary>
/// Writes changes of the files of a folder as a variant. What a variant cannot hold is left out and named: keys that base and variants
/// share, keys that were taken out, lines that were added, and the tables of trays and supplies.
/// </summary>
public sealed class ChangesAsVariant
{
    // In the place of an id, with the number of the entry: no id begins so.
    private const char Nameless = '\0';

    private readonly IReadOnlyDictionary<string, string> _before;
    private readonly IReadOnlyDictionary<string, string> _after;
    private readonly VariantText _text = new VariantText().Replan();
    private readonly List<string> _leftOut = [];

    private ChangesAsVariant(IReadOnlyDictionary<string, string> before, IReadOnlyDictionary<string, string> after) =>
        (_before, _after) = (before, after);

    /// <summary>The variant, planned anew; without a change where it can hold none of them.</summary>
    public VariantText Text => _text;

    /// <summary>What it cannot hold, each in a few words.</summary>
    public ImmutableArray<string> LeftOut => [.. _leftOut.Distinct(StringComparer.Ordinal)];

    /// <summary>Writes changes.</summary>
    /// <param name="before">Texts of the files of the base by name.</param>
    /// <param name="after">The same as they were changed; both are read without faults.</param>
    public static ChangesAsVariant Of(IReadOnlyDictionary<string, string> before, IReadOnlyDictionary<string, string> after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var changes = new ChangesAsVariant(before, after);
        changes.Site();
        changes.Crops();
        changes.Plan();
        foreach (var file in FileNames.Tables.Where(file => file is not (FileNames.Plan or FileNames.Crops)))
        {
            if (!string.Equals(before.GetValueOrDefault(file), after.GetValueOrDefault(file), StringComparison.Ordinal))
            {
                changes._leftOut.Add(file);
            }
        }

        return changes;
    }

    private void Site()
    {
        var (before, after) = (Parts(_before), Parts(_after));
        foreach (var (name, part) in after)
        {
            Keys(name.Section, name.Id, before.GetValueOrDefault(name), part);
        }

        foreach (var (name, part) in before.Where(pair => !after.ContainsKey(pair.Key)))
        {
            if (name.Section is "house" or "space" && !IsNameless(name.Id))
            {
                _text.Remove(name.Id);
            }
            else if (name.Id.Length > 0)
            {
                _leftOut.Add($"{Shown(name.Section, name.Id)}, which was taken out");
            }
            else
            {
                Gone(name.Section, name.Id, part.Keys.Select(key => key.Key));
            }
        }
    }

    private void Keys(string section, string id, TomlPart? before, TomlPart after)
    {
        if (IsNameless(id))
        {
            if (before is null || !before.Keys.Select(Plainly).SequenceEqual(after.Keys.Select(Plainly)))
            {
                _leftOut.Add($"an entry of [[{section}]] that has no id");
            }

            return;
        }

        // A weather of another kind takes the place of all of it.
        var isWhole = before is null || (section is "weather" && !IsSame(before.Find("kind"), after.Find("kind")));
        TomlKey[] changed = [.. after.Keys.Where(key => key.Key is not "id" && (isWhole || !IsSame(before!.Find(key.Key), key)))];
        foreach (var key in changed)
        {
            var field = FolderReference.KeyOf(section, key.Key);
            if (field is null || field.FixedBecause.Length > 0)
            {
                _leftOut.Add($"{key.Key} of {Shown(section, id)}");
            }
            else
            {
                _text.Set(section, id, key.Key, key.Value);
            }
        }

        if (!isWhole)
        {
            var replaced = changed
                .SelectMany(key => FolderReference.KeyOf(section, key.Key)?.InsteadOf ?? [])
                .ToHashSet(StringComparer.Ordinal);
            Gone(section, id, before!.Keys.Select(key => key.Key).Where(key => after.Find(key) is null && !replaced.Contains(key)));
        }
    }

    private void Gone(string section, string id, IEnumerable<string> keys) =>
        _leftOut.AddRange(keys.Select(key => $"{key} of {Shown(section, id)}, which was taken out"));

    private void Crops()
    {
        foreach (var (id, before, after) in Rows(FileNames.Crops, CropFields.Table))
        {
            if (after is null)
            {
                _leftOut.Add($"the crop {id} of {FileNames.Crops}, which was taken out");
            }
            else if (Cells(CropFields.Table, $"the crop {id}", before, after) is { Length: > 0 } cells)
            {
                _text.Crop(id, cells);
            }
        }
    }

    private void Plan()
    {
        // Lines are dropped last: one that is all there is left may not go.
        var gone = new List<string>();
        foreach (var (id, before, after) in Rows(FileNames.Plan, PlanFields.Table))
        {
            if (before is null || id.EndsWith('*'))
            {
                _leftOut.Add($"the line {id} of {FileNames.Plan}{(before is null ? ", which is new" : "")}");
            }
            else if (after is null)
            {
                gone.Add(id);
            }
            else if (Cells(PlanFields.Table, $"the line {id}", before, after) is { Length: > 0 } cells)
            {
                _text.Plan("batch", id, cells);
            }
        }

        gone.ForEach(id => _text.Plan("batch", id, ("drop", "true")));
    }

    private (string Column, string Value)[] Cells(
        FieldTable table,
        string shown,
        IReadOnlyDictionary<string, string>? before,
        IReadOnlyDictionary<string, string> after
    )
    {
        var cells = new List<(string, string)>();
        foreach (var field in table.Fields.Where(field => field.Name is not "id"))
        {
            var value = after.GetValueOrDefault(field.Name, "");
            if (string.Equals(before?.GetValueOrDefault(field.Name, "") ?? "", value, StringComparison.Ordinal))
            {
                continue;
            }

            if (field.FixedBecause.Length > 0)
            {
                _leftOut.Add($"{field.Name} of {shown}");
            }
            else
            {
                cells.Add((field.Name, TomlEdit.Quoted(value)));
            }
        }

        return [.. cells];
    }

    // Rows of both, in the order of the one and then of the other, by id.
    private IEnumerable<(string Id, Dictionary<string, string>? Before, Dictionary<string, string>? After)> Rows(
        string file,
        FieldTable table
    )
    {
        var (before, after) = (Table(_before, file, table), Table(_after, file, table));
        return before
            .Keys.Union(after.Keys, StringComparer.Ordinal)
            .Where(id => id.Length > 0)
            .Select(id => (id, before.GetValueOrDefault(id), after.GetValueOrDefault(id)));
    }

    private static Dictionary<string, Dictionary<string, string>> Table(
        IReadOnlyDictionary<string, string> texts,
        string file,
        FieldTable table
    )
    {
        var rows = new Dictionary<string, Dictionary<string, string>>(StringComparer.Ordinal);
        var outline = CsvOutline.Of(texts.GetValueOrDefault(file, ""));
        foreach (var row in outline.Rows)
        {
            var cells = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var (column, value) in outline.Columns.Zip(row))
            {
                cells[table.Former.TryGetValue(column, out var former) ? former.Now ?? column : column] = value;
            }

            rows.TryAdd(cells.GetValueOrDefault("id", ""), cells);
        }

        return rows;
    }

    private static OrderedDictionary<(string Section, string Id), TomlPart> Parts(IReadOnlyDictionary<string, string> texts)
    {
        var parts = new OrderedDictionary<(string, string), TomlPart>();
        foreach (var part in TomlOutline.Of(texts.GetValueOrDefault(FileNames.Site, "")).Parts)
        {
            var id = IsListed(part.Section) ? part.Find("id")?.Plain ?? FormattableString.Invariant($"{Nameless}{part.Entry}") : "";
            parts.TryAdd((part.Section, id), part);
        }

        return parts;
    }

    private static bool IsListed(string section) =>
        FolderReference.Site.Any(table =>
            string.Equals(table.Section, section, StringComparison.Ordinal) && table.Heading.StartsWith("[[", StringComparison.Ordinal)
        );

    private static bool IsNameless(string id) => id.StartsWith(Nameless);

    private static (string, string) Plainly(TomlKey key) => (key.Key, key.Value);

    private static string Shown(string section, string id) =>
        IsNameless(id) ? $"an entry of [[{section}]] that has no id"
        : id.Length > 0 ? $"the {section} {id}"
        : $"[{section}]";

    private static bool IsSame(TomlKey? one, TomlKey? other) => string.Equals(one?.Value, other?.Value, StringComparison.Ordinal);
}
