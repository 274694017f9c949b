using BenchSim.Folder.Faults;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Files;

/// <summary>A text file that stands alone, in no scenario folder.</summary>
internal static class LoneFile
{
    /// <summary>Reads it.</summary>
    /// <param name="path">The file. Faults name it as it is written here.</param>
    /// <param name="instead">What to do where it is a folder.</param>
    /// <param name="faults">Takes the faults.</param>
    /// <returns>Its text; null when there was a fault.</returns>
    public static FileText? Read(string path, string instead, FaultList faults)
    {
        var whole = new SourcePlace(path, 0, 0);
        if (Directory.Exists(path))
        {
            faults.Add(whole, "this is a folder, not a file", instead);
            return null;
        }

        if (FileKind.IsHidden(path))
        {
            faults.Add(whole, Words.ClosedAround, Words.OpenIt);
            return null;
        }

        if (!File.Exists(path))
        {
            faults.Add(whole, "there is no such file", "check the name");
            return null;
        }

        return new FileReader(new DiskFiles("."), faults).Read(path, whole);
    }
}
