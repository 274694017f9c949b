using BenchSim.Answers.Asking;
using BenchSim.Report.Writing;

namespace BenchSim.Answers.Opening;

/// <summary>Names of folders and files that stand beside a scenario folder.</summary>
internal static class BesideScenario
{
    /// <summary>The scenario folder's name as the user wrote it, with an ending.</summary>
    /// <param name="directory">Scenario folder; null for one in memory.</param>
    /// <param name="ending">Ending, such as "-report".</param>
    /// <exception cref="RefusedException">Nothing can stand beside it.</exception>
    public static string Folder(string? directory, string ending)
    {
        if (directory is null)
        {
            throw new RefusedException("The scenario is in no folder, so nothing can stand beside it. Name a folder.");
        }

        var folder = Path.TrimEndingDirectorySeparator(Path.GetFullPath(directory));
        if (Path.GetDirectoryName(folder) is null)
        {
            throw new RefusedException(
                "The scenario folder is the root of a disk, so nothing can stand beside it. Name a folder with --out."
            );
        }

        // "." and ".." have no name to hang the ending on.
        var written = Path.TrimEndingDirectorySeparator(directory);
        return Path.GetFileName(written) is "" or "." or ".." ? folder + ending : written + ending;
    }

    /// <summary>Refuses a folder to write that holds the scenario folder, as a report does whose inputs are played again.</summary>
    /// <param name="place">The folder to write, as the user named it; null for one beside the scenario folder.</param>
    /// <param name="directory">Scenario folder; null for one in memory.</param>
    /// <exception cref="RefusedException">It holds the scenario folder.</exception>
    public static void RefuseAround(string? place, string? directory)
    {
        if (place is null || directory is null)
        {
            return;
        }

        var inside = Path.GetRelativePath(Path.GetFullPath(place), Path.GetFullPath(directory));
        if (!Path.IsPathRooted(inside) && !string.Equals(inside.Split(Path.DirectorySeparatorChar)[0], "..", StringComparison.Ordinal))
        {
            throw new RefusedException(FolderRefusals.HoldsScenario(place));
        }
    }
}
