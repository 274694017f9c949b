using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Sizing;

/// <summary>Plays numbers of places on the same seasons, and keeps what came of each.</summary>
internal sealed class SizeCurve(
    SeasonPlayer player,
    int space,
    SizeGoal goal,
    StudyOptions options,
    SizeProgress progress,
    CancellationToken cancel
)
{
    private readonly SortedDictionary<int, SizePoint> _points = [];
    private readonly Space _space = player.Plan.Scenario.Spaces[space];

    /// <summary>What was played so far, the smallest number of places first.</summary>
    public ImmutableArray<SizePoint> Points => [.. _points.Values];

    /// <summary>Whether the goal lies within a point's interval, or below it.</summary>
    public bool CouldMeet(SizePoint point) => point.Fits.High >= goal.Share;

    /// <summary>What comes of a number of places; played unless it was already.</summary>
    public SizePoint At(int places)
    {
        Play([places]);
        return _points[places];
    }

    /// <summary>Plays numbers of places, those that were not yet, in one go.</summary>
    public void Play(IEnumerable<int> numbers)
    {
        int[] places = [.. numbers.Distinct().Where(each => !_points.ContainsKey(each)).Order()];
        if (places.Length == 0)
        {
            return;
        }

        PlaceLimits[] limits = [.. places.Select(each => PlaceLimits.Adding(space, each - _space.Places))];
        var tallies = new ParallelSeasons<SizeTally[]>(options, progress.Of(limits.Length), cancel).Run(
            () => [.. limits.Select(_ => new SizeTally())],
            () =>
            {
                (var own, var result) = (player.Another(), new SeasonResult());
                return (season, counts) =>
                {
                    for (var at = 0; at < limits.Length; at++)
                    {
                        own.Play(season, limits[at], result);
                        counts[at].Add(result);
                    }
                };
            },
            Merge
        );
        for (var at = 0; at < places.Length; at++)
        {
            _points.Add(places[at], tallies[at].ToPoint(places[at], goal));
        }
    }

    private static void Merge(SizeTally[] sum, SizeTally[] other)
    {
        for (var at = 0; at < sum.Length; at++)
        {
            sum[at].Merge(other[at]);
        }
    }
}
