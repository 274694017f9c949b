using System.Globalization;
using System.Text;
using BenchSim.Folder.Editing;

namespace BenchSim.Folder.Variants;

/// <summary>
/// Writes a variant file: what is said of it as a whole, keys of houses, spaces and sections, cells of crops, then changes of lines of the
/// plan. A key that is set twice keeps its last value.
/// </summary>
public sealed class VariantText
{
    // In the order of the file: entries by section and id, an empty id for a section in single brackets.
    private readonly List<(string Section, string Id, List<(string Key, string Value)> Keys)> _entries = [];
    private readonly List<List<(string Key, string Value)>> _plan = [];
    private readonly List<(string Crop, List<(string Key, string Value)> Keys)> _crops = [];
    private readonly List<string> _removed = [];
    private bool _isPlannedAnew;

    /// <summary>Whether nothing is changed.</summary>
    public bool IsEmpty => _entries.Count + _plan.Count + _crops.Count + _removed.Count == 0;

    /// <summary>A date as TOML.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A whole number as TOML.</summary>
    public static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A list of texts as TOML.</summary>
    public static string List(IEnumerable<string> texts) => $"[{string.Join(", ", texts.Select(TomlEdit.Quoted))}]";

    /// <summary>Sets a key of a section in single brackets, such as [rules].</summary>
    /// <param name="section">Name of the section.</param>
    /// <param name="key">Key.</param>
    /// <param name="value">Value as TOML.</param>
    public VariantText Set(string section, string key, string value) => Set(section, "", key, value);

    /// <summary>Sets a key of a house or space.</summary>
    /// <param name="section">"house" or "space".</param>
    /// <param name="id">Its id; empty for a section in single brackets.</param>
    /// <param name="key">Key.</param>
    /// <param name="value">Value as TOML.</param>
    public VariantText Set(string section, string id, string key, string value)
    {
        var at = _entries.FindIndex(entry =>
            string.Equals(entry.Section, section, StringComparison.Ordinal) && string.Equals(entry.Id, id, StringComparison.Ordinal)
        );
        if (at < 0)
        {
            at = _entries.Count;
            _entries.Add((section, id, []));
        }

        var keys = _entries[at].Keys;
        keys.RemoveAll(each => string.Equals(each.Key, key, StringComparison.Ordinal));
        keys.Add((key, value));
        return this;
    }

    /// <summary>Plans it anew.</summary>
    public VariantText Replan()
    {
        _isPlannedAnew = true;
        return this;
    }

    /// <summary>Takes a house or space away.</summary>
    /// <param name="id">Its id.</param>
    public VariantText Remove(string id)
    {
        _removed.Add(id);
        return this;
    }

    /// <summary>Changes cells of a crop.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="keys">Columns with their values as TOML.</param>
    public VariantText Crop(string id, params IEnumerable<(string Key, string Value)> keys)
    {
        _crops.Add((id, [.. keys]));
        return this;
    }

    /// <summary>Changes lines of the plan, after all changes before it.</summary>
    /// <param name="selector">"batch" or "crop".</param>
    /// <param name="name">Which.</param>
    /// <param name="keys">Columns with their values as TOML.</param>
    public VariantText Plan(string selector, string name, params IEnumerable<(string Key, string Value)> keys)
    {
        _plan.Add([(selector, TomlEdit.Quoted(name)), .. keys]);
        return this;
    }

    /// <summary>The file.</summary>
    /// <param name="comments">What stands on top, a line each.</param>
    public string Write(params IEnumerable<string> comments)
    {
        var text = new StringBuilder();
        foreach (var comment in comments)
        {
            text.Append("# ").Append(comment).Append('\n');
        }

        text.Append(_isPlannedAnew ? "replan = true\n" : "");
        text.Append(_removed.Count > 0 ? $"remove = {List(_removed)}\n" : "");
        foreach (var (section, id, keys) in _entries)
        {
            Append(text, id.Length > 0 ? $"[[{section}]]\nid = {TomlEdit.Quoted(id)}" : $"[{section}]", keys);
        }

        foreach (var (crop, keys) in _crops)
        {
            Append(text, $"[crops.{TomlEdit.Quoted(crop)}]", keys);
        }

        foreach (var keys in _plan)
        {
            Append(text, "[[plan]]", keys);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, string heading, List<(string Key, string Value)> keys)
    {
        text.Append(text.Length == 0 ? "" : "\n").Append(heading).Append('\n');
        foreach (var (key, value) in keys)
        {
            text.Append(key).Append(" = ").Append(value).Append('\n');
        }
    }
}
