using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Bottlenecks;

/// <summary>What is tried: each space without limit, then each one unit larger, then every two without limit.</summary>
internal sealed class BottleneckTrials
{
    public BottleneckTrials(SeasonPlan plan)
    {
        Shape = new PlanShape(plan);
        Spaces =
        [
            .. plan
                .Batches.SelectMany(batch => batch.Mats.Concat(batch.Benches).Concat(batch.Finish).Concat(batch.Tables))
                .Distinct()
                .Order(),
        ];
        Units = [.. Spaces.Select(space => UnitOf(plan.Scenario.Spaces[space]))];
        Pairs =
        [
            .. Enumerable
                .Range(0, Spaces.Length)
                .SelectMany(one => Enumerable.Range(one + 1, Spaces.Length - one - 1).Select(two => (one, two))),
        ];
        Warmer = [.. WarmerHouses.Of(plan, Spaces)];
        Limits =
        [
            .. Spaces.Select(space => PlaceLimits.Without(space)),
            .. Spaces.Select((space, at) => PlaceLimits.Adding(space, Units[at])),
            .. Pairs.Select(pair => PlaceLimits.Without(Spaces[pair.First], Spaces[pair.Second])),
        ];
    }

    /// <summary>The plan, for counting.</summary>
    public PlanShape Shape { get; }

    /// <summary>Positions of the spaces that the plan may use.</summary>
    public int[] Spaces { get; }

    /// <summary>Places by which each of them is larger in its trial.</summary>
    public int[] Units { get; }

    /// <summary>Pairs of positions in <see cref="Spaces"/>.</summary>
    public (int First, int Second)[] Pairs { get; }

    /// <summary>Each colder house as warm as the warmest, with the plan that has it.</summary>
    public (House House, House Warmer, SeasonPlan Plan)[] Warmer { get; }

    /// <summary>The limits of every trial.</summary>
    public PlaceLimits[] Limits { get; }

    /// <summary>Position of the first trial with one unit more.</summary>
    public int FirstLarger => Spaces.Length;

    /// <summary>Position of the first pair.</summary>
    public int FirstPair => 2 * Spaces.Length;

    /// <summary>
    /// Places of one unit of a space: as the site says, else a tenth of the most it ever has, rounded up, and 1 at least.
    /// </summary>
    internal static int UnitOf(Space space)
    {
        var most = space.Changes.Select(change => change.Places).Append(space.Places).Max();
        return space.UnitPlaces ?? Math.Max(1, (most + 9) / 10);
    }
}
