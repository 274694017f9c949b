using System.Globalization;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BenchSim.Folder.Toml;

/// <summary>
/// Reads a TOML text into tables with places. The syntax tree is walked instead of a serializer because a serializer stops at the first
/// fault, or takes doubled and unknown keys in silence.
/// </summary>
internal sealed class TomlText
{
    private readonly FileText _file;
    private readonly TomlTable _root;
    private readonly HashSet<int> _badLines;

    private TomlText(FileText file, HashSet<int> badLines)
    {
        _file = file;
        _badLines = badLines;
        _root = new TomlTable(new SourcePlace(file.Name, 1, 1));
    }

    /// <summary>Reads a text. What cannot be read is a fault and is left out of the tables.</summary>
    /// <param name="file">The text.</param>
    /// <param name="faults">Takes the faults.</param>
    /// <param name="isWhole">False when the grammar was broken, so that a key that is missing may only be unreadable.</param>
    public static TomlTable Read(FileText file, FaultList faults, out bool isWhole)
    {
        if (DeepBracket(file) is { } place)
        {
            faults.Add(place, "brackets are nested too deep here", "close the lists and tables that are open");
            isWhole = false;
            return new TomlTable(new SourcePlace(file.Name, 1, 1));
        }

        file = MendedLines.Of(file, faults, out var isMended);
        var document = Parse(file);
        var before = faults.Count;
        var badLines = TomlFaults.Report(file, document.Diagnostics, faults);
        isWhole = isMended && faults.Count == before;
        var text = new TomlText(file, badLines);
        text.AddAll(text._root, document.KeyValues);
        foreach (var table in document.Tables)
        {
            text.AddTable(table);
        }

        return text._root;
    }

    // A text that ends within an escape, such as a file cut off after a backslash, ends the parser with an error of its own; with a line
    // end after it, it is a finding.
    private static DocumentSyntax Parse(FileText file) =>
        SyntaxParser.Parse(file.Text.EndsWith('\n') ? file.Text : file.Text + "\n", file.Name, true);

    // The parser calls itself for each bracket inside a bracket, and no program outlives the end of its stack. A site nests three deep.
    // Brackets in texts and comments are counted too: a hundred of them that are never closed are not expected.
    private static SourcePlace? DeepBracket(FileText file)
    {
        var (depth, line, column) = (0, 1, 0);
        foreach (var character in file.Text)
        {
            (line, column) = character == '\n' ? (line + 1, 0) : (line, column + (char.IsLowSurrogate(character) ? 0 : 1));
            depth = Math.Max(
                0,
                depth
                    + (
                        character is '[' or '{' ? 1
                        : character is ']' or '}' ? -1
                        : 0
                    )
            );
            if (depth > 100)
            {
                return new SourcePlace(file.Name, line, column);
            }
        }

        return null;
    }

    private void AddTable(TableSyntaxBase table)
    {
        if (table.Name is not { } name || IsBad(table) || PathOf(name) is not { } path || Descend(path, name) is not { } parent)
        {
            return;
        }

        var here = new TomlTable(PlaceOf(table));
        var last = path[^1];
        if (table is TableArraySyntax)
        {
            if (!parent.Entries.TryGetValue(last, out var entry))
            {
                parent.Entries[last] = entry = new TomlEntry(PlaceOf(name), new TomlList(PlaceOf(table), []));
            }

            (entry.Value as TomlList)?.Items.Add(here);
        }
        else if (!parent.Entries.TryAdd(last, new TomlEntry(PlaceOf(name), here)) && parent.Entries[last].Value is TomlTable made)
        {
            // "[a.b]" before "[a]" made a; a doubled header was reported and its keys are read all the same.
            here = made;
        }

        AddAll(here, table.Items);
    }

    private void AddAll(TomlTable table, IEnumerable<SyntaxNode> items)
    {
        foreach (var item in items)
        {
            if (
                item is KeyValueSyntax { Key: { } key, Value: { } value }
                && !IsBad(item)
                && PathOf(key) is { } path
                && Descend(table, path, key) is { } parent
                && ValueOf(value) is { } read
            )
            {
                parent.Entries.TryAdd(path[^1], new TomlEntry(PlaceOf(key), read));
            }
        }
    }

    private TomlTable? Descend(IReadOnlyList<string> path, SyntaxNode name) => Descend(_root, path, name);

    // Walks to the table that holds the last name of a dotted path, through the last item of a list of tables.
    private TomlTable? Descend(TomlTable from, IReadOnlyList<string> path, SyntaxNode name)
    {
        var table = from;
        foreach (var step in path.Take(path.Count - 1))
        {
            if (!table.Entries.TryGetValue(step, out var entry))
            {
                table.Entries[step] = entry = new TomlEntry(PlaceOf(name), new TomlTable(PlaceOf(name)));
            }

            var next = entry.Value is TomlList { Items: [.., TomlTable last] } ? last : entry.Value as TomlTable;
            if (next is null)
            {
                return null;
            }

            table = next;
        }

        return table;
    }

    private TomlValue? ValueOf(ValueSyntax value)
    {
        var place = PlaceOf(value);
        switch (value)
        {
            case StringValueSyntax text:
                return new TomlScalar(place, (text.Value ?? "").Trim());
            case IntegerValueSyntax whole:
                return new TomlScalar(place, whole.Value.ToString(CultureInfo.InvariantCulture));
            case FloatValueSyntax number:
                return new TomlScalar(place, TextOf(number));
            case BooleanValueSyntax truth:
                return new TomlScalar(place, truth.Value ? "true" : "false");
            case DateTimeValueSyntax date:
                return new TomlScalar(place, date.Token?.Text?.Trim() ?? "");
            case ArraySyntax list:
                return new TomlList(
                    place,
                    [.. list.Items.Select(item => item.Value).OfType<ValueSyntax>().Select(ValueOf).OfType<TomlValue>()]
                );
            case InlineTableSyntax inline:
                var table = new TomlTable(place);
                AddAll(table, inline.Items.Select(item => item.KeyValue).OfType<KeyValueSyntax>());
                return table;
            default:
                return null;
        }
    }

    // A fraction is kept as it was written, so that a message can show it; an exponent is worked out.
    private static string TextOf(FloatValueSyntax number)
    {
        var written = number.Token?.Text?.Trim().Replace("_", "", StringComparison.Ordinal) ?? "";
        var isPlain = written.Length > 0 && written.All(character => char.IsAsciiDigit(character) || character is '.' or '-' or '+');
        return isPlain ? written : number.Value.ToString("0.################", CultureInfo.InvariantCulture);
    }

    private static List<string>? PathOf(KeySyntax key)
    {
        var path = new List<string?> { NameOf(key.Key) };
        path.AddRange(key.DotKeys.Select(dotted => NameOf(dotted.Key)));
        return path.Contains(null) ? null : path.OfType<string>().ToList();
    }

    private static string? NameOf(BareKeyOrStringValueSyntax? key) =>
        key switch
        {
            BareKeySyntax bare => bare.Key?.Text?.Trim(),
            StringValueSyntax text => text.Value,
            _ => null,
        };

    private bool IsBad(SyntaxNode node) => _badLines.Contains(node.Span.Start.Line);

    private SourcePlace PlaceOf(SyntaxNode node) => new(_file.Name, node.Span.Start.Line + 1, node.Span.Start.Column + 1);
}
