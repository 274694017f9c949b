using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Compare;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Bottlenecks;

/// <summary>Counts all trials against the base, season by season. All of it is whole numbers, so threads add up in any order.</summary>
internal sealed class BottleneckTally(BottleneckTrials trials)
{
    private static readonly int s_kinds = Enum.GetValues<SpaceKind>().Length;

    private readonly long[] _late = new long[trials.Limits.Length];
    private readonly long[] _base = new long[Measures.Length];
    private readonly long[] _ofTrial = new long[Measures.Length];
    private readonly PairedSums[][] _waited = [.. Enumerable.Range(0, trials.FirstPair).Select(_ => Sums(s_kinds))];
    private readonly PairedSums[] _growing = Sums(trials.FirstPair);
    private readonly int[][] _spacesOfKind = SpacesOfKind(trials.Shape.Plan.Scenario);
    private readonly long[] _baseWaited = new long[s_kinds];
    private readonly PairedSums[] _againstFirst = Sums(trials.Pairs.Length);
    private readonly PairedSums[] _againstSecond = Sums(trials.Pairs.Length);
    private readonly PairedSums[] _beyondSum = Sums(trials.Pairs.Length);

    /// <summary>What is compared of each trial: late plant-days, and plants out in time.</summary>
    public static ImmutableArray<Measure> Measures { get; } = [Figures.Measures.LatePlantDays, Figures.Measures.PlantsInTime];

    /// <summary>Each trial against the base.</summary>
    public PairedTally[] Trials { get; } = [.. trials.Limits.Select(_ => new PairedTally(Measures.Length))];

    /// <summary>Each house as warm as the warmest against the base.</summary>
    public PairedTally[] Warmer { get; } = [.. trials.Warmer.Select(_ => new PairedTally(Measures.Length))];

    /// <summary>Who waits for whom in the base.</summary>
    public WaitTally Waits { get; } = new(trials.Shape);

    /// <summary>Tray-days waited for the spaces of a kind, of a trial of one space against the base.</summary>
    public PairedSums Waited(int trial, SpaceKind kind) => _waited[trial][(int)kind];

    /// <summary>Days from sowing to field size, of a trial of one space against the base.</summary>
    public PairedSums Growing(int trial) => _growing[trial];

    /// <summary>A pair against its first space alone.</summary>
    public PairedSums AgainstFirst(int pair) => _againstFirst[pair];

    /// <summary>A pair against its second space alone.</summary>
    public PairedSums AgainstSecond(int pair) => _againstSecond[pair];

    /// <summary>What a pair changes, against what its two change alone.</summary>
    public PairedSums BeyondSum(int pair) => _beyondSum[pair];

    /// <summary>Plays and counts one season.</summary>
    /// <param name="player">Plays the season under some limits.</param>
    /// <param name="warmer">Play it with one house warmer.</param>
    /// <param name="season">Number of the season.</param>
    /// <param name="asGiven">Filled with the base.</param>
    /// <param name="other">Filled with one trial after another.</param>
    public void Play(SeasonPlayer player, SeasonPlayer[] warmer, int season, SeasonResult asGiven, SeasonResult other)
    {
        player.Play(season, PlaceLimits.AsGiven, asGiven);
        Read(asGiven, _base);
        var late = _base[0];
        var growing = MeasuredSeason.GrowingDaysOf(asGiven.Batches);
        foreach (var kind in Enum.GetValues<SpaceKind>())
        {
            _baseWaited[(int)kind] = Waited(asGiven, kind);
        }

        for (var at = 0; at < _late.Length; at++)
        {
            player.Play(season, trials.Limits[at], other);
            Read(other, _ofTrial);
            _late[at] = _ofTrial[0];
            Trials[at].Add(asGiven, _base, other, _ofTrial);
            if (at < trials.FirstPair)
            {
                Explain(at, growing, other);
            }
        }

        for (var at = 0; at < warmer.Length; at++)
        {
            warmer[at].Play(season, PlaceLimits.AsGiven, other);
            Read(other, _ofTrial);
            Warmer[at].Add(asGiven, _base, other, _ofTrial);
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

        for (var at = 0; at < Warmer.Length; at++)
        {
            Warmer[at].Merge(other.Warmer[at]);
        }

        for (var at = 0; at < _growing.Length; at++)
        {
            _growing[at].Merge(other._growing[at]);
            for (var kind = 0; kind < s_kinds; kind++)
            {
                _waited[at][kind].Merge(other._waited[at][kind]);
            }
        }

        Waits.Merge(other.Waits);

        for (var at = 0; at < _beyondSum.Length; at++)
        {
            _againstFirst[at].Merge(other._againstFirst[at]);
            _againstSecond[at].Merge(other._againstSecond[at]);
            _beyondSum[at].Merge(other._beyondSum[at]);
        }
    }

    // In the order of Measures.
    private static void Read(SeasonResult season, long[] values) =>
        (values[0], values[1]) = (MeasuredSeason.LatePlantDaysOf(season.Batches), season.PlantsInTime);

    // Why more room may do harm: more wait for the spaces of a kind, or trays grow slower where they now stand.
    private void Explain(int trial, long? growing, SeasonResult other)
    {
        foreach (var kind in Enum.GetValues<SpaceKind>())
        {
            _waited[trial][(int)kind].Add(_baseWaited[(int)kind], Waited(other, kind));
        }

        var slower = MeasuredSeason.GrowingDaysOf(other.Batches);
        _growing[trial].Add(growing ?? 0, growing is null || slower is null ? growing ?? 0 : slower.Value);
    }

    private long Waited(SeasonResult season, SpaceKind kind)
    {
        long sum = 0;
        foreach (var space in _spacesOfKind[(int)kind])
        {
            sum += Rows.Sum(season.Waiting[space]);
        }

        return sum;
    }

    private static int[][] SpacesOfKind(Scenario scenario) =>
        [
            .. Enum.GetValues<SpaceKind>()
                .Select(kind => Enumerable.Range(0, scenario.Spaces.Length).Where(space => scenario.Spaces[space].Kind == kind).ToArray()),
        ];

    private static PairedSums[] Sums(int count) => [.. Enumerable.Range(0, count).Select(_ => new PairedSums())];
}
