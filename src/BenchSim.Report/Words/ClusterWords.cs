using BenchSim.Season.Inputs;

namespace BenchSim.Report.Words;

/// <summary>Tells that seedlings kept together in a cell count as one plant.</summary>
public static class ClusterWords
{
    /// <summary>
    /// What follows the plants of a plan: ", of which 300 are clusters of up to 8 seedlings"; empty where each is a single seedling.
    /// </summary>
    public static string OfWhich(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        BatchPlan[] clusters = [.. plan.Batches.Where(IsCluster)];
        if (clusters.Length == 0)
        {
            return "";
        }

        var count =
            clusters.Length == plan.Batches.Length
                ? "all of them clusters"
                : "of which " + Numbers.Count(clusters.Sum(batch => (long)batch.Order.Plants), "is a cluster", "are clusters");
        return $", {count} of up to {clusters.Max(batch => batch.ClusterOf)} seedlings";
    }

    /// <summary>What the plants of a plan are that are no single seedlings: a sentence for each crop and size of cluster.</summary>
    public static IEnumerable<string> ByCrop(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan
            .Batches.Where(IsCluster)
            .GroupBy(batch => (batch.Crop.Name, batch.ClusterOf))
            .OrderBy(group => group.Key.Name, StringComparer.Ordinal)
            .ThenBy(group => group.Key.ClusterOf)
            .Select(group =>
                $"Plants of {PlainText.Short(group.Key.Name, 40)} are clusters: "
                + $"{Numbers.Whole(group.Sum(batch => (long)batch.Order.Plants))} of up to {group.Key.ClusterOf} seedlings a cell, from "
                + $"{Numbers.Whole(group.Sum(batch => batch.Seeds))} seeds."
            );
    }

    private static bool IsCluster(BatchPlan batch) => batch.ClusterOf > 1;
}
