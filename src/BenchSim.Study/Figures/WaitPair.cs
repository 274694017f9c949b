using BenchSim.Season.Inputs;

namespace BenchSim.Study.Figures;

/// <summary>Trays that stand in one space and may be refused by another.</summary>
/// <param name="From">Position of the space they stand in; the number of spaces for those that are not sown yet.</param>
/// <param name="By">Position of the space of first preference of those that may refuse them.</param>
internal sealed record WaitPair(int From, int By)
{
    /// <summary>All that a plan can bring: the way of its batches, those not sown yet first, then in the order of the scenario.</summary>
    public static WaitPair[] Of(SeasonPlan plan)
    {
        var spaces = plan.Scenario.Spaces.Length;
        var pairs = new HashSet<(int From, int By)>();
        foreach (var batch in plan.Batches)
        {
            // Waiting is charged to the first preference of the group asked (docs/model.md section 3).
            if ((First(batch.Mats) ?? First(batch.Benches)) is { } start)
            {
                pairs.Add((spaces, start));
            }

            Add(batch.Mats, First(batch.Benches));
            Add(batch.Benches, First(batch.Tables));
            if (batch.Flat is not null)
            {
                Add(batch.Benches, First(batch.Benches));
            }
        }

        return
        [
            .. pairs
                .OrderBy(pair => pair.From < spaces)
                .ThenBy(pair => pair.From)
                .ThenBy(pair => pair.By)
                .Select(pair => new WaitPair(pair.From, pair.By)),
        ];

        static int? First(IReadOnlyList<int> group) => group.Count > 0 ? group[0] : null;

        void Add(IEnumerable<int> from, int? by)
        {
            if (by is { } refuses)
            {
                pairs.UnionWith(from.Select(space => (space, refuses)));
            }
        }
    }
}
