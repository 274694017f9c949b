namespace BenchSim.Report.Writing;

/// <summary>Why a folder that stands is not replaced, and what would help. Names are to be safe to show.</summary>
public static class FolderRefusals
{
    /// <summary>Somebody else made the folder.</summary>
    /// <param name="folder">The folder as it was named.</param>
    public static string NotOurs(string folder) =>
        $"No report was written: '{folder}' exists and BenchSim did not write it. Name another folder, or remove this one yourself.";

    /// <summary>Another command made the folder.</summary>
    /// <param name="folder">The folder as it was named.</param>
    public static string OtherKind(string folder) =>
        $"Nothing was written: '{folder}' holds a report of another kind. Name another folder.";

    /// <summary>An earlier BenchSim made the folder, and kept no list of what it wrote.</summary>
    /// <param name="folder">The folder as it was named.</param>
    public static string WithoutList(string folder) =>
        $"Nothing was written: '{folder}' has no list of the files in it (an earlier BenchSim kept none), so changes you made there "
        + "would be lost unseen. Copy out what you want to keep and remove the folder, or name another.";

    /// <summary>Somebody has changed files of the folder.</summary>
    /// <param name="folder">The folder as it was named.</param>
    /// <param name="files">The files, within the folder.</param>
    public static string Changed(string folder, IReadOnlyList<string> files)
    {
        const int Told = 5;
        var names = string.Join(", ", files.Take(Told).Select(file => $"'{file}'"));
        var more = files.Count > Told ? $" and {files.Count - Told} more" : "";
        var them = files.Count == 1 ? "it" : "them";
        return $"Nothing was written: in '{folder}' you changed {names}{more}, and a new report would replace {them}. "
            + $"Copy {them} out of the folder, then remove the folder or name another.";
    }

    /// <summary>The folder holds the scenario that is to be played.</summary>
    /// <param name="folder">The folder as it was named.</param>
    public static string HoldsScenario(string folder) =>
        $"Nothing was written: '{folder}' holds the scenario folder that was to be played, and would replace it. Name another folder.";
}
