using BenchSim.Folder.Faults;

namespace BenchSim.Folder.Plan;

/// <summary>Looks for growers whose names differ by case or spaces alone: a grower is who the plan names, so they count as two.</summary>
internal static class GrowerNames
{
    /// <summary>Warns of them, once for each way to write a name.</summary>
    public static void Check(IEnumerable<PlanRow> rows, FaultList faults)
    {
        var seen = new Dictionary<string, PlanRow>(StringComparer.Ordinal);
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in rows.Where(row => !row.Row["grower"].IsBlank))
        {
            var name = row.Order.Grower;
            var first = seen.TryAdd(Spelling.Loose(name), row) ? row : seen[Spelling.Loose(name)];
            if (!string.Equals(first.Order.Grower, name, StringComparison.Ordinal) && told.Add(name))
            {
                faults.Warn(
                    row.Row["grower"].Place,
                    $"the growers {Words.Quote(name)} and {Words.Quote(first.Order.Grower)} (line {first.Row.Line}) are counted as two",
                    $"if they are one, write {Words.Quote(first.Order.Grower)} each time"
                );
            }
        }
    }
}
