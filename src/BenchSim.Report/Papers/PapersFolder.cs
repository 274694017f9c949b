using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Papers;

/// <summary>
/// The papers of a season as a folder. It keeps the rules of a
/// <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier folder of papers. The same plan gives
/// the same bytes.
/// </summary>
public static class PapersFolder
{
    /// <summary>Refuses a place where something stands that is no folder of papers; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the place cannot be written.</exception>
    public static void Check(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        Files(directory).Check();
    }

    /// <summary>Writes the folder. It appears whole at the end or not at all; an earlier folder of papers is replaced.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="settings">Which papers, for which dates.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException">The directory is empty, no paper is asked for, the plan has no such grower, or the dates or the
    /// used labels are out of range.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, the dates hold nothing to do, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static PaperSummary Write(string directory, SeasonPlan plan, PaperSettings settings, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        Check(directory);
        var set = PaperSet.Of(plan, settings);
        cancel.ThrowIfCancellationRequested();
        Files(directory).Write([], folder => WriteFiles(folder, set, cancel), cancel);
        return set.Summary;
    }

    private static void WriteFiles(PartialFolder folder, PaperSet set, CancellationToken cancel)
    {
        foreach (var paper in set.Papers)
        {
            if (paper.Table is { } table)
            {
                folder.Save(paper.Name, table());
            }
            else
            {
                folder.Save(paper.Name, paper.Write(cancel));
            }
        }
    }

    // The marker names every paper, also those that were not asked for, so that a later writing knows them for its own.
    private static OwnFolder Files(string directory) => new(directory, [.. PaperSet.Names]);
}
