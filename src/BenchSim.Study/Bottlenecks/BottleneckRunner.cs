using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Bottlenecks;

/// <summary>Plays a plan with more room in one space after another, and in every two, on the same luck.</summary>
public static class BottleneckRunner
{
    private const double Confidence = 0.95;
    private const int IntervalsATrial = 2;
    private const int IntervalsAPair = 5;

    /// <summary>
    /// Plays every season as it is, with each space that the plan may use without limit, with each one unit larger, and with every two of
    /// them without limit. The planned dates stay. The same input gives the same result to the last bit, whatever the number of threads.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told how many seasons are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 season, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static BottleneckResult Play(SeasonPlan plan, StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Days, 1, nameof(plan));
        BottleneckTrials trials = new(plan);
        SeasonPlayer first = new(plan, options.Seed);
        var tally = new ParallelSeasons<BottleneckTally>(options, progress, cancel).Run(
            () => new BottleneckTally(trials),
            () =>
            {
                (var player, var asGiven, var other) = (first.Another(), new SeasonResult(), new SeasonResult());
                return (season, count) => count.Play(player, season, asGiven, other);
            },
            (sum, other) => sum.Merge(other)
        );
        return ToResult(plan, options, trials, tally);
    }

    private static BottleneckResult ToResult(SeasonPlan plan, StudyOptions options, BottleneckTrials trials, BottleneckTally tally)
    {
        var comparisons = (IntervalsATrial * 2 * trials.Spaces.Length) + (IntervalsAPair * trials.Pairs.Length);
        var each = 1 - ((1 - Confidence) / comparisons);
        BottleneckTrial[] unlimited = [.. trials.Spaces.Select((space, at) => Trial(space, at, null))];
        return new BottleneckResult
        {
            Plan = plan,
            Seasons = options.Seasons,
            Seed = options.Seed,
            Confidence = Confidence,
            Comparisons = comparisons,
            EachConfidence = each,
            Fits = unlimited[0].Fits.Base,
            LatePlantDays = unlimited[0].LatePlantDays.Base,
            Unlimited = Ranked(unlimited),
            Larger = Ranked(trials.Spaces.Select((space, at) => Trial(space, trials.FirstLarger + at, trials.Units[at]))),
            Pairs =
            [
                .. trials.Pairs.Select(Pair).OrderBy(pair => pair.LatePlantDays.Difference).ThenByDescending(pair => pair.Fits.Difference),
            ],
            Waits = tally.Waits.ToResults(new Telling(plan.FirstDay, options.Seasons)),
        };

        BottleneckTrial Trial(int space, int at, int? added) =>
            new()
            {
                Space = plan.Scenario.Spaces[space],
                PlacesAdded = added,
                Fits = tally.Trials[at].Fits(each),
                LatePlantDays = tally.Trials[at].Changes([Measures.LatePlantDays], each)[0],
            };

        BottleneckPair Pair((int First, int Second) pair, int at) =>
            new()
            {
                First = plan.Scenario.Spaces[trials.Spaces[pair.First]],
                Second = plan.Scenario.Spaces[trials.Spaces[pair.Second]],
                Fits = tally.Trials[trials.FirstPair + at].Fits(each),
                LatePlantDays = tally.Trials[trials.FirstPair + at].Changes([Measures.LatePlantDays], each)[0],
                AgainstFirst = tally.AgainstFirst(at).ToChange(Measures.LatePlantDays, each),
                AgainstSecond = tally.AgainstSecond(at).ToChange(Measures.LatePlantDays, each),
                BeyondSum = tally.BeyondSum(at).ToChange(Measures.LatePlantDays, each),
            };
    }

    // The most saved first; what saves alike, in the order of the chance of fit and then of the scenario.
    private static ImmutableArray<BottleneckTrial> Ranked(IEnumerable<BottleneckTrial> trials) =>
        [.. trials.OrderBy(trial => trial.LatePlantDays.Difference).ThenByDescending(trial => trial.Fits.Difference)];
}
