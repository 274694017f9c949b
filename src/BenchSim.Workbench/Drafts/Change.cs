using System.Collections.Immutable;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;

namespace BenchSim.Workbench.Drafts;

/// <summary>What a change is made to.</summary>
internal enum ChangeKind
{
    /// <summary>A cell of a table.</summary>
    Cell,

    /// <summary>A key of site.toml.</summary>
    Key,

    /// <summary>A row of a table is put in.</summary>
    AddRow,

    /// <summary>A row of a table is taken out.</summary>
    RemoveRow,

    /// <summary>An entry in double brackets is put in.</summary>
    AddEntry,

    /// <summary>An entry in double brackets is taken out.</summary>
    RemoveEntry,
}

/// <summary>
/// One change of the texts, as somebody asks for it who sees what stood there. Its properties can be set, since one that is only set as it
/// is made would lose its default where JSON leaves it out.
/// </summary>
/// <param name="Do">What it is made to.</param>
internal sealed record Change(ChangeKind Do)
{
    /// <summary>File of a table.</summary>
    public string File { get; set; } = FileNames.Plan;

    /// <summary>Row, from 0.</summary>
    public int Row { get; set; }

    /// <summary>Column.</summary>
    public string Column { get; set; } = "";

    /// <summary>Section of site.toml.</summary>
    public string Section { get; set; } = "";

    /// <summary>Number of the entry of the section, from 0.</summary>
    public int Entry { get; set; }

    /// <summary>Key of the section.</summary>
    public string Key { get; set; } = "";

    /// <summary>
    /// What stood there as it was seen, so that nothing is written over that was not: the cell, the value, or of a row or an entry its id.
    /// Null where it does not matter.
    /// </summary>
    public string? Was { get; set; }

    /// <summary>What is to stand there; nothing takes a key out.</summary>
    public string Value { get; set; } = "";

    /// <summary>The cells of a row, or the keys of an entry.</summary>
    public ImmutableSortedDictionary<string, string> Values { get; set; } = Texts.None;

    /// <summary>Whether nothing is missing: JSON may hold a null where no null may be.</summary>
    public static bool IsWhole(Change? change) =>
        change is { File: not null, Column: not null, Section: not null, Key: not null, Value: not null, Values: not null }
        && change.Values.Values.All(value => value is not null);
}

/// <summary>Why a change was not made.</summary>
/// <param name="Why">In a sentence.</param>
/// <param name="IsConflict">Whether something else stands there than was seen.</param>
internal sealed record NotMade(string Why, bool IsConflict);

/// <summary>Makes changes of texts, and leaves every other character as it is.</summary>
internal static class Changing
{
    /// <summary>The texts with a change.</summary>
    /// <param name="texts">The texts.</param>
    /// <param name="change">The change.</param>
    /// <param name="fault">Why it was not made; null when it was.</param>
    public static ImmutableSortedDictionary<string, string> Make(
        ImmutableSortedDictionary<string, string> texts,
        Change change,
        out NotMade? fault
    )
    {
        fault = null;
        var file = FileOf(change);
        if (texts.Of(file) is not { } text)
        {
            fault = new NotMade($"There is no {file} to change.", false);
            return texts;
        }

        if (change.Was is { } was && Stands(text, change) is var stands && !string.Equals(stands, was, StringComparison.Ordinal))
        {
            fault = new NotMade(
                stands is null ? "What you changed is no longer there." : $"Meanwhile \"{stands}\" stands there, not \"{was}\".",
                true
            );
            return texts;
        }

        var edit = Made(file, text, change);
        if (edit.Fault is { } refused)
        {
            fault = new NotMade($"{refused.What}; {refused.Instead}", false);
        }

        return edit.Fault is null ? texts.With(file, edit.Text) : texts;
    }

    /// <summary>The file that a change is made to.</summary>
    public static string FileOf(Change change) =>
        change.Do is ChangeKind.Key or ChangeKind.AddEntry or ChangeKind.RemoveEntry ? FileNames.Site : change.File;

    private static string? Stands(string text, Change change) =>
        change.Do switch
        {
            ChangeKind.Cell => CsvEdit.Cell(text, change.Row, change.Column) ?? (change.Row < CsvEdit.Rows(text) ? "" : null),
            ChangeKind.RemoveRow => CsvEdit.Cell(text, change.Row, "id"),
            ChangeKind.Key => TomlEdit.Value(text, change.Section, change.Entry, change.Key) is { } value ? TomlEdit.Plain(value) : "",
            ChangeKind.RemoveEntry => TomlEdit.Value(text, change.Section, change.Entry, "id") is { } id ? TomlEdit.Plain(id) : null,
            _ => change.Was,
        };

    private static Edit Made(string file, string text, Change change) =>
        change.Do switch
        {
            ChangeKind.Cell => CsvEdit.Set(file, text, change.Row, change.Column, change.Value),
            ChangeKind.AddRow => AddRow(file, text, change),
            ChangeKind.RemoveRow => CsvEdit.Remove(file, text, change.Row),
            ChangeKind.AddEntry => TomlEdit.Add(
                file,
                text,
                change.Section,
                change
                    .Values.OrderBy(pair => PlaceOf(change.Section, pair.Key))
                    .Select(pair => (pair.Key, Written(change.Section, pair.Key, pair.Value)))
            ),
            ChangeKind.RemoveEntry => TomlEdit.RemoveEntry(file, text, change.Section, change.Entry),
            _ => SetKey(file, text, change),
        };

    // A pasted table may have columns that this one has not yet: they are added by the first cell that fills one.
    private static Edit AddRow(string file, string text, Change change)
    {
        var known = CsvOutline.Of(text).Columns;
        var edit = CsvEdit.Insert(
            file,
            text,
            change.Row,
            change
                .Values.Where(pair => known.Contains(pair.Key, StringComparer.Ordinal))
                .ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal)
        );
        foreach (
            var (column, value) in change
                .Values.Where(pair => !known.Contains(pair.Key, StringComparer.Ordinal))
                .OrderBy(pair => PlaceOf(file, pair.Key))
        )
        {
            edit = edit.Fault is null ? CsvEdit.Set(file, edit.Text, change.Row, column, value) : edit;
        }

        return edit;
    }

    private static Edit SetKey(string file, string text, Change change)
    {
        if (change.Value.Trim().Length == 0)
        {
            return TomlEdit.Remove(file, text, change.Section, change.Entry, change.Key);
        }

        // Where a section is not there yet, it begins with this key.
        var outline = TomlOutline.Of(text);
        var written = Written(change.Section, change.Key, change.Value);
        if (outline.IsWhole && change.Entry == 0 && !outline.Parts.Any(part => part.Section == change.Section))
        {
            var end = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
            var front = text.Length == 0 || text.EndsWith('\n') ? "" : end;
            return new Edit($"{text}{front}{end}[{change.Section}]{end}{change.Key} = {written}{end}", null);
        }

        var edit = TomlEdit.Set(file, text, change.Section, change.Entry, change.Key, written);
        foreach (var other in FolderReference.KeyOf(change.Section, change.Key)?.InsteadOf ?? [])
        {
            edit = edit.Fault is null ? TomlEdit.Remove(file, edit.Text, change.Section, change.Entry, other) : edit;
        }

        return edit;
    }

    private static string Written(string section, string key, string value) =>
        FolderReference.KeyOf(section, key) is { } field ? TomlWriting.Of(field.Kind, value.Trim()) : TomlEdit.Quoted(value);

    // As the reference has them, the id first.
    private static int PlaceOf(string section, string key) =>
        FolderReference
            .All.Where(table => string.Equals(table.Section, section, StringComparison.Ordinal))
            .SelectMany(table => table.Names)
            .TakeWhile(name => !string.Equals(name, key, StringComparison.Ordinal))
            .Count();
}
