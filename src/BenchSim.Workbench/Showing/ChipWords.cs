using BenchSim.Report.Words;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>What a chip says of a try: its share of seasons, or its faults.</summary>
internal static class ChipWords
{
    /// <summary>The words; null where nothing has been played.</summary>
    public static string? Of(Played? played) =>
        played is null ? null
        : played.Result is { } result ? ChanceWords.Fine(result.Fits.Share)
        : Numbers.Count(played.Faults.Length, "fault", "faults");
}
