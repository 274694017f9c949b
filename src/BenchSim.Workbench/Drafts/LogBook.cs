using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;

namespace BenchSim.Workbench.Drafts;

/// <summary>Lines written into the log together, as one thing that was done.</summary>
/// <param name="Id">What whoever sent them calls them, so that none counts twice.</param>
/// <param name="Lines">The lines as they stand in log.csv.</param>
/// <param name="Said">What was done, in a few words.</param>
internal sealed record Written(string Id, ImmutableArray<string> Lines, string Said);

/// <summary>
/// Writes what was done into log.csv at once: the log is of what happened, whatever try is looked at. What is sent a second time, as after
/// a link was lost, is not written a second time. Safe for use by several threads.
/// </summary>
/// <param name="folder">The folder.</param>
/// <param name="kept">Keeps what does not change from one opening of it to the next.</param>
internal sealed class LogBook(OpenFolder folder, KeptOpenings kept)
{
    /// <summary>Most lines that are written together.</summary>
    public const int MostLines = 200;

    private const string File = Journal.Folder + "/log-entries.jsonl";
    private const string Header = "date,batch,what,trays,flats,from,space,count,of,by,note\n";
    private const int LongestId = 64;
    private const int MostSaid = 120;

    private readonly Lock _gate = new();

    /// <summary>The last lines written here that still stand, the newest first.</summary>
    /// <param name="most">At most so many.</param>
    public ImmutableArray<Written> Newest(int most)
    {
        lock (_gate)
        {
            var lines = Lines(Text() ?? "").ToHashSet(StringComparer.Ordinal);
            return [.. Entries().Where(entry => entry.Lines.All(lines.Contains)).Reverse().Take(most)];
        }
    }

    /// <summary>Writes lines, all or none.</summary>
    /// <param name="id">What they are called.</param>
    /// <param name="said">What was done, in a few words.</param>
    /// <param name="rows">The cells of each line by column.</param>
    /// <returns>Why they were not written; null when they were, now or before.</returns>
    public NotMade? Write(string id, string said, IReadOnlyList<ImmutableSortedDictionary<string, string>> rows)
    {
        if (!IsId(id) || rows.Count is 0 or > MostLines)
        {
            return new NotMade("This cannot be written into the log.", false);
        }

        if (rows.Any(row => row.Values.Any(cell => cell.AsSpan().ContainsAny('\n', '\r'))))
        {
            return new NotMade("Write it in one line.", false);
        }

        lock (_gate)
        {
            var before = Text() ?? Header;
            var standing = Lines(before).ToHashSet(StringComparer.Ordinal);
            if (Entries().Any(entry => string.Equals(entry.Id, id, StringComparison.Ordinal) && entry.Lines.All(standing.Contains)))
            {
                return null;
            }

            var texts = Texts.None.SetItem(FileNames.Log, before);
            foreach (var row in rows)
            {
                var add = new Change(ChangeKind.AddRow)
                {
                    File = FileNames.Log,
                    Row = CsvEdit.Rows(texts[FileNames.Log]),
                    Values = row,
                };
                texts = Changing.Make(texts, add, out var fault);
                if (fault is not null)
                {
                    return fault;
                }
            }

            var after = texts[FileNames.Log];
            if (NewFault(before, after) is { } wrong)
            {
                return new NotMade($"Not written: {wrong.What}; {wrong.Instead}.", false);
            }

            ImmutableArray<string> lines = [.. Lines(after).TakeLast(rows.Count)];
            return Try(() =>
            {
                Note(new Written(id, lines, said.Length > MostSaid ? said[..MostSaid] : said));
                folder.Write(FileNames.Log, after);
            });
        }
    }

    /// <summary>Takes lines that were written here out of the log again.</summary>
    /// <param name="id">What they are called.</param>
    /// <returns>Why they were not taken out; null when they were.</returns>
    public NotMade? TakeBack(string id)
    {
        lock (_gate)
        {
            var before = Text() ?? "";
            var after = before;
            var entry = Entries().LastOrDefault(entry => string.Equals(entry.Id, id, StringComparison.Ordinal));
            foreach (var line in entry?.Lines.Reverse() ?? [])
            {
                after = after is null ? null : Without(after, line);
            }

            if (entry is null || after is null)
            {
                return new NotMade("These lines no longer stand in the log as they were written.", true);
            }

            return NewFault(before, after) is { } wrong
                ? new NotMade($"Not taken back, as other lines build on it: {wrong.What}; {wrong.Instead}.", false)
                : Try(() => folder.Write(FileNames.Log, after));
        }
    }

    private static NotMade? Try(Action write)
    {
        try
        {
            write();
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new NotMade($"The disk or the system refused, so this was not done: {failure.Message}", false);
        }
    }

    private static bool IsId(string id) =>
        id.Length is > 0 and <= LongestId && id.All(each => char.IsAsciiLetterOrDigit(each) || each == '-');

    private string? Text() => folder.TextOf(FileNames.Log);

    private static string[] Lines(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');

    // The text without the last such line; null where there is none.
    private static string? Without(string text, string line)
    {
        for (var at = text.LastIndexOf(line, StringComparison.Ordinal); at >= 0; at = LastBefore(text, line, at))
        {
            var end = at + line.Length;
            if ((at == 0 || text[at - 1] is '\n' or '\r') && (end == text.Length || text[end] is '\n' or '\r'))
            {
                end += text.AsSpan(end).StartsWith("\r\n") ? 2 : Math.Min(1, text.Length - end);
                return text.Remove(at, end - at);
            }
        }

        return null;
    }

    private static int LastBefore(string text, string line, int at) =>
        at == 0 ? -1 : text.LastIndexOf(line, at + line.Length - 2, StringComparison.Ordinal);

    // The first fault that the change brings; null for none.
    private Fault? NewFault(string before, string after)
    {
        var old = Faults(before).ToHashSet();
        return Faults(after).FirstOrDefault(fault => !old.Contains(fault));
    }

    private ImmutableArray<Fault> Faults(string log)
    {
        try
        {
            folder.Source(folder.ReadTexts().SetItem(FileNames.Log, log), kept).Open();
            return [];
        }
        catch (FaultsFoundException found)
        {
            return found.Faults;
        }
    }

    private void Note(Written entry)
    {
        Directory.CreateDirectory(folder.PathOf(Journal.Folder));
        using var file = new FileStream(folder.PathOf(File), FileMode.Append, FileAccess.Write, FileShare.Read);
        file.Write(Encoding.UTF8.GetBytes(JsonSerializer.Serialize(entry, WrittenContext.Default.Written) + "\n"));
        file.Flush(flushToDisk: true);
    }

    private IEnumerable<Written> Entries()
    {
        foreach (var line in (folder.TextOf(File) ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Written? entry = null;
            try
            {
                entry = JsonSerializer.Deserialize(line, WrittenContext.Default.Written);
            }
            catch (JsonException)
            {
                // A line that was cut off was never acknowledged.
            }

            if (entry is { Id: not null, Said: not null, Lines.IsDefaultOrEmpty: false })
            {
                yield return entry;
            }
        }
    }
}

/// <summary>The JSON of what was written, made when the program is compiled.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(Written))]
internal sealed partial class WrittenContext : JsonSerializerContext;
