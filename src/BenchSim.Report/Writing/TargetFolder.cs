using System.Text;

namespace BenchSim.Report.Writing;

/// <summary>The folder a report goes to: whole or absent, and never at the cost of anyone else's files.</summary>
internal sealed class TargetFolder
{
    /// <summary>Name of the file that marks a folder as made by this program.</summary>
    public const string MarkerName = ".benchsim-report";

    /// <summary>What the marker begins with; the names that tell the kind of the folder follow, one a line.</summary>
    public const string MarkerStart =
        "This folder was written by BenchSim. BenchSim replaces it as a whole when it writes the report again.\n";

    private static readonly EnumerationOptions s_everything = new()
    {
        RecurseSubdirectories = true,
        AttributesToSkip = FileAttributes.None,
        IgnoreInaccessible = false,
    };

    /// <summary>Bytes that common file systems allow a name.</summary>
    private const int LongestName = 255;

    /// <summary>Times that a place is looked at again when another writer was faster.</summary>
    private const int MostTries = 100;

    private readonly string _path;
    private readonly string _shown;
    private readonly string _parent;

    public TargetFolder(string directory)
    {
        _shown = directory;
        _path = Path.TrimEndingDirectorySeparator(Path.GetFullPath(directory));
        _parent = Path.GetDirectoryName(_path)
            ?? throw new ReportRefusedException(
                $"A report cannot be written to '{directory}', the root of a disk. Name a folder of its own."
            );
    }

    /// <summary>Refuses a place where something stands that is not a report of ours.</summary>
    public void Check()
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                CheckWhatStands();
                return;
            }
            catch (IOException) when (tries < MostTries)
            {
                // Another writer may have taken the folder away between two looks.
                Thread.Yield();
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                throw new ReportRefusedException($"No report was written: '{_shown}' cannot be read. {failure.Message}", failure);
            }
        }
    }

    /// <summary>
    /// Refuses a place that cannot be written, besides what <see cref="Check"/> refuses: makes the folders above it and an empty one beside
    /// it, and takes all of them away again. What is free now may be taken later; <see cref="Fill"/> finds that out for itself.
    /// </summary>
    public void CheckCanBeWritten()
    {
        Check();
        if (FileAbove() is { } file)
        {
            throw Refused($"cannot be made, for '{file}' is a file. Name another folder");
        }

        if (Encoding.UTF8.GetByteCount(Path.GetFileName(_path)) > LongestName)
        {
            throw Refused("has too long a name. Name a shorter one");
        }

        var trial = Path.Combine(_parent, $".benchsim-trial-{Guid.NewGuid().ToString("N")[..8]}");
        var firstMade = FirstMissing(_parent);
        try
        {
            Directory.CreateDirectory(trial);
        }
        catch (UnauthorizedAccessException failure)
        {
            throw new ReportRefusedException(
                $"No report was written: '{_shown}' cannot be made, for you may not write there. Name another folder.",
                failure
            );
        }
        catch (IOException failure)
        {
            var told = failure.Message.Replace(trial, _shown, StringComparison.Ordinal);
            throw new ReportRefusedException($"No report was written: '{_shown}' cannot be made. {told}", failure);
        }
        finally
        {
            Leftovers.RemoveEmpty(trial);
            RemoveMade(firstMade);
        }
    }

    /// <summary>The file that stands where a folder above the target would have to be; null when there is none.</summary>
    private string? FileAbove()
    {
        var at = _parent;
        while (at is not null && !Directory.Exists(at) && !File.Exists(at))
        {
            at = Path.GetDirectoryName(at);
        }

        return File.Exists(at) ? at : null;
    }

    private void CheckWhatStands()
    {
        if (File.Exists(_path))
        {
            throw Refused("is a file. Name a folder that does not exist yet");
        }

        var folder = new DirectoryInfo(_path);
        if (!folder.Exists)
        {
            return;
        }

        if (folder.LinkTarget is not null)
        {
            throw Refused("is a link to another folder. Name the folder itself");
        }

        if (TextIn(folder, MarkerName, MarkerText) is null && folder.Exists)
        {
            throw new ReportRefusedException(FolderRefusals.NotOurs(_shown));
        }

        if (folder.Exists)
        {
            RefuseWhatWouldBeLost(folder);
        }
    }

    // Another writer may put a new folder in the place of the old between two looks: then its list is another.
    private void RefuseWhatWouldBeLost(DirectoryInfo folder)
    {
        var text = TextIn(folder, WrittenFiles.FileName, OwnText.Read);
        if (WrittenFiles.Of(text) is not { } written)
        {
            if (!folder.Exists)
            {
                return;
            }

            throw new ReportRefusedException(FolderRefusals.WithoutList(_shown));
        }

        var foreign = FirstForeign(folder, written);
        var changed = foreign is null ? written.ChangedIn(_path) : [];
        if (foreign is null && changed.Length == 0)
        {
            return;
        }

        if (!string.Equals(text, TextIn(folder, WrittenFiles.FileName, OwnText.Read), StringComparison.Ordinal))
        {
            throw new IOException("Another writer has just put its folder here.");
        }

        throw foreign is null
            ? new ReportRefusedException(FolderRefusals.Changed(_shown, changed))
            : Refused($"holds '{foreign}', which is no part of a report. Move it away, or name another folder");
    }

    /// <summary>
    /// Fills a folder beside the target, then puts it in the target's place. On failure or cancellation nothing is left behind; what a
    /// killed writer left of the same target is taken away first.
    /// </summary>
    public void Fill(Action<string> write, CancellationToken cancel)
    {
        var firstMade = FirstMissing(_parent);
        WritingClaim? claim = null;
        var done = false;
        try
        {
            Directory.CreateDirectory(_parent);
            claim = WritingClaim.Take(_path);
            Directory.CreateDirectory(claim.Partial);
            write(claim.Partial);
            cancel.ThrowIfCancellationRequested();
            PutInPlace(claim);

            // Without a look at the target: another writer may just be taking ours away again to put its own there.
            Leftovers.Remove(claim.Former);
            done = true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            var told = claim is null
                ? failure.Message
                : failure
                    .Message.Replace(claim.Partial, _shown, StringComparison.Ordinal)
                    .Replace(claim.Former, _shown, StringComparison.Ordinal);
            throw new ReportRefusedException($"The report could not be written to '{_shown}': {told}", failure);
        }
        finally
        {
            CleanUp(claim, done ? null : firstMade);
        }
    }

    // Another writer may put its own there, or take the earlier one away, between two of our steps: then what stands is looked at again.
    private void PutInPlace(WritingClaim claim)
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                CheckWhatStands();
                if (Directory.Exists(_path))
                {
                    Directory.Move(_path, claim.Former);
                }

                MoveIn(claim);
                return;
            }
            catch (IOException) when (tries < MostTries)
            {
                RemoveFormer(claim);
            }
        }
    }

    private void MoveIn(WritingClaim claim)
    {
        try
        {
            Directory.Move(claim.Partial, _path);
        }
        catch when (Directory.Exists(claim.Former) && !Directory.Exists(_path))
        {
            Directory.Move(claim.Former, _path);
            throw;
        }
    }

    // The earlier report goes only when there is another in its place.
    private void RemoveFormer(WritingClaim claim)
    {
        if (Directory.Exists(_path))
        {
            Leftovers.Remove(claim.Former);
        }
    }

    private void CleanUp(WritingClaim? claim, string? firstMade)
    {
        if (claim is not null)
        {
            Leftovers.Remove(claim.Partial);
            RemoveFormer(claim);
            claim.Dispose();
        }

        RemoveMade(firstMade);
    }

    // Parents made on the way go again, unless someone else has put something there meanwhile.
    private void RemoveMade(string? firstMade)
    {
        if (firstMade is null)
        {
            return;
        }

        for (var at = _parent; at is not null && at.Length >= firstMade.Length; at = Path.GetDirectoryName(at))
        {
            Leftovers.RemoveEmpty(at);
        }
    }

    private static string? FirstMissing(string folder)
    {
        string? missing = null;
        for (var at = folder; at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
        {
            missing = at;
        }

        return missing;
    }

    // A folder without the file is looked at again: another writer may just be putting one in the place of another.
    private static string? TextIn(DirectoryInfo folder, string name, Func<string, string?> read)
    {
        string? text = null;
        for (var tries = 1; text is null && folder.Exists && tries <= MostTries; tries++)
        {
            text = read(Path.Combine(folder.FullName, name));
            folder.Refresh();
        }

        return text;
    }

    /// <summary>What the marker holds; null when it is not ours.</summary>
    /// <exception cref="IOException">Another writer takes it away in this moment: what stands must be looked at again.</exception>
    internal static string? MarkerText(string marker) =>
        OwnText.Read(marker) is { } text && text.StartsWith(MarkerStart, StringComparison.Ordinal) ? text : null;

    /// <summary>The first file or folder, in order of name, that was not written; null when all were.</summary>
    private static string? FirstForeign(DirectoryInfo folder, WrittenFiles written) =>
        folder
            .EnumerateFileSystemInfos("*", s_everything)
            .Select(entry => (Entry: entry, Name: Path.GetRelativePath(folder.FullName, entry.FullName).Replace('\\', '/')))
            .Where(item =>
                item.Entry.LinkTarget is not null || !(item.Entry is DirectoryInfo ? written.HasFolder(item.Name) : written.Has(item.Name))
            )
            .Select(item => item.Name)
            .Where(name => !string.Equals(name, WrittenFiles.FileName, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();

    private ReportRefusedException Refused(string why) => new($"No report was written: '{_shown}' {why}.");
}
