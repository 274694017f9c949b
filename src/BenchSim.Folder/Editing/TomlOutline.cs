using System.Collections.Immutable;
using BenchSim.Season.Values;
using Tomlyn.Syntax;

namespace BenchSim.Folder.Editing;

/// <summary>A key of a TOML text.</summary>
/// <param name="Key">Its name.</param>
/// <param name="Value">Its value as it is written.</param>
/// <param name="Line">Line of the key, from 1.</param>
public sealed record TomlKey(string Key, string Value, int Line)
{
    /// <summary>The value as people read it: a text without its quotation marks, a list without its brackets.</summary>
    public string Plain => TomlEdit.Plain(Value);
}

/// <summary>A section of a TOML text, or one entry of those in double brackets.</summary>
/// <param name="Section">Name of the section.</param>
/// <param name="Entry">Number of the entry, from 0.</param>
/// <param name="Line">Line of its heading, from 1.</param>
/// <param name="Keys">Its keys in the order of the text.</param>
public sealed record TomlPart(string Section, int Entry, int Line, ImmutableArray<TomlKey> Keys)
{
    /// <summary>A key; null where it is not written.</summary>
    public TomlKey? Find(string key) => Keys.FirstOrDefault(each => string.Equals(each.Key, key, StringComparison.Ordinal));
}

/// <summary>The sections and keys of a TOML text, and which of them a fault means.</summary>
/// <param name="Parts">The sections in the order of the text; none where it cannot be read.</param>
/// <param name="IsWhole">Whether the text could be read.</param>
public sealed record TomlOutline(ImmutableArray<TomlPart> Parts, bool IsWhole)
{
    /// <summary>Keys above the first section.</summary>
    public ImmutableArray<string> Root { get; init; } = [];

    /// <summary>Outlines a text; there are no sections in one that cannot be read.</summary>
    public static TomlOutline Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (TomlEdit.Parse(text) is not { } document)
        {
            return new TomlOutline([], false);
        }

        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        var parts = ImmutableArray.CreateBuilder<TomlPart>();
        foreach (var table in document.Tables)
        {
            var section = table.Name?.ToString().Trim() ?? "";
            var entry = counts.GetValueOrDefault(section);
            counts[section] = entry + 1;
            parts.Add(new TomlPart(section, entry, table.Span.Start.Line + 1, [.. Keys(text, table)]));
        }

        return new TomlOutline(parts.ToImmutable(), true) { Root = [.. document.KeyValues.Select(TomlEdit.NameOf)] };
    }

    /// <summary>The section and key that a place in the file means; the key is null for the section as a whole.</summary>
    /// <param name="place">A place in the file.</param>
    public (TomlPart Part, string? Key)? Find(SourcePlace place) =>
        place.Line > 0 && Parts.LastOrDefault(part => part.Line <= place.Line) is { } part
            ? (part, part.Keys.LastOrDefault(key => key.Line <= place.Line)?.Key)
            : null;

    private static IEnumerable<TomlKey> Keys(string text, TableSyntaxBase table) =>
        from item in table.Items.OfType<KeyValueSyntax>()
        where item.Value is not null
        select new TomlKey(TomlEdit.NameOf(item), TomlEdit.TextOf(text, item.Value!), item.Span.Start.Line + 1);
}
