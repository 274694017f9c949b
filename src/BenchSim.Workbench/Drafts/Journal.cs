using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Report.Writing;

namespace BenchSim.Workbench.Drafts;

/// <summary>
/// What happened to the tries, on disk: one line an entry, each written through to the disk before it counts. A line that was cut off, as
/// by a power cut, was never acknowledged and is passed over. One program at a time holds it.
/// </summary>
internal sealed class Journal : IDisposable
{
    /// <summary>The folder in the scenario folder that holds it.</summary>
    public const string Folder = ".benchsim";

    private const string DraftsFile = Folder + "/drafts.jsonl";
    private const string LockFile = Folder + "/lock";

    // A journal longer than this, and twice as long as when it was last written anew, holds much that came to nothing.
    private const long LongBytes = 2_000_000;

    private readonly OpenFolder _folder;
    private FileStream _lock;
    private FileStream _file;
    private long _end;
    private long _least;

    private Journal(OpenFolder folder, FileStream held, FileStream file) =>
        (_folder, _lock, _file, _end) = (folder, held, file, file.Length);

    /// <summary>Opens the journal of a folder, or begins one.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="entries">What it holds.</param>
    /// <exception cref="RefusedException">Another workbench holds it.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static Journal Open(OpenFolder folder, out ImmutableArray<Entry> entries)
    {
        Directory.CreateDirectory(folder.PathOf(Folder));
        var held = Hold(folder.PathOf(LockFile));
        try
        {
            var file = OpenDrafts(folder, FileMode.OpenOrCreate);
            var whole = Read(file, out entries);
            if (whole < file.Length)
            {
                // Behind a line that was cut off the next one begins anew.
                file.SetLength(whole);
            }

            return new Journal(folder, held, file);
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    /// <summary>What the journal of a folder holds that cannot be written; nothing where it cannot be read either.</summary>
    public static ImmutableArray<Entry> Peek(OpenFolder folder)
    {
        try
        {
            using var file = new FileStream(folder.PathOf(DraftsFile), FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            Read(file, out var entries);
            return entries;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Writes entries through to the disk, all of them or none.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="whole">All that is to stand in it with them, where it has to be written anew.</param>
    /// <exception cref="IOException">They could not be written, and are not there.</exception>
    /// <exception cref="UnauthorizedAccessException">They may not be written, and are not there.</exception>
    public void Add(ReadOnlySpan<Entry> entries, IEnumerable<Entry> whole)
    {
        var place = new FileInfo(_folder.PathOf(DraftsFile));
        if (!place.Exists || place.Length != _end)
        {
            // Taken away or replaced by another program: what was acknowledged stands there no more.
            Renew(whole);
            return;
        }

        using var lines = new MemoryStream();
        foreach (var entry in entries)
        {
            lines.Write(EntryContext.Line(entry));
        }

        try
        {
            // What an earlier failure may have left behind the end goes first.
            _file.SetLength(_end);
            _file.Position = _end;
            _file.Write(lines.GetBuffer().AsSpan(0, (int)lines.Length));
            _file.Flush(flushToDisk: true);
        }
        catch (Exception failure)
        {
            _file.SetLength(_end);
            throw failure is ArgumentOutOfRangeException limit
                ? FileLimit.Exceeded(DraftsFile, _end + lines.Length, limit)
                : new IOException(failure.Message, failure);
        }

        _end += lines.Length;
        RenewLong(whole);
    }

    /// <summary>Writes the journal anew where it has grown long; where that fails it stays as it is.</summary>
    /// <param name="whole">All that is to stand in it.</param>
    public void RenewLong(IEnumerable<Entry> whole)
    {
        if (_end <= Math.Max(LongBytes, 2 * _least))
        {
            return;
        }

        try
        {
            Renew(whole);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            _least = _end;
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        _file.Dispose();
        _lock.Dispose();
    }

    private void Renew(IEnumerable<Entry> whole)
    {
        if (!Directory.Exists(_folder.Directory))
        {
            throw new IOException("the folder is gone");
        }

        Directory.CreateDirectory(_folder.PathOf(Folder));
        if (!File.Exists(_folder.PathOf(LockFile)))
        {
            var held = Hold(_folder.PathOf(LockFile));
            _lock.Dispose();
            _lock = held;
        }

        using var lines = new MemoryStream();
        foreach (var entry in whole)
        {
            lines.Write(EntryContext.Line(entry));
        }

        _folder.Write(DraftsFile, lines.GetBuffer().AsSpan(0, (int)lines.Length));
        var file = OpenDrafts(_folder, FileMode.Open);
        _file.Dispose();
        _file = file;
        _end = _least = file.Length;
    }

    // Windows lets a file be replaced that is open only where it may be deleted. Without a buffer, which would hold on to what the disk has
    // refused and try it again.
    private static FileStream OpenDrafts(OpenFolder folder, FileMode mode) =>
        new(folder.PathOf(DraftsFile), mode, FileAccess.ReadWrite, FileShare.Read | FileShare.Delete, bufferSize: 0);

    private static FileStream Hold(string path)
    {
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException) when (IsHeld(path))
        {
            throw new RefusedException("This folder is open in another workbench. Use that one, or stop it first.");
        }
    }

    // A file that cannot be written can still be read, unless another program holds it.
    private static bool IsHeld(string path)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            return false;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return failure is not (FileNotFoundException or DirectoryNotFoundException or UnauthorizedAccessException);
        }
    }

    // How far it is whole: a last line without an end was cut off.
    private static long Read(FileStream file, out ImmutableArray<Entry> entries)
    {
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        var read = ImmutableArray.CreateBuilder<Entry>();
        var rest = bytes.AsSpan();
        while (rest.IndexOf((byte)'\n') is >= 0 and var end)
        {
            if (EntryContext.Read(rest[..end]) is { } entry)
            {
                read.Add(entry);
            }

            rest = rest[(end + 1)..];
        }

        entries = read.ToImmutable();
        return bytes.Length - rest.Length;
    }
}
