using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Season.Values;

namespace BenchSim.Folder;

/// <summary>Files whose names are nearly those that are read: "crop.csv" would be passed over in silence.</summary>
internal static class NearNames
{
    private static readonly string[] s_optional =
    [
        .. FileNames.Tables.Where(name => !FileNames.IsPlan(name)),
        .. FileNames.Tables.Where(name => !FileNames.IsPlan(name)).Select(FileNames.WorkbookOf),
    ];

    /// <summary>Warns of each.</summary>
    public static void Warn(FileReader files, FaultList faults)
    {
        foreach (var name in files.NamesIn(""))
        {
            foreach (var optional in s_optional)
            {
                if (
                    !files.HasTable(optional)
                    && Path.GetExtension(name).Equals(Path.GetExtension(optional), StringComparison.OrdinalIgnoreCase)
                    && Spelling.Distance(name.ToLowerInvariant(), optional) <= 1
                )
                {
                    faults.Warn(
                        new SourcePlace(name, 0, 0),
                        "this file is not read",
                        $"if it holds your own {Path.GetFileNameWithoutExtension(optional)}, name it {optional}"
                    );
                }
            }
        }
    }
}
