using BenchSim.Season.Values;

namespace BenchSim.Folder.Toml;

/// <summary>A value of a TOML text, with its place.</summary>
/// <param name="Place">Where it begins.</param>
internal abstract record TomlValue(SourcePlace Place);

/// <summary>A text, number, date, time or truth value, as text.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Text">The text between the quotes, or the number, date or truth value in plain form.</param>
internal sealed record TomlScalar(SourcePlace Place, string Text) : TomlValue(Place);

/// <summary>A list of values or, for <c>[[name]]</c>, of tables.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Items">Its values.</param>
internal sealed record TomlList(SourcePlace Place, List<TomlValue> Items) : TomlValue(Place);

/// <summary>A table.</summary>
/// <param name="Place">Where it begins: its header, or the brace of an inline table.</param>
/// <param name="Entries">Its keys in the order of the file, each once.</param>
internal sealed record TomlTable(SourcePlace Place, Dictionary<string, TomlEntry> Entries) : TomlValue(Place)
{
    /// <summary>An empty table.</summary>
    public TomlTable(SourcePlace place)
        : this(place, new Dictionary<string, TomlEntry>(StringComparer.Ordinal)) { }
}

/// <summary>A key and its value.</summary>
/// <param name="KeyPlace">Where the key stands.</param>
/// <param name="Value">The value.</param>
internal sealed record TomlEntry(SourcePlace KeyPlace, TomlValue Value);
