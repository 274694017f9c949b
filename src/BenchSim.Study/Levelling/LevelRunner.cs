using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Levelling;

/// <summary>
/// Levels a plan: moves sowings within their tolerances so that the fewest expected trays are without a place, and tries what comes of it.
/// </summary>
public static class LevelRunner
{
    /// <summary>Name of the levelled plan in the trial.</summary>
    public const string LevelledName = "levelled";

    private const int Whole = 100;

    /// <summary>
    /// Works out the expected places of every choice, searches for the best choices, and plays the levelled plan against the plan on the
    /// same luck. The
    /// same input gives the same result, whatever the number of threads.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How to level and to try.</param>
    /// <param name="leveller">Finds the best choices.</param>
    /// <param name="progress">Told the share of the play that is done, 0 to 100, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option outside its range.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static LevelResult Run(
        SeasonPlan plan,
        LevelOptions options,
        ILeveller leveller,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(leveller);
        Check(options);
        var loads = new ExpectedLoads(plan, options);
        var share = new Share(progress, ((long)loads.Plays * options.ExpectedSeasons) + (3L * options.Seasons));
        var problem = loads.Problem(share.From(0), cancel);
        var solution = leveller.Solve(problem, options.Effort, cancel);
        int[] movable = [.. loads.Movable];
        var orders = Orders(plan, loads, movable, solution.Chosen);
        var result = Untried(plan, options, loads, problem, solution);
        if (problem.Shift(solution.Chosen) == 0)
        {
            return result;
        }

        var levelled = VariantPlanner.Make(plan, plan.Scenario with { Batches = orders }).Plan
            ?? throw new InvalidOperationException("A sowing that could be moved alone cannot be moved with the others.");
        return Tried(result, levelled, loads, share, cancel);
    }

    /// <summary>The sowings that levelling would move, without a trial.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How to level; <see cref="LevelOptions.Seasons"/> are left free for a trial.</param>
    /// <param name="leveller">Finds the best choices.</param>
    /// <param name="cancel">Stops the work.</param>
    public static ImmutableArray<MovedSowing> Moves(SeasonPlan plan, LevelOptions options, ILeveller leveller, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(leveller);
        Check(options);
        var loads = new ExpectedLoads(plan, options);
        if (!loads.Movable.Any())
        {
            return [];
        }

        var problem = loads.Problem(null, cancel);
        return Untried(plan, options, loads, problem, leveller.Solve(problem, options.Effort, cancel)).Moves;
    }

    private static void Check(LevelOptions options)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.ExpectedSeasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        if (!(options.Fill is > 0 and <= 1) || !(options.Effort > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(options), "The share to fill is above 0 and at most 1, the effort above 0.");
        }
    }

    private static ImmutableArray<BatchOrder> Orders(SeasonPlan plan, ExpectedLoads loads, int[] movable, int[] chosen)
    {
        BatchOrder[] orders = [.. plan.Scenario.Batches];
        for (var at = 0; at < movable.Length; at++)
        {
            orders[movable[at]] = loads.ChoicesOf(movable[at])[chosen[at]].Order;
        }

        return [.. orders];
    }

    private static LevelResult Untried(
        SeasonPlan plan,
        LevelOptions options,
        ExpectedLoads loads,
        LevelProblem problem,
        LevelSolution solution
    )
    {
        var planned = problem.AsPlanned();
        double seasons = options.ExpectedSeasons;
        return new LevelResult
        {
            Plan = plan,
            Options = options,
            Movable = loads.Movable.Count(),
            Verdict =
                problem.Over(planned) == 0 ? LevelVerdict.NothingIsOver
                : loads.Movable.Any() ? LevelVerdict.NothingHelps
                : LevelVerdict.NothingMayMove,
            Groups =
            [
                .. loads.Groups.All.Select(
                    (group, at) =>
                        new LevelledGroup(
                            group,
                            Peak(plan, problem, planned, at, seasons),
                            Peak(plan, problem, solution.Chosen, at, seasons),
                            null
                        )
                ),
            ],
            OverBefore = problem.Over(planned) / seasons,
            OverAfter = problem.Over(solution.Chosen) / seasons,
            OverBound = solution.OverBound / seasons,
            IsOverProved = solution.IsOverProved,
            ShiftDays = problem.Shift(solution.Chosen),
            ShiftBound = solution.ShiftBound,
            IsShiftProved = solution.IsShiftProved,
            Moves =
            [
                .. loads
                    .Movable.Select((batch, at) => MovedSowing.Of(plan.Batches[batch], loads.ChoicesOf(batch)[solution.Chosen[at]]))
                    .Where(move => move.Days != 0),
            ],
        };
    }

    private static ExpectedPeak Peak(SeasonPlan plan, LevelProblem problem, int[] chosen, int group, double seasons)
    {
        long[] loads = [.. Enumerable.Range(0, problem.Room[group].Length).Select(day => problem.Load(chosen, group, day))];
        long[] over = [.. loads.Select((load, day) => Math.Max(0, load - problem.Room[group][day]))];
        return new ExpectedPeak(
            loads.Max() / seasons,
            plan.FirstDay.AddDays(Array.IndexOf(loads, loads.Max())),
            over.Sum() / seasons,
            over.Count(each => each > 0),
            over.Max() > 0 ? plan.FirstDay.AddDays(Array.IndexOf(over, over.Max())) : null
        );
    }

    private static LevelResult Tried(LevelResult result, SeasonPlan levelled, ExpectedLoads loads, Share share, CancellationToken cancel)
    {
        var options = result.Options;
        var done = (long)loads.Plays * options.ExpectedSeasons;
        var study = new StudyOptions
        {
            Seasons = options.Seasons,
            Seed = options.Seed,
            Threads = options.Threads,
        };
        var trial = CompareRunner.Play(result.Plan, [(LevelledName, levelled)], study, share.From(done, 2), cancel);
        var playedBase = trial.Base;
        var played = trial.Variants[0].Plan;
        var peaks = PlayedPeaks.Count(
            playedBase,
            played,
            new LevelGroups(playedBase),
            study,
            share.From(done + (2L * options.Seasons)),
            cancel
        );
        return result with
        {
            Levelled = levelled,
            Trial = trial,
            Groups = [.. result.Groups.Select((group, at) => group with { Played = peaks[at] })],
            Verdict = IsBetter(trial.Variants[0]) ? LevelVerdict.Adopt : LevelVerdict.Keep,
        };
    }

    // Better in one of the two that count, beyond its interval, and really worse in neither.
    private static bool IsBetter(VariantResult variant)
    {
        var late = variant.Of(Measures.LatePlantDays)!;
        var fits = variant.Fits;
        var isBetter = (late.IsReal && late.Difference < 0) || (fits.IsReal && fits.Difference > 0);
        return isBetter && !(late.IsReal && late.Difference > 0) && !(fits.IsReal && fits.Difference < 0);
    }

    // Turns seasons played into hundredths of the whole.
    private sealed class Share(IProgress<int>? progress, long seasons)
    {
        public IProgress<int>? From(long done, int times = 1) => progress is null ? null : new Part(this, done, times);

        private void Report(long done) => progress!.Report((int)(Whole * done / seasons));

        private sealed class Part(Share share, long before, int times) : IProgress<int>
        {
            public void Report(int value) => share.Report(before + ((long)value * times));
        }
    }
}
