using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Charts;

/// <summary>
/// The batches that are drawn: all, or of very many those that cost most. Nobody looks through ten thousand bars, and the pictures of them
/// would take far more room than all the rest of a report.
/// </summary>
internal static class DrawnBatches
{
    /// <summary>Most batches that are drawn.</summary>
    public const int Most = 400;

    /// <summary>The batches, in the order of the plan.</summary>
    public static IEnumerable<BatchResult> Of(StudyResult result) =>
        result.Batches.Length <= Most
            ? result.Batches
            : result
                .Batches.Index()
                .OrderByDescending(batch => batch.Item.LatePlantDays.Mean)
                .Take(Most)
                .OrderBy(batch => batch.Index)
                .Select(batch => batch.Item);

    /// <summary>Which are drawn, in a sentence; empty where all are.</summary>
    public static string Which(StudyResult result) =>
        result.Batches.Length <= Most
            ? ""
            : $"Drawn are the {Numbers.Whole(Most)} of {Numbers.Count(result.Batches.Length, "batch", "batches")} that cost most late "
                + "plant-days; the table has all of them.";
}
