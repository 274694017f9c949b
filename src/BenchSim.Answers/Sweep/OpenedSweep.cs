using System.Collections.Immutable;
using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Case;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Sweeps;
using BenchSim.Report.Words;
using BenchSim.Season.Values;
using BenchSim.Study;
using BenchSim.Study.Marks;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>
/// A sweep whose file has been read. Its folders are opened when they are asked for, and only the last few of them are kept, so that a
/// thousand folders take no more room than a few. Safe for use by several threads.
/// </summary>
internal sealed class OpenedSweep
{
    // Tasks that are played at a time are of one folder, or of two that follow one another.
    private const int MostKept = 3;

    private readonly Lock _gate = new();
    private readonly List<(int Folder, OpenedFolder Opened)> _kept = [];

    private OpenedSweep(SweepFile file) =>
        (File, Grid) = (
            file,
            new SweepGrid(
                [.. file.Folders.Select(folder => folder.Variants.Length)],
                file.Settings.ValueSets,
                file.Settings.Seasons,
                file.Settings.SeasonsPerTask
            )
        );

    /// <summary>What the file says.</summary>
    public SweepFile File { get; }

    /// <summary>The tasks.</summary>
    public SweepGrid Grid { get; }

    private SweepSettings Settings => File.Settings;

    /// <summary>Reads the file of a sweep.</summary>
    /// <param name="path">The file, as the user wrote it.</param>
    /// <exception cref="FaultsFoundException">It has faults.</exception>
    /// <exception cref="RefusedException">It has more tasks than a sweep may have.</exception>
    public static OpenedSweep Read(string path)
    {
        var file = SweepFile.Read(path, out var faults) ?? throw new FaultsFoundException(faults);
        var settings = file.Settings;
        var tasks = SweepGrid.TasksOf(
            file.Folders.Select(folder => folder.Variants.Length),
            settings.ValueSets,
            settings.Seasons,
            settings.SeasonsPerTask
        );
        return tasks <= SweepGrid.MostTasks
            ? new OpenedSweep(file)
            : throw new RefusedException(
                $"{PlainText.Quote(path)} makes {Numbers.Whole(tasks)} tasks, and may make up to {Numbers.Whole(SweepGrid.MostTasks)}. "
                    + "Raise seasons_per_task, or split it into several files."
            );
    }

    /// <summary>A folder, opened.</summary>
    /// <param name="folder">Its number, from 0.</param>
    /// <exception cref="FaultsFoundException">It has faults.</exception>
    public OpenedFolder Folder(int folder)
    {
        lock (_gate)
        {
            var at = _kept.FindIndex(each => each.Folder == folder);
            var kept = at >= 0 ? _kept[at] : (folder, OpenedFolder.Open(File.Folders[folder], Settings));
            if (at >= 0)
            {
                _kept.RemoveAt(at);
            }
            else if (_kept.Count == MostKept)
            {
                _kept.RemoveAt(0);
            }

            _kept.Add(kept);
            return kept.Item2;
        }
    }

    /// <summary>Opens every folder once, so that all faults of all of them are known before anything is played.</summary>
    /// <param name="threads">Threads to use, 0 for one a core.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="FaultsFoundException">Some have faults: those of all of them.</exception>
    public void Check(int threads, CancellationToken cancel)
    {
        if (File.Folders.Length <= MostKept)
        {
            Refuse(Enumerable.Range(0, File.Folders.Length).SelectMany(folder => FaultsOf(() => Folder(folder))));
            return;
        }

        var each = new StudyOptions
        {
            Seasons = File.Folders.Length,
            Seed = 0,
            Threads = threads,
        };
        var found = new ParallelSeasons<List<Fault>>(each, null, cancel).Run(
            () => [],
            () => (folder, faults) => faults.AddRange(FaultsOf(() => OpenedFolder.Open(File.Folders[folder], Settings))),
            (faults, others) => faults.AddRange(others)
        );
        Refuse(found);
    }

    /// <summary>What the result of a task is made of: the same files, settings and build give the same text.</summary>
    /// <param name="cell">What it plays.</param>
    /// <param name="folder">Its folder.</param>
    public string KeyOf(SweepCell cell, OpenedFolder folder)
    {
        var (first, count) = Grid.SeasonsOf(cell.Block);
        var made = FormattableString.Invariant(
            $"""
            build {BuildMark.Text}
            files {folder.Plans[cell.Plan].FilesHash}
            variant {folder.Plans[cell.Plan].Variant}
            planned anew {Settings.IsPlannedAnew}
            seed {folder.Seed}
            set {cell.Set} of {(cell.Set == 0 ? 0 : Settings.ValueSets)}
            seasons {first} and {count}
            """
        );
        return Convert.ToHexStringLower(Sha256.HashData(Encoding.UTF8.GetBytes(made.ReplaceLineEndings("\n"))));
    }

    private static ImmutableArray<Fault> FaultsOf(Action open)
    {
        try
        {
            open();
            return [];
        }
        catch (FaultsFoundException found)
        {
            return found.Faults;
        }
    }

    private static void Refuse(IEnumerable<Fault> faults)
    {
        Fault[] all = [.. faults];
        if (all.Length > 0)
        {
            throw new FaultsFoundException(all);
        }
    }
}
