using System.Text;
using System.Text.RegularExpressions;

namespace BenchSim.Report.Writing;

/// <summary>The folder a report goes to: whole or absent, and never at the cost of anyone else's files.</summary>
internal sealed partial class TargetFolder
{
    /// <summary>Name of the file that marks a folder as made by this program.</summary>
    public const string MarkerName = ".benchsim-report";

    /// <summary>What the marker begins with; the names of the inputs follow, one a line.</summary>
    public const string MarkerStart =
        "This folder was written by BenchSim. BenchSim replaces it as a whole when it writes the report again.\n";

    /// <summary>Name of the case report, in a report folder and in one of its own.</summary>
    public const string CaseReport = "case.pdf";

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

        if (MarkerOf(folder) is not { } marker)
        {
            if (!folder.Exists)
            {
                return;
            }

            throw Refused("exists and BenchSim did not write it. Name another folder, or remove this one yourself");
        }

        if (FirstForeign(folder, InputsOf(marker)) is { } foreign)
        {
            throw Refused($"holds '{foreign}', which is no part of a report. Move it away, or name another folder");
        }
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

    // A folder without a marker is looked at again: another writer may just be putting one in the place of another.
    private static string? MarkerOf(DirectoryInfo folder)
    {
        string? marker = null;
        for (var tries = 1; marker is null && folder.Exists && tries <= MostTries; tries++)
        {
            marker = MarkerText(Path.Combine(folder.FullName, MarkerName));
            folder.Refresh();
        }

        return marker;
    }

    /// <summary>What the marker holds; null when it is not ours.</summary>
    /// <exception cref="IOException">Another writer takes it away in this moment: what stands must be looked at again.</exception>
    internal static string? MarkerText(string marker)
    {
        // An empty one is none of ours, and a named pipe, which seems empty, would hold up whoever opens it.
        var file = new FileInfo(marker);
        if (!file.Exists || file.LinkTarget is not null || file.Length is 0 or > 1_000_000)
        {
            return null;
        }

        var text = File.ReadAllText(marker).ReplaceLineEndings("\n");
        return text.StartsWith(MarkerStart, StringComparison.Ordinal) ? text : null;
    }

    private static HashSet<string> InputsOf(string marker) =>
        new(marker[MarkerStart.Length..].Split('\n', StringSplitOptions.RemoveEmptyEntries), StringComparer.Ordinal);

    /// <summary>The first file or folder, in order of name, that the report did not have; null when all are known.</summary>
    private static string? FirstForeign(DirectoryInfo folder, HashSet<string> inputs) =>
        folder
            .EnumerateFileSystemInfos("*", s_everything)
            .Select(entry => (Entry: entry, Name: Path.GetRelativePath(folder.FullName, entry.FullName).Replace('\\', '/')))
            .Where(item =>
                item.Entry.LinkTarget is not null
                || !(item.Entry is DirectoryInfo ? IsKnownFolder(item.Name, inputs) : IsKnownFile(item.Name, inputs))
            )
            .Select(item => item.Name)
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();

    private static bool IsKnownFolder(string name, HashSet<string> inputs) =>
        name is "charts" or "tables" or "inputs" || inputs.Any(input => input.StartsWith(name + "/", StringComparison.Ordinal));

    private static bool IsKnownFile(string name, HashSet<string> inputs) =>
        name
            is MarkerName
                or "report.html"
                or "result.json"
                or CaseReport
                or "tables/daily.csv"
                or "tables/batches.csv"
                or "tables/spaces.csv"
                or "tables/growers.csv"
                or "tables/fuel.csv"
                or "tables/waits.csv"
                or "tables/bottlenecks.csv"
        || inputs.Contains(name)
        || ChartName().IsMatch(name);

    [GeneratedRegex(
        @"^charts/(occupancy-[0-9]+-[a-z0-9-]+|batches(-[0-9]+)?)\.png\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex ChartName();

    private ReportRefusedException Refused(string why) => new($"No report was written: '{_shown}' {why}.");
}
