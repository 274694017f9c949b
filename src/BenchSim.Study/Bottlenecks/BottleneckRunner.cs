using System.Collections.Immutable;
using BenchSim.Season.Climate;
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
    private const int IntervalsATrial = 3;
    private const int IntervalsAPair = 5;

    /// <summary>
    /// Plays every season as it is, with each space that the plan may use without limit, with each one unit larger, with every two of them
    /// without limit, and with each colder house as warm as the warmest. The planned dates stay. The same input gives the
    /// same result to the last bit, whatever the number of threads.
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
        var climates = ClimateStore.OfOnePlay();
        SeasonPlayer first = new(plan, options.Seed, climates);
        SeasonPlayer[] warmer = [.. trials.Warmer.Select(trial => new SeasonPlayer(trial.Plan, options.Seed, climates))];
        var tally = new ParallelSeasons<BottleneckTally>(options, progress, cancel).Run(
            () => new BottleneckTally(trials),
            () =>
            {
                (var player, var asGiven, var other) = (first.Another(), new SeasonResult(), new SeasonResult());
                SeasonPlayer[] others = [.. warmer.Select(each => each.Another())];
                return (season, count) => count.Play(player, others, season, asGiven, other);
            },
            (sum, other) => sum.Merge(other)
        );
        return ToResult(plan, options, trials, tally);
    }

    private static BottleneckResult ToResult(SeasonPlan plan, StudyOptions options, BottleneckTrials trials, BottleneckTally tally)
    {
        var comparisons = (IntervalsATrial * ((2 * trials.Spaces.Length) + trials.Warmer.Length)) + (IntervalsAPair * trials.Pairs.Length);
        var each = Confidence.OfEach(comparisons);
        BottleneckTrial[] unlimited = [.. trials.Spaces.Select((space, at) => Trial(space, at, null))];
        return new BottleneckResult
        {
            Plan = plan,
            Seasons = options.Seasons,
            Seed = options.Seed,
            Confidence = Confidence.Usual,
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
            Warmer =
            [
                .. trials
                    .Warmer.Select(Warmer)
                    .OrderByDescending(trial => Brought(trial.PlantsInTime))
                    .ThenBy(trial => trial.LatePlantDays.Difference),
            ],
            Waits = tally.Waits.ToResults(new Telling(plan.FirstDay, options.Seasons)),
        };

        BottleneckTrial Trial(int space, int at, int? added) =>
            new()
            {
                Space = plan.Scenario.Spaces[space],
                PlacesAdded = added,
                Fits = tally.Trials[at].Fits(each),
                PlantsInTime = tally.Trials[at].Changes(BottleneckTally.Measures, each)[1],
                LatePlantDays = tally.Trials[at].Changes(BottleneckTally.Measures, each)[0],
                Waited = [.. Enum.GetValues<SpaceKind>().Select(kind => tally.Waited(at, kind).ToChange(Measures.Waited, each))],
                Growing = tally.Growing(at).ToChange(Measures.Growing, each),
            };

        WarmerTrial Warmer((House House, House Warmer, SeasonPlan Plan) trial, int at) =>
            new()
            {
                House = trial.House,
                Warmer = trial.Warmer,
                Fits = tally.Warmer[at].Fits(each),
                PlantsInTime = tally.Warmer[at].Changes(BottleneckTally.Measures, each)[1],
                LatePlantDays = tally.Warmer[at].Changes(BottleneckTally.Measures, each)[0],
            };

        BottleneckPair Pair((int First, int Second) pair, int at) =>
            new()
            {
                First = plan.Scenario.Spaces[trials.Spaces[pair.First]],
                Second = plan.Scenario.Spaces[trials.Spaces[pair.Second]],
                Fits = tally.Trials[trials.FirstPair + at].Fits(each),
                LatePlantDays = tally.Trials[trials.FirstPair + at].Changes(BottleneckTally.Measures, each)[0],
                AgainstFirst = tally.AgainstFirst(at).ToChange(Measures.LatePlantDays, each),
                AgainstSecond = tally.AgainstSecond(at).ToChange(Measures.LatePlantDays, each),
                BeyondSum = tally.BeyondSum(at).ToChange(Measures.LatePlantDays, each),
            };
    }

    // The most plants in time first, where that is sure; what brings alike, in the order of late plant-days, of the chance of fit and then
    // of the scenario.
    private static ImmutableArray<BottleneckTrial> Ranked(IEnumerable<BottleneckTrial> trials) =>
        [
            .. trials
                .OrderByDescending(trial => Brought(trial.PlantsInTime))
                .ThenBy(trial => trial.LatePlantDays.Difference)
                .ThenByDescending(trial => trial.Fits.Difference),
        ];

    private static double Brought(MeasureChange plants) => plants.IsReal ? plants.Difference : 0;
}
