using BenchSim.Folder;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;

namespace BenchSim.Workbench.Drafts;

/// <summary>
/// Files that a scenario is read from and no page changes: workbooks, weather records, and what is no text. Each is kept as long as it
/// stands there as it was, so that nothing made of it is made anew. Safe for use by several threads.
/// </summary>
/// <param name="pathOf">The path of a file; throws where it may not be read.</param>
internal sealed class BesideFiles(Func<string, string> pathOf)
{
    // The tables as workbooks, and the records of the files and of some tries.
    private const int Most = 16;

    private readonly Lock _gate = new();
    private readonly List<Kept> _kept = [];
    private long _changes;

    /// <summary>A file; null where it is not there or cannot be read.</summary>
    /// <param name="name">Name relative to the folder.</param>
    /// <param name="largest">Largest that is read, bytes.</param>
    public InputFile? Read(string name, long largest) => Find(name, largest).File;

    /// <summary>The table of a workbook; null where it is not there or cannot be read.</summary>
    public CsvOutline? Table(string name, long largest) => Find(name, largest).Table.Value;

    /// <summary>Looks at every file that has been asked for, there or not.</summary>
    /// <returns>How often one was found to be another than before.</returns>
    public long Changes()
    {
        lock (_gate)
        {
            _changes += _kept.RemoveAll(kept => StampOf(kept.Name) != kept.Stamp);
            return _changes;
        }
    }

    private Kept Find(string name, long largest)
    {
        lock (_gate)
        {
            var stamp = StampOf(name);
            var at = _kept.FindIndex(kept => string.Equals(kept.Name, name, StringComparison.Ordinal));
            if (at >= 0 && _kept[at].Stamp == stamp)
            {
                return _kept[at];
            }

            if (at >= 0)
            {
                _kept.RemoveAt(at);
                _changes++;
            }
            else if (_kept.Count == Most)
            {
                _kept.RemoveAt(0);
            }

            var bytes = stamp is null ? null : PlainFile.Read(pathOf(name), largest, out _);
            var kept = new Kept(name, stamp, bytes is null ? null : new InputFile(name, [.. bytes]));
            _kept.Add(kept);
            return kept;
        }
    }

    private (DateTime Written, long Length)? StampOf(string name)
    {
        try
        {
            var file = new FileInfo(pathOf(name));
            return file.Exists ? (file.LastWriteTimeUtc, file.Length) : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private sealed record Kept(string Name, (DateTime Written, long Length)? Stamp, InputFile? File)
    {
        public Lazy<CsvOutline?> Table { get; } = new(() => File is null ? null : CsvOutline.OfWorkbook(File));
    }
}
