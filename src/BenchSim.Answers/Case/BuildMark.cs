using BenchSim.Engine.Randomness;
using BenchSim.Folder;
using BenchSim.Season.Play;
using BenchSim.Study;
using BenchSim.Study.Marks;

namespace BenchSim.Answers.Case;

/// <summary>
/// Marks the build of everything that decides what a season is: the same sources give the same mark wherever they are built.
/// </summary>
internal static class BuildMark
{
    private static readonly Type[] s_rooms = [typeof(LatinAccents), typeof(SeasonResult), typeof(StudyRunner), typeof(ScenarioFolder)];

    /// <summary>Sixteen characters, 0 to 9 and a to f.</summary>
    public static string Text { get; } = Make();

    private static string Make()
    {
        byte[] all = [.. s_rooms.SelectMany(room => room.Module.ModuleVersionId.ToByteArray())];
        return Convert.ToHexStringLower(Sha256.HashData(all))[..16];
    }
}
