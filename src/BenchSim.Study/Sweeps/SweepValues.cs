using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;
using BenchSim.Study.Trust;

namespace BenchSim.Study.Sweeps;

/// <summary>
/// The sets of values of a folder: the same ones for its plan and its variants. The values take their places in the sets in their own
/// order: to find out which of them matter most would take plays of its own.
/// </summary>
public sealed class SweepValues
{
    private readonly ValuesInDoubt _doubts;
    private readonly Lazy<double[][]> _sets;

    /// <summary>Prepares the sets; they are drawn when one is asked for.</summary>
    /// <param name="basePlan">The plan of the folder itself.</param>
    /// <param name="valueSets">How many, 0 or more.</param>
    /// <param name="seed">Seed of the draws.</param>
    public SweepValues(SeasonPlan basePlan, int valueSets, ulong seed)
    {
        _doubts = ValuesInDoubt.Of(basePlan);
        _sets = new Lazy<double[][]>(() => ValueSets.Of(valueSets, [.. Enumerable.Range(0, _doubts.Values.Length)], seed));
    }

    /// <summary>Values that may be wrong.</summary>
    public int Values => _doubts.Values.Length;

    /// <summary>A plan of the folder with a set of values in the place of those given; 0 leaves it as it is.</summary>
    public SeasonPlan In(SeasonPlan plan, int set) => set == 0 ? plan : _doubts.With(plan, _sets.Value[set - 1]);
}
