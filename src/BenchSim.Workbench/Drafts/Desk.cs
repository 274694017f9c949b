using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;

namespace BenchSim.Workbench.Drafts;

/// <summary>
/// The texts of a folder and the tries of changes to them. What is acknowledged is on disk; the files change only when somebody puts a try
/// into them. Safe for use by several threads.
/// </summary>
internal sealed partial class Desk : IDisposable
{
    /// <summary>The longest name of a try.</summary>
    public const int LongestName = 40;

    private readonly Lock _gate = new();
    private readonly Journal? _journal;
    private DeskState _state;

    /// <summary>Opens a folder, with the tries that were left on its desk.</summary>
    /// <param name="directory">The folder.</param>
    /// <exception cref="RefusedException">There is no such folder, or another workbench has it open.</exception>
    public Desk(string directory)
    {
        Folder = new OpenFolder(directory);
        _state = new DeskState(Folder.ReadTexts(), [], 0);
        try
        {
            _journal = Journal.Open(Folder, out var entries);
            TakeUp(entries);
            _journal.RenewLong(_state.Entries());
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            TakeUp(Journal.Peek(Folder));
            ReadOnly = $"This folder cannot be written to, so nothing can be changed here: {failure.Message}";
        }

        TakeFiles(Folder.ReadTexts());
    }

    /// <summary>Told when anything has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The folder.</summary>
    public OpenFolder Folder { get; }

    /// <summary>Why nothing can be changed; null where it can.</summary>
    public string? ReadOnly { get; }

    /// <summary>All there is on the desk now.</summary>
    public DeskState State
    {
        get
        {
            lock (_gate)
            {
                return _state;
            }
        }
    }

    /// <summary>Makes changes together, as one step of the try that is looked at. Changes of the files begin a try.</summary>
    /// <param name="what">What is changed, in a few words.</param>
    /// <param name="changes">The changes.</param>
    /// <returns>Why none of them was made; null when all were, and are on disk.</returns>
    public NotMade? Edit(string what, IReadOnlyList<Change> changes)
    {
        lock (_gate)
        {
            var now = Preview(changes, out var fault);
            if (fault is not null || Texts.Differing(_state.Now, now).IsEmpty)
            {
                return fault;
            }

            var (id, begin) = _state.Looked is { } looked ? (looked.Id, (Entry?)null) : Begin();
            var step = new Entry(Deed.Step, id) { Say = PlainText.Short(what, 80), Splices = Splice.Between(_state.Now, now) };
            return begin is null ? Add(step) : Add(begin, step);
        }
    }

    /// <summary>The texts as changes would make them, without making them.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="fault">Why they cannot be made; null when they can.</param>
    public ImmutableSortedDictionary<string, string> Preview(IReadOnlyList<Change> changes, out NotMade? fault) =>
        Made(State.Now, changes, out fault);

    private ImmutableSortedDictionary<string, string> Made(
        ImmutableSortedDictionary<string, string> now,
        IReadOnlyList<Change> changes,
        out NotMade? fault
    )
    {
        fault = null;
        foreach (var change in changes)
        {
            var file = Changing.FileOf(change);
            if (!now.ContainsKey(file) && InWorkbook(file) is { } why)
            {
                fault = new NotMade(why, false);
                break;
            }

            now = Changing.Make(now, change, out fault);
            if (fault is not null)
            {
                break;
            }
        }

        return now;
    }

    /// <summary>Why a table cannot be changed here that stands in a workbook, and what to do; null where it does not.</summary>
    /// <param name="table">Name of the table as a CSV file.</param>
    public string? InWorkbook(string table) =>
        Folder.WorkbookOf(table) is null
            ? null
            : $"{FileNames.WorkbookOf(table)} is changed in your spreadsheet: save it there, and this page takes it in. "
                + $"To change it here, save the sheet as \"CSV UTF-8\" under the name {table} and take the workbook out of the folder.";

    /// <summary>Takes the last step of the try back, or makes it again.</summary>
    public NotMade? Undo(bool again)
    {
        lock (_gate)
        {
            return _state.Looked is { } looked && (again ? looked.Undone : looked.Done).Count > 0
                ? Add(new Entry(again ? Deed.Redo : Deed.Undo, looked.Id))
                : null;
        }
    }

    /// <summary>Begins a try from what is looked at.</summary>
    public NotMade? BeginTry()
    {
        lock (_gate)
        {
            return Add(Begin().Entry);
        }
    }

    /// <summary>Begins a try from other texts, with changes as its first step.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The texts of the files that it is a change of.</param>
    /// <param name="texts">The texts that it begins with.</param>
    /// <param name="what">What is changed, in a few words.</param>
    /// <param name="changes">The changes.</param>
    public NotMade? BeginTry(
        string name,
        ImmutableSortedDictionary<string, string> from,
        ImmutableSortedDictionary<string, string> texts,
        string what,
        IReadOnlyList<Change> changes
    )
    {
        lock (_gate)
        {
            var now = Made(texts, changes, out var fault);
            return fault ?? BeginTry(name, from, texts, what, now);
        }
    }

    /// <summary>Begins a try from the files as they were read, with another text of one of them as its first step.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="files">The texts of the files.</param>
    /// <param name="what">What is changed, in a few words.</param>
    /// <param name="file">The file.</param>
    /// <param name="text">Its text.</param>
    public NotMade? BeginTry(string name, ImmutableSortedDictionary<string, string> files, string what, string file, string text)
    {
        lock (_gate)
        {
            return BeginTry(name, files, files, what, files.With(file, text));
        }
    }

    private NotMade? BeginTry(
        string name,
        ImmutableSortedDictionary<string, string> from,
        ImmutableSortedDictionary<string, string> texts,
        string what,
        ImmutableSortedDictionary<string, string> now
    )
    {
        var (id, begin) = Begin();
        var step = new Entry(Deed.Step, id) { Say = PlainText.Short(what, 80), Splices = Splice.Between(texts, now) };
        var fault = Add(begin with { Say = name, Files = from, Now = texts }, step);
        TakeFiles(_state.Files);
        return fault;
    }

    /// <summary>Looks at a try, or with 0 at the files.</summary>
    public NotMade? Look(int id)
    {
        lock (_gate)
        {
            var look = new Entry(Deed.Look, id);
            if (ReadOnly is null || _state.After(look) is not { } looked)
            {
                return id == _state.Current ? null : Add(look);
            }

            _state = looked;
            Changed?.Invoke(this, EventArgs.Empty);
            return null;
        }
    }

    /// <summary>Gives a try another name.</summary>
    public NotMade? Name(int id, string name)
    {
        lock (_gate)
        {
            var plain = PlainText.Short(name, LongestName);
            return plain.Length == 0 ? new NotMade("Write a name.", false) : Add(new Entry(Deed.Name, id) { Say = plain });
        }
    }

    /// <summary>Lets a try go.</summary>
    public NotMade? Drop(int id)
    {
        lock (_gate)
        {
            return Add(new Entry(Deed.Drop, id));
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        lock (_gate)
        {
            _journal?.Dispose();
        }
    }

    private static NotMade Refused(Exception failure) =>
        new($"The disk or the system refused, so this was not done: {failure.Message}", false);

    private void TakeUp(ImmutableArray<Entry> entries)
    {
        foreach (var entry in entries)
        {
            _state = _state.After(entry) ?? _state;
        }
    }

    private (int Id, Entry Entry) Begin()
    {
        var id = _state.LastId + 1;
        var files = _state.Looked?.From ?? _state.Files;
        var entry = new Entry(Deed.Begin, id)
        {
            Say = "Try " + id.ToString(CultureInfo.InvariantCulture),
            Files = files,
            Now = _state.Looked?.Now,
        };
        return (id, entry);
    }

    private NotMade? Add(params ReadOnlySpan<Entry> entries)
    {
        if (ReadOnly is not null || _journal is null)
        {
            return new NotMade(ReadOnly ?? "Nothing can be changed here.", false);
        }

        var state = _state;
        foreach (var entry in entries)
        {
            if (state.After(entry) is not { } after)
            {
                return new NotMade("What you changed is no longer there.", true);
            }

            state = after;
        }

        try
        {
            _journal.Add(entries, state.Entries());
        }
        catch (Exception failure)
            when (failure is IOException or UnauthorizedAccessException or ObjectDisposedException or RefusedException)
        {
            return Refused(failure);
        }

        _state = state;
        Changed?.Invoke(this, EventArgs.Empty);
        return null;
    }
}
