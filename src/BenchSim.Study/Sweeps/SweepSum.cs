using BenchSim.Season.Inputs;
using BenchSim.Study.Counting;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Sweeps;

/// <summary>Adds the tasks of one plan of a sweep, in any order, and keeps no more of each set of values than its sums.</summary>
/// <param name="plan">The plan.</param>
/// <param name="sets">Sets of values, the values as given among them.</param>
public sealed class SweepSum(SeasonPlan plan, int sets)
{
    private readonly SweepCounts _given = new(plan.Scenario.Spaces.Length);
    private readonly (long Seasons, long Fits, UInt128 PlantsInTime)[] _sets = new (long, long, UInt128)[sets - 1];

    /// <summary>Adds a task.</summary>
    /// <param name="set">Its set of values, 0 for those as given.</param>
    /// <param name="counts">What it counted.</param>
    public void Add(int set, SweepCounts counts)
    {
        ArgumentNullException.ThrowIfNull(counts);
        if (set == 0)
        {
            _given.Add(counts);
            return;
        }

        ref var sum = ref _sets[set - 1];
        sum = (sum.Seasons + counts.Seasons, sum.Fits + counts.Fits, sum.PlantsInTime + counts.PlantsInTime.Sum);
    }

    /// <summary>What they say together; every set has a season or more.</summary>
    /// <param name="cell">Whose folder and plan it is.</param>
    public SweepRow ToRow(SweepCell cell)
    {
        var student = new StudentFactors();
        var seasons = _given.Seasons;
        return new SweepRow
        {
            Folder = cell.Folder,
            Plan = cell.Plan,
            PlantsWanted = plan.Batches.Sum(batch => (long)batch.Order.Plants),
            Fits = Chances.Of(_given.Fits, seasons),
            FitsWeatherCounted = Chances.Of(_given.FitsWeatherCounted, seasons),
            PlantsInTime = MeanOf(_given.PlantsInTime, student),
            LatePlantDays = MeanOf(_given.LatePlantDays, student),
            Short = [.. _given.ShortSeasons.ToArray().Select(hits => Chances.Of(hits, seasons))],
            WorstShort = [.. _given.WorstShort.ToArray().Select(sum => (double)sum / seasons)],
            FitsOverSets = _sets.Length == 0 ? null : SweepRange.Of(_sets.Select(set => (double)set.Fits / set.Seasons)),
            PlantsOverSets = _sets.Length == 0 ? null : SweepRange.Of(_sets.Select(set => (double)set.PlantsInTime / set.Seasons)),
        };
    }

    private static SweepMean MeanOf(Moments moments, StudentFactors student) =>
        new((double)moments.Sum / moments.Seasons, Seen.HalfWidth(moments, student));
}
