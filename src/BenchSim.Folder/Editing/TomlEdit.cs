using BenchSim.Folder.Faults;
using BenchSim.Folder.Reference;
using BenchSim.Season.Values;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BenchSim.Folder.Editing;

/// <summary>
/// Changes a key or an entry of a TOML text, site.toml or a variant, and leaves every other character as it is: comments, blank lines,
/// order, line ends and quotation marks. The syntax tree says where, and the text is cut there. A section is named as in the reference
/// ("rules", "space"); of those with double brackets each entry has its number, from 0. A value is TOML as it is written: <c>"60 F"</c>,
/// <c>12</c>.
/// </summary>
public static class TomlEdit
{
    private const string Mark = "\uFEFF";

    /// <summary>A text between quotation marks, as a value.</summary>
    public static string Quoted(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
    }

    /// <summary>A value as people read it: a text without its quotation marks, a list of single values with commas between.</summary>
    /// <param name="value">The value as it is written.</param>
    public static string Plain(string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        if (Parse($"x = {value}")?.KeyValues.FirstOrDefault()?.Value is not { } read)
        {
            return value;
        }

        return read switch
        {
            StringValueSyntax text => text.Value ?? "",
            ArraySyntax { Items: var items } when items.All(item => item.Value is not (ArraySyntax or InlineTableSyntax)) => string.Join(
                ", ",
                items.Select(item => item.Value is StringValueSyntax text ? text.Value ?? "" : item.Value?.ToString().Trim())
            ),
            _ => value,
        };
    }

    /// <summary>Whether a text is one value as TOML writes it, and nothing beside it.</summary>
    public static bool IsValue(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        const string Front = "x = ";
        return Parse(Front + text) is { } document
            && document.KeyValues.Count() == 1
            && !document.Tables.Any()
            && document.KeyValues.First().Value is { } value
            && string.Equals(TextOf(Front + text, value), text, StringComparison.Ordinal);
    }

    /// <summary>The value of a key as it is written; null where it is not.</summary>
    public static string? Value(string text, string section, int entry, string key) =>
        Find(text, section, entry) is { } table && KeyOf(table, key) is { Value: { } value } ? TextOf(text, value) : null;

    /// <summary>Writes the value of a key; one that is not there is added where the reference has it.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The text.</param>
    /// <param name="section">The section.</param>
    /// <param name="entry">Number of the entry; 0 for a section in single brackets.</param>
    /// <param name="key">The key.</param>
    /// <param name="value">The value as it is written.</param>
    public static Edit Set(string file, string text, string section, int entry, string key, string value)
    {
        if (Find(text, section, entry) is not { } table)
        {
            return NotThere(file, text, section, entry);
        }

        if (KeyOf(table, key) is { Value: { } old })
        {
            var (start, end) = SpanOf(text, old);
            return Checked(file, text, text[..start] + value + text[end..]);
        }

        var known = FolderReference.KeysOf(section);
        var after = table
            .Items.OfType<KeyValueSyntax>()
            .LastOrDefault(item => known.IndexOf(NameOf(item)) is >= 0 and var at && at < known.IndexOf(key));
        var line = EndOfLine(text, SpanOf(text, after?.Value ?? (SyntaxNode)table.CloseBracket!).End);
        return Checked(file, text, Inserted(text, line, $"{key} = {value}"));
    }

    /// <summary>Takes a key out, with its line.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The text.</param>
    /// <param name="section">The section.</param>
    /// <param name="entry">Number of the entry; 0 for a section in single brackets.</param>
    /// <param name="key">The key.</param>
    public static Edit Remove(string file, string text, string section, int entry, string key)
    {
        if (Find(text, section, entry) is not { } table)
        {
            return NotThere(file, text, section, entry);
        }

        if (KeyOf(table, key) is not { Key: { } name, Value: { } value })
        {
            return new Edit(text, null);
        }

        return Checked(file, text, text[..StartOfLine(text, SpanOf(text, name).Start)] + text[EndOfLine(text, SpanOf(text, value).End)..]);
    }

    /// <summary>Adds an entry in double brackets behind the last of its kind; at the end of the text where there is none.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The text.</param>
    /// <param name="section">The section.</param>
    /// <param name="keys">Its keys with their values as they are written.</param>
    public static Edit Add(string file, string text, string section, IEnumerable<(string Key, string Value)> keys)
    {
        ArgumentNullException.ThrowIfNull(keys);
        var end = LineEnd(text);
        var lines = string.Concat(keys.Select(pair => $"{pair.Key} = {pair.Value}{end}"));
        var last = Tables(text, section).LastOrDefault();
        var at = last is null ? text.Length : EndOfTable(text, last);
        var front = at > 0 && text[at - 1] is not ('\n' or '\r') ? end + end : end;
        return Checked(file, text, $"{text[..at]}{front}[[{section}]]{end}{lines}{text[at..]}");
    }

    /// <summary>Takes an entry in double brackets out, with its keys and the comments among them.</summary>
    /// <param name="file">Name of the file, for a fault.</param>
    /// <param name="text">The text.</param>
    /// <param name="section">The section.</param>
    /// <param name="entry">Number of the entry.</param>
    public static Edit RemoveEntry(string file, string text, string section, int entry) =>
        Find(text, section, entry) is { } table
            ? Checked(file, text, text[..StartOfLine(text, SpanOf(text, table.OpenBracket!).Start)] + text[EndOfTable(text, table)..])
            : NotThere(file, text, section, entry);

    private static Edit NotThere(string file, string text, string section, int entry) =>
        Edit.Refused(
            text,
            new SourcePlace(file, 0, 0),
            $"there is no entry {entry + 1} of {Words.Quote(section)} that can be changed",
            "mend the faults of the file first, or add the section"
        );

    // A text that can no longer be read is not given back.
    private static Edit Checked(string file, string before, string after) =>
        Parse(after) is null
            ? Edit.Refused(before, new SourcePlace(file, 0, 0), "with this value the file could not be read", "write the value as TOML")
            : new Edit(after, null);

    // A byte order mark is a blank of the same length, so that the places stay.
    internal static DocumentSyntax? Parse(string text)
    {
        var body = text.StartsWith(Mark, StringComparison.Ordinal) ? " " + text[1..] : text;
        var document = SyntaxParser.Parse(body.EndsWith('\n') ? body : body + "\n", "", true);
        return document.HasErrors ? null : document;
    }

    private static IEnumerable<TableSyntaxBase> Tables(string text, string section) =>
        Parse(text)?.Tables.Where(table => string.Equals(table.Name?.ToString().Trim(), section, StringComparison.Ordinal)) ?? [];

    private static TableSyntaxBase? Find(string text, string section, int entry) => Tables(text, section).ElementAtOrDefault(entry);

    private static KeyValueSyntax? KeyOf(TableSyntaxBase table, string key) =>
        table.Items.OfType<KeyValueSyntax>().FirstOrDefault(item => string.Equals(NameOf(item), key, StringComparison.Ordinal));

    internal static string NameOf(KeyValueSyntax item) => item.Key?.ToString().Trim() ?? "";

    internal static string TextOf(string text, SyntaxNode node)
    {
        var (start, end) = SpanOf(text, node);
        return text[start..end];
    }

    // The last place of a span is that of its last character.
    private static (int Start, int End) SpanOf(string text, SyntaxNode node)
    {
        var (start, end) = (node.Span.Start.Offset, Math.Min(node.Span.End.Offset + 1, text.Length));
        while (end > start && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }

        return (start, end);
    }

    private static int StartOfLine(string text, int at) => text.AsSpan(0, at).LastIndexOf('\n') + 1;

    private static int EndOfLine(string text, int at) => text.IndexOf('\n', at) is >= 0 and var end ? end + 1 : text.Length;

    private static int EndOfTable(string text, TableSyntaxBase table)
    {
        var last = table.Items.OfType<KeyValueSyntax>().LastOrDefault()?.Value;
        return EndOfLine(text, SpanOf(text, last ?? (SyntaxNode)table.CloseBracket!).End);
    }

    private static string Inserted(string text, int at, string line)
    {
        var end = LineEnd(text);
        return at > 0 && text[at - 1] != '\n' ? text[..at] + end + line + text[at..] : text[..at] + line + end + text[at..];
    }

    private static string LineEnd(string text) => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
}
