using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Mending;

/// <summary>Finds what would bring a plan to its goal, on the same luck.</summary>
public static class MendRunner
{
    /// <summary>Parts that progress is told in.</summary>
    public const int ProgressParts = MendProgress.Parts;

    private const int MostSingles = 4;
    private const int MostOfTheOrder = 3;
    private const int FewerSeasons = 200;
    private const int IntervalsAChange = 2;
    private const int ExpectedChanges = 150;

    // A space that runs out in fewer seasons than one of twenty is not called full.
    private const double OftenFull = 0.05;

    /// <summary>
    /// Plays the plan, looks for changes where it does not meet the goal, and tries those found in other seasons. The same input gives the
    /// same result, whatever the number of threads.
    /// </summary>
    /// <param name="basePlan">The plan as it is.</param>
    /// <param name="changes">Makes the changes that may be made, in a fixed order; asked only where the goal is not met.</param>
    /// <param name="planner">Makes plans of them.</param>
    /// <param name="options">How to look.</param>
    /// <param name="progress">Told parts of the whole, rising; null for nobody.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static MendResult Find(
        SeasonPlan basePlan,
        Func<IReadOnlyList<MendChange>> changes,
        IMendPlanner planner,
        MendOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(basePlan);
        ArgumentNullException.ThrowIfNull(changes);
        ArgumentNullException.ThrowIfNull(planner);
        ArgumentNullException.ThrowIfNull(options);
        var told = new MendProgress(progress);
        var plays = new MendPlays(options, cancel) { Told = told.Count };
        told.Expect(ExpectedSeasons(options, ExpectedChanges));
        var first = plays.Play([basePlan], 0, options.Seasons);
        var before = MendTrial.FiguresOf(first.Seasons[0], new MendMoney(basePlan.Scenario));
        var result = new MendResult
        {
            Plan = basePlan,
            Options = options,
            Before = before,
        };
        if (result.IsMetBefore)
        {
            told.Finish();
            return result;
        }

        var planning = new MendPlanning(planner, options, cancel);
        MendTried[] unplanned = [.. Worth(basePlan, changes(), first.Tally.Plans[0]).Select(change => new MendTried(change, basePlan))];
        ImmutableArray<MendTried> singles = [.. planning.Of(unplanned, each => [each.Change], basePlan.Days)];
        var days = singles.Select(each => each.Plan.Days).Append(basePlan.Days).Max();
        basePlan = basePlan with { Days = days };
        singles = [.. singles.Select(each => each with { Plan = each.Plan with { Days = days } })];
        told.Expect(ExpectedSeasons(options, singles.Length));
        var search = new MendSearch(basePlan, options, planning, plays, singles);
        var joined = search.Find();
        var ofTheOrder = search.OfTheOrder();
        result = Tried(result with { Plan = basePlan, Tried = singles.Length }, planning, plays, search, joined, ofTheOrder, singles);
        told.Finish();
        return result;
    }

    private static long ExpectedSeasons(MendOptions options, int changes) =>
        (changes * (long)options.FirstSeasons * 3) + (options.SearchSeasons * 60L) + (options.Seasons * 16L);

    // Sowings that are never late and never wait need no other day, unless the plan says that they may have one.
    private static IEnumerable<MendChange> Worth(SeasonPlan plan, IReadOnlyList<MendChange> changes, MendTally.OfPlan sums)
    {
        var lines = PlanLine.Of(plan).ToDictionary(line => line.Id, StringComparer.Ordinal);
        return changes.Where(change =>
            change switch
            {
                SowChange { Moves: [var move] } => lines[move.Line].First.Order is { EarlierDays: > 0 } or { LaterDays: > 0 }
                    || IsTroubled(lines[move.Line], sums),
                FewerChange fewer => IsTroubled(lines[fewer.Line], sums),
                LaterChange later => IsTroubled(lines[later.Line], sums),
                _ => true,
            }
        );
    }

    private static bool IsTroubled(PlanLine line, MendTally.OfPlan sums) =>
        line.Sowings.Any(at => sums.Late[at].RightMean > 0.01 * sums.Wanted[at] || sums.Blocked[at] > sums.Seasons);

    private static MendResult Tried(
        MendResult result,
        MendPlanning planning,
        MendPlays plays,
        MendSearch search,
        ImmutableArray<MendJoined> joined,
        ImmutableArray<MendTried> ofTheOrder,
        ImmutableArray<MendTried> singles
    )
    {
        var basePlan = result.Plan;
        var options = result.Options;
        MendTried[] shown =
        [
            .. search.Promising.Where(each => !each.Change.IsBought).Take(MostSingles),
            .. search.Promising.Where(each => each.Change.IsBought).Take(MostSingles),
        ];
        SeasonPlan[] prefixes =
        [
            .. Enumerable
                .Range(1, joined.Length)
                .Select(count => PlanOf(basePlan, planning, [.. joined.Take(count).Select(each => each.Change)])),
        ];
        MendTried[] orders = [.. ofTheOrder.Take(MostOfTheOrder)];
        MendTried[] largest = [.. Largest(singles).Where(each => !joined.Any(own => own.Change.Excludes(each.Change)))];
        var comparisons = Math.Max(1, IntervalsAChange * (shown.Length + prefixes.Length + orders.Length));
        var trial = new MendTrial(plays, basePlan, prefixes, comparisons, options.Seasons);
        MendTried[] alone = [.. shown, .. orders, .. largest];
        var beside = new MendTrial(
            plays,
            basePlan,
            [.. alone.Select(each => each.Plan)],
            comparisons,
            Math.Min(options.Seasons, options.SeasonsAlone)
        );
        var firstWait = trial.SumsOf(0).FirstWait;
        var score = new MendScore(basePlan.Batches.Sum(batch => (long)batch.Order.Plants));
        return result with
        {
            Before = trial.Figures(0),
            BeforeAlone = beside.Figures(0),
            Comparisons = comparisons,
            EachConfidence = trial.EachConfidence,
            Singles = [.. Merged(shown, beside, score).Select(each => Option(each.Tried, each.At, each.AsGood))],
            Steps =
            [
                .. joined.Select(
                    (each, at) =>
                        new MendStep(each.Change, prefixes[at], trial.Figures(1 + at), trial.Gain(1 + at), each.AsGood)
                        {
                            Terms = Terms(each.Change, prefixes[at], trial, 1 + at),
                        }
                ),
            ],
            OfTheOrder = [.. orders.Select((each, at) => Option(each, 1 + shown.Length + at, []))],
            FullForNothing =
            [
                .. largest
                    .Select(
                        (each, at) =>
                            FullForNothing(basePlan, (PlacesChange)each.Change, beside, 1 + shown.Length + orders.Length + at, score)
                    )
                    .OfType<MendSpace>(),
            ],
            InTheWay = MendHindrances.Of(plays, prefixes.Length == 0 ? basePlan : prefixes[^1], Math.Min(FewerSeasons, options.Seasons)),
        };

        MendOption Option(MendTried tried, int at, ImmutableArray<MendChange> asGood) =>
            new(tried.Change, tried.Plan, beside.Figures(at), beside.Gain(at), asGood)
            {
                Terms = Terms(tried.Change, tried.Plan, beside, at),
            };

        MendTerms Terms(MendChange change, SeasonPlan plan, MendTrial of, int at) =>
            new(of.GivesWay(at, plan), MendDeadline.Of(basePlan, plan, change, firstWait));
    }

    private static SeasonPlan PlanOf(SeasonPlan basePlan, MendPlanning planning, MendChange[] changes) =>
        planning.Of(changes, basePlan.Days)
        ?? throw new InvalidOperationException("Changes that could be joined cannot be made one after the other.");

    // Best first by the trial, each thing that can be done once, with what is as good.
    private static IEnumerable<(MendTried Tried, int At, ImmutableArray<MendChange> AsGood)> Merged(
        MendTried[] shown,
        MendTrial trial,
        MendScore score
    )
    {
        var before = trial.SeasonsOf(0);
        int[] order =
        [
            .. Enumerable
                .Range(0, shown.Length)
                .Where(at => score.IsBetter(before, trial.SeasonsOf(at + 1)))
                .OrderByDescending(at => score.Gain(before, trial.SeasonsOf(at + 1)).Mean)
                .DistinctBy(at => shown[at].Change.Mark, StringComparer.Ordinal),
        ];
        foreach (var at in order)
        {
            yield return (
                shown[at],
                at + 1,
                [
                    .. order
                        .Where(other => other != at && score.IsEqual(trial.SeasonsOf(at + 1), trial.SeasonsOf(other + 1)))
                        .Select(other => shown[other].Change),
                ]
            );
        }
    }

    private static IEnumerable<MendTried> Largest(ImmutableArray<MendTried> singles) =>
        singles
            .Where(each => each.Change is PlacesChange)
            .GroupBy(each => each.Change.Mark, StringComparer.Ordinal)
            .Select(group => group.Last());

    private static MendSpace? FullForNothing(SeasonPlan plan, PlacesChange larger, MendTrial trial, int at, MendScore score)
    {
        var (before, after) = (trial.SumsOf(0), trial.SumsOf(at));
        var space = plan.Scenario.Spaces.IndexOf(larger.Space);
        var share = (double)before.WaitSeasons[space] / before.Seasons;
        if (share < OftenFull || score.IsBetter(trial.SeasonsOf(0), trial.SeasonsOf(at)))
        {
            return null;
        }

        var then = Enumerable
            .Range(0, plan.Scenario.Spaces.Length)
            .Where(each => each != space && after.Waits[each] - before.Waits[each] >= Math.Max(before.Seasons, before.Waits[each] / 20))
            .OrderByDescending(each => after.Waits[each] - before.Waits[each])
            .Select(each => plan.Scenario.Spaces[each])
            .FirstOrDefault();
        var late = trial.Gain(at).Late;
        return new MendSpace(larger.Space, share, larger, then, late is { IsReal: true, Difference: > 0 });
    }
}
