using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Mending;

/// <summary>
/// Looks for the changes to make: the best one, then the best beside it, and so on, each time with a look back whether all before it are
/// still needed. What costs nothing to buy comes first. It is a search by steps: nothing proves that no other set is better.
/// </summary>
internal sealed class MendSearch
{
    // Confidence of an interval of half a standard error to either side: the trial says whether the goal is met for sure.
    private const double HalfAnError = 0.38;

    private const int MostAsked = 3;

    private readonly SeasonPlan _base;
    private readonly MendOptions _options;
    private readonly MendPlanning _planning;
    private readonly MendPlays _plays;
    private readonly MendScore _score;
    private readonly MendSeason[] _baseSeasons;
    private readonly ImmutableArray<MendTried> _singles;
    private readonly int _days;

    /// <summary>Readies it.</summary>
    /// <param name="basePlan">The plan as it is, to the last day played.</param>
    /// <param name="options">How to look.</param>
    /// <param name="planning">Makes plans.</param>
    /// <param name="plays">Plays them.</param>
    /// <param name="singles">Every change that can be made by itself, with its plan.</param>
    public MendSearch(SeasonPlan basePlan, MendOptions options, MendPlanning planning, MendPlays plays, ImmutableArray<MendTried> singles)
    {
        (_base, _options, _planning, _plays, _singles) = (basePlan, options, planning, plays, singles);
        _days = basePlan.Days;
        _score = new MendScore(basePlan.Batches.Sum(batch => (long)batch.Order.Plants));
        _baseSeasons = Play([basePlan], 0, options.SearchSeasons)[0];
    }

    /// <summary>The changes that look most promising by themselves, best first: played in all seasons of the search.</summary>
    public ImmutableArray<MendTried> Promising { get; private set; } = [];

    /// <summary>The changes to make, in the order found.</summary>
    public ImmutableArray<MendJoined> Find()
    {
        var first = Look([], [.. _singles.Where(single => !single.Change.IsOfTheOrder)], _baseSeasons);
        Promising = first.Promising;
        var set = new MendSet([], _base, _baseSeasons);
        set = Join(set, [.. first.Alive.Where(each => !each.Change.IsBought)], first.Promising);
        set = Join(set, first.Alive, set.Joined.IsEmpty ? first.Promising : null);
        return set.Joined;
    }

    /// <summary>Changes of the order that look promising by themselves.</summary>
    public ImmutableArray<MendTried> OfTheOrder() =>
        [
            .. Look([], [.. _singles.Where(single => single.Change.IsOfTheOrder)], _baseSeasons)
                .Promising.Where(each => _score.IsBetter(_baseSeasons, each.Seasons)),
        ];

    private MendSet Join(MendSet set, ImmutableArray<MendTried> candidates, ImmutableArray<MendTried>? looked)
    {
        while (!IsMet(set.Seasons) && set.Joined.Length < _options.MostJoined)
        {
            var found = looked ?? Look([.. set.Joined.Select(each => each.Change)], candidates, set.Seasons).Promising;
            looked = null;
            if (Confirmed(set, candidates, found) is not { } next)
            {
                return set;
            }

            // Each step leaves the plan better than it was, so the search comes to an end: a look back may give up some of a gain, not all.
            var back = LookBack(next);
            set = _score.Gain(set.Seasons, back.Seasons).Mean > 0 ? back : next;
        }

        return set;
    }

    // The best of many is best by luck too: it has to be better in other seasons as well, or the next best is asked.
    private MendSet? Confirmed(MendSet set, ImmutableArray<MendTried> candidates, ImmutableArray<MendTried> found)
    {
        for (var asked = 0; asked < MostAsked && Best(set, candidates, found) is { } next; asked++)
        {
            var seasons = Play([set.Plan, next.Plan], _options.SearchSeasons, _options.SearchSeasons);
            if (_score.IsConfirmed(seasons[0], seasons[1]))
            {
                return next;
            }

            found = [.. found.Where(each => !each.Change.Excludes(next.Joined[^1].Change))];
        }

        return null;
    }

    private MendSet? Best(MendSet set, ImmutableArray<MendTried> candidates, ImmutableArray<MendTried> found)
    {
        MendTried[] better =
        [
            .. found.Where(each =>
                candidates.Any(candidate => Equals(candidate.Change, each.Change)) && _score.IsBetter(set.Seasons, each.Seasons)
            ),
        ];
        if (better.Length == 0)
        {
            return null;
        }

        // Of what cannot be told apart, or meets the goal, the cheapest.
        var best = better.MaxBy(each => Gain(set, each))!;
        var chosen = better
            .Where(each => IsMet(each.Seasons) || IsAsGood(best, each))
            .OrderBy(each => each.Change.Material)
            .ThenBy(each => MovesAgain([.. set.Joined.Select(joined => joined.Change)], each.Change))
            .ThenBy(Cost)
            .First();
        return new MendSet(
            [
                .. set.Joined.Where(each => !each.Change.Excludes(chosen.Change)),
                new MendJoined(
                    chosen.Change,
                    [.. better.Where(each => !each.Change.Excludes(chosen.Change) && IsAsGood(chosen, each)).Select(each => each.Change)]
                ),
            ],
            chosen.Plan,
            chosen.Seasons
        );
    }

    /// <summary>
    /// Sowings that a change would move of a grower of whom the changes before it have moved some already, so that of what is as good the
    /// moves are spread over the growers.
    /// </summary>
    internal static int MovesAgain(IReadOnlyCollection<MendChange> before, MendChange change)
    {
        var moved = before
            .OfType<SowChange>()
            .SelectMany(sow => sow.Moves)
            .GroupBy(move => move.Grower, StringComparer.Ordinal)
            .ToDictionary(own => own.Key, own => own.Count(), StringComparer.Ordinal);
        return change is SowChange { Moves: var moves } ? moves.Sum(move => moved.GetValueOrDefault(move.Grower)) : 0;
    }

    private double Gain(MendSet set, MendTried tried) => _score.Gain(set.Seasons, tried.Seasons).Mean;

    // Less of the same is as good where it makes no difference that matters, not already where the seasons played show none.
    private bool IsAsGood(MendTried one, MendTried other) =>
        one.Change.Excludes(other.Change) ? _score.IsLittleWorse(one.Seasons, other.Seasons) : _score.IsEqual(one.Seasons, other.Seasons);

    private static double Cost(MendTried tried) =>
        tried.Seasons.Average(season => (double)season.MoneyParts + (season.MoneyParts == 0 ? season.WorkParts : 0));

    // Takes out again what is no longer needed, and makes smaller what need not be so large.
    private MendSet LookBack(MendSet set)
    {
        for (var at = 0; at < set.Joined.Length; at++)
        {
            set = Smaller(set, at);
        }

        for (var at = set.Joined.Length - 2; at >= 0; at--)
        {
            var without = set.Joined.RemoveAt(at);
            if (PlanOf([.. without.Select(each => each.Change)]) is not { } plan)
            {
                continue;
            }

            var seasons = Play([plan], 0, _options.SearchSeasons)[0];
            if (_score.IsNoWorse(set.Seasons, seasons))
            {
                set = new MendSet(without, plan, seasons);
            }
        }

        return set;
    }

    private MendSet Smaller(MendSet set, int at)
    {
        if (set.Joined[at].Change is not PlacesChange { Steps: > 1 } large)
        {
            return set;
        }

        var smaller = _singles
            .Select(single => single.Change)
            .OfType<PlacesChange>()
            .Where(each => string.Equals(each.Mark, large.Mark, StringComparison.Ordinal) && each.Steps < large.Steps)
            .OrderBy(each => each.Steps);
        foreach (var change in smaller)
        {
            var joined = set.Joined.SetItem(at, set.Joined[at] with { Change = change });
            if (PlanOf([.. joined.Select(each => each.Change)]) is not { } plan)
            {
                continue;
            }

            var seasons = Play([plan], 0, _options.SearchSeasons)[0];
            if (IsMet(seasons) || _score.IsLittleWorse(set.Seasons, seasons))
            {
                return new MendSet(joined, plan, seasons);
            }
        }

        return set;
    }

    // Plays each candidate beside a set: all of them a few seasons, those that may be good some more, the most promising all of the search.
    private MendLook Look(MendChange[] set, ImmutableArray<MendTried> candidates, MendSeason[] before)
    {
        var plans = Beside(set, candidates);
        if (plans.Length == 0)
        {
            return new MendLook([], []);
        }

        var few = Math.Min(_options.FirstSeasons, _options.SearchSeasons);
        var more = Math.Min(3 * few, _options.SearchSeasons);
        var alive = Further(plans, few).Where(each => MayHelp(each, before)).ToArray();
        MendTried[] hopeful = [.. Further([.. alive.OrderByDescending(each => Hope(each, before)).Take(_options.Hopeful)], more)];
        MendTried[] promising = [.. Further([.. Kept(hopeful.OrderByDescending(each => Hope(each, before)))], _options.SearchSeasons)];
        _plays.Forget(plans.Select(each => each.Plan));
        return new MendLook(
            [.. promising.OrderByDescending(each => _score.Gain(before, each.Seasons).Mean)],
            [.. alive.Select(each => each with { Seasons = [] })]
        );
    }

    // Plays so many seasons of each in all.
    private MendTried[] Further(MendTried[] plans, int seasons)
    {
        if (plans.Length == 0 || plans[0].Seasons.Length >= seasons)
        {
            return plans;
        }

        var done = plans[0].Seasons.Length;
        var played = Play([.. plans.Select(each => each.Plan)], done, seasons - done);
        return [.. plans.Select((each, at) => each with { Seasons = [.. each.Seasons, .. played[at]] })];
    }

    // More places can do harm alone and good beside others.
    private bool MayHelp(MendTried tried, MendSeason[] before) =>
        _score.Gain(before, tried.Seasons) is not { Mean: 0, Error: 0 } && (tried.Change is PlacesChange || Hope(tried, before) > 0);

    // What it may well gain: a look at few seasons is not to throw the best out.
    private double Hope(MendTried tried, MendSeason[] before)
    {
        var (mean, error) = _score.Gain(before, tried.Seasons);
        return mean + (3 * error);
    }

    private MendTried[] Beside(MendChange[] set, ImmutableArray<MendTried> candidates)
    {
        MendTried[] others = [.. candidates.Where(each => !set.Contains(each.Change))];
        return set.Length == 0
            ? others
            : [.. _planning.Of(others, other => [.. set.Where(each => !each.Excludes(other.Change)), other.Change], _days)];
    }

    // Of what is free and of what is bought the most promising are kept, so that the one does not push the other out.
    private IEnumerable<MendTried> Kept(IEnumerable<MendTried> plans) =>
        plans.GroupBy(each => each.Change.IsBought).SelectMany(group => group.Take(_options.Promising));

    private bool IsMet(MendSeason[] seasons) =>
        Wilson.Interval(seasons.Count(season => season.Fits), seasons.Length, HalfAnError).Low >= _options.Goal;

    private SeasonPlan? PlanOf(MendChange[] changes) => changes.Length == 0 ? _base : _planning.Of(changes, _days);

    // The seasons of the search come after those of the trial.
    private MendSeason[][] Play(SeasonPlan[] plans, int first, int count) => _plays.Play(plans, _options.Seasons + first, count).Seasons;

    private sealed record MendLook(ImmutableArray<MendTried> Promising, ImmutableArray<MendTried> Alive);

    private sealed record MendSet(ImmutableArray<MendJoined> Joined, SeasonPlan Plan, MendSeason[] Seasons);
}

/// <summary>A change with the plan it makes, and the seasons in which that was played.</summary>
internal sealed record MendTried(MendChange Change, SeasonPlan Plan)
{
    /// <summary>Seasons of the search.</summary>
    public MendSeason[] Seasons { get; init; } = [];
}

/// <summary>A change that was joined to others.</summary>
/// <param name="Change">The change.</param>
/// <param name="AsGood">Others that gained as much at that step.</param>
internal sealed record MendJoined(MendChange Change, ImmutableArray<MendChange> AsGood);
