using System.Collections.Immutable;
using System.Numerics;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Levelling;

/// <summary>
/// The groups of a plan: each set of mats, benches or tables that one of its crops may use. A batch counts in every group that holds all
/// the spaces of
/// the kind it may use, so that what fits in each group can be shared out over the spaces (the condition of Hall, where the sets lie one in
/// another).
/// </summary>
internal sealed class LevelGroups
{
    private readonly int _firstDay;

    /// <summary>Works them out.</summary>
    public LevelGroups(SeasonPlan plan)
    {
        _firstDay = plan.Past?.Today ?? 0;
        var scenario = plan.Scenario;
        var shape = new PlanShape(plan);
        var kinds = Enum.GetValues<SpaceKind>();
        int[][][] sets = [.. plan.Batches.Select(batch => kinds.Select(kind => Set(batch, kind)).ToArray())];
        var groups = ImmutableArray.CreateBuilder<LevelGroup>();
        foreach (var kind in kinds)
        {
            var ofKind = scenario.Spaces.Count(space => space.Kind == kind);
            var different = sets.Select(set => set[(int)kind])
                .Where(set => set.Length > 0)
                .DistinctBy(set => string.Join(' ', set), StringComparer.Ordinal);
            foreach (var set in different.OrderByDescending(set => set.Length).ThenBy(set => set[0]))
            {
                groups.Add(
                    new LevelGroup(
                        kind,
                        [.. set],
                        set.Length == ofKind,
                        [.. Enumerable.Range(0, plan.Days).Select(day => set.Sum(space => shape.Places[space][day]))]
                    )
                );
            }
        }

        All = groups.ToImmutable();
        Of = [.. sets.Select(set => kinds.Select(kind => Holding(set[(int)kind], kind)).ToArray())];
    }

    /// <summary>The groups: mats, benches, tables; the widest of each kind first.</summary>
    public ImmutableArray<LevelGroup> All { get; }

    /// <summary>Positions of the groups in which a batch counts: [batch][kind of space].</summary>
    public int[][][] Of { get; }

    /// <summary>
    /// Adds what a batch holds, by kind of space and day, to the groups it counts in; days that are over are left out, as nothing can be
    /// moved there.
    /// </summary>
    public void Add<T>(int batch, T[][] byKind, long[][] groups)
        where T : struct, IBinaryInteger<T>
    {
        for (var kind = 0; kind < byKind.Length; kind++)
        {
            foreach (var group in Of[batch][kind])
            {
                var row = groups[group];
                for (var day = _firstDay; day < row.Length; day++)
                {
                    row[day] += long.CreateChecked(byKind[kind][day]);
                }
            }
        }
    }

    private static int[] Set(BatchPlan batch, SpaceKind kind) =>
        [
            .. (
                kind switch
                {
                    SpaceKind.Mat => batch.Mats,
                    SpaceKind.Bench => batch.Benches,
                    _ => batch.Tables,
                }
            )
                .Distinct()
                .Order(),
        ];

    private int[] Holding(int[] set, SpaceKind kind) =>
        set.Length == 0
            ? []
            : [.. Enumerable.Range(0, All.Length).Where(group => All[group].Kind == kind && set.All(All[group].Spaces.Contains))];
}
