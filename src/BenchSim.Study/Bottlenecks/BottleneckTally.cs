using BenchSim.Season.Play;
using BenchSim.Study.Compare;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Bottlenecks;

/// <summary>Counts all trials against the base, season by season. All of it is whole numbers, so threads add up in any order.</summary>
internal sealed class BottleneckTally(BottleneckTrials trials)
{
    private readonly long[] _late = new long[trials.Limits.Length];
    private readonly long[] _baseLate = new long[1];
    private readonly long[] _ofTrial = new long[1];
    private readonly PairedSums[] _againstFirst = Sums(trials.Pairs.Length);
    private readonly PairedSums[] _againstSecond = Sums(trials.Pairs.Length);
    private readonly PairedSums[] _beyondSum = Sums(trials.Pairs.Length);

    /// <summary>Each trial against the base, late plant-days as its only measure.</summary>
    public PairedTally[] Trials { get; } = [.. trials.Limits.Select(_ => new PairedTally(1))];

    /// <summary>Who waits for whom in the base.</summary>
    public WaitTally Waits { get; } = new(trials.Shape);

    /// <summary>A pair against its first space alone.</summary>
    public PairedSums AgainstFirst(int pair) => _againstFirst[pair];

    /// <summary>A pair against its second space alone.</summary>
    public PairedSums AgainstSecond(int pair) => _againstSecond[pair];

    /// <summary>What a pair changes, against what its two change alone.</summary>
    public PairedSums BeyondSum(int pair) => _beyondSum[pair];

    /// <summary>Plays and counts one season.</summary>
    /// <param name="player">Plays the season under some limits.</param>
    /// <param name="season">Number of the season.</param>
    /// <param name="asGiven">Filled with the base.</param>
    /// <param name="other">Filled with one trial after another.</param>
    public void Play(SeasonPlayer player, int season, SeasonResult asGiven, SeasonResult other)
    {
        player.Play(season, PlaceLimits.AsGiven, asGiven);
        var late = _baseLate[0] = MeasuredSeason.LatePlantDaysOf(asGiven.Batches);
        for (var at = 0; at < _late.Length; at++)
        {
            player.Play(season, trials.Limits[at], other);
            _late[at] = _ofTrial[0] = MeasuredSeason.LatePlantDaysOf(other.Batches);
            Trials[at].Add(asGiven, _baseLate, other, _ofTrial);
        }

        Waits.Add(asGiven, RoomySeason.NotPlayed);

        for (var at = 0; at < trials.Pairs.Length; at++)
        {
            (var one, var two) = trials.Pairs[at];
            (var first, var second, var both) = (_late[one], _late[two], _late[trials.FirstPair + at]);
            _againstFirst[at].Add(first, both);
            _againstSecond[at].Add(second, both);

            // (both - base) - ((first - base) + (second - base)), with whole numbers of 0 or more on either side.
            _beyondSum[at].Add(first + second, late + both);
        }
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(BottleneckTally other)
    {
        for (var at = 0; at < Trials.Length; at++)
        {
            Trials[at].Merge(other.Trials[at]);
        }

        Waits.Merge(other.Waits);

        for (var at = 0; at < _beyondSum.Length; at++)
        {
            _againstFirst[at].Merge(other._againstFirst[at]);
            _againstSecond[at].Merge(other._againstSecond[at]);
            _beyondSum[at].Merge(other._beyondSum[at]);
        }
    }

    private static PairedSums[] Sums(int count) => [.. Enumerable.Range(0, count).Select(_ => new PairedSums())];
}
