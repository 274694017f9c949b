using BenchSim.Season.Climate;
using BenchSim.Season.Evidence;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Plays seasons of one plan, one at a time. Not safe for use by several threads: make <see cref="Another"/> for each.</summary>
public sealed class SeasonPlayer
{
    private readonly PlanClimates _climates;
    private readonly SiteTables _tables;
    private readonly BatchLuck[] _lucks;
    private readonly SeasonCore _core;

    /// <summary>Makes a player.</summary>
    /// <param name="plan">The plan to play.</param>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="store">Keeps the climates of its seasons for other plays, and gives those that others kept; null for none.</param>
    public SeasonPlayer(SeasonPlan plan, ulong seed, ClimateStore? store = null)
        : this(plan, seed, LotGrain.AsSplit, null, store) { }

    /// <summary>
    /// Makes a player whose sowing instants and stays are given from outside, to check the activities of the round against theory.
    /// </summary>
    /// <param name="plan">The plan to play.</param>
    /// <param name="seed">Seed of all other draws.</param>
    /// <param name="stays">Sowing instants and stays.</param>
    public SeasonPlayer(SeasonPlan plan, ulong seed, GivenStays stays)
        : this(plan, seed, LotGrain.TrayByTray, stays) => ArgumentNullException.ThrowIfNull(stays);

    internal SeasonPlayer(SeasonPlan plan, ulong seed, LotGrain grain, GivenStays? stays, ClimateStore? store = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        (Plan, Seed) = (plan, seed);
        _climates = new PlanClimates(plan.Scenario, plan.Days, seed, store);
        _tables = new SiteTables(plan.Scenario, plan.Days);
        _lucks = BatchStates.Lucks(plan.Scenario, plan.Batches, seed, Seen());
        _core = Core(grain, stays);
    }

    private SeasonPlayer(SeasonPlayer other)
    {
        (Plan, Seed) = (other.Plan, other.Seed);
        (_climates, _tables, _lucks) = (other._climates, other._tables, other._lucks);
        _core = Core(other._core.State.Grain, other._core.State.Stays);
    }

    /// <summary>The plan.</summary>
    public SeasonPlan Plan { get; }

    /// <summary>Seed of all luck.</summary>
    public ulong Seed { get; }

    /// <summary>Another player of the same plan and luck, for another thread; the climates are shared.</summary>
    public SeasonPlayer Another() => new(this);

    /// <summary>Plays one season. The luck depends on the seed, the season and the batch ids alone.</summary>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="limits">Places as given, or otherwise.</param>
    /// <param name="result">Filled; its arrays are made or cleared as needed. Use one result a kind of play.</param>
    public void Play(int season, PlaceLimits limits, SeasonResult result) => Play(season, limits, result, null);

    /// <summary>The same, seen by a witness.</summary>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="limits">Places as given, or otherwise.</param>
    /// <param name="result">Filled; its arrays are made or cleared as needed. Use one result a kind of play.</param>
    /// <param name="witness">Sees what happens; null for nobody.</param>
    public void Play(int season, PlaceLimits limits, SeasonResult result, ISeasonWitness? witness)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(result);
        using var borrowed = _climates.Borrow(season);
        _core.Play(season, limits, borrowed.Climate, result, witness);
    }

    /// <summary>Plays the rest of a season from a start.</summary>
    /// <param name="season">Number of the season, from 0: its weather and luck.</param>
    /// <param name="limits">Places as given, or otherwise.</param>
    /// <param name="start">How the season stands; its batches are those of the plan, in the same order.</param>
    /// <param name="result">Filled, what the start has counted included.</param>
    /// <param name="witness">Sees what happens; null for nobody.</param>
    /// <exception cref="ArgumentException">A start with other batches, or of a day past the last.</exception>
    public void Play(int season, PlaceLimits limits, SeasonStart start, SeasonResult result, ISeasonWitness? witness = null)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(result);
        if (start.Batches.Length != Plan.Batches.Length || start.Day < 0 || start.Day >= Plan.Days)
        {
            throw new ArgumentException("The start has the batches of the plan and lies in its days.", nameof(start));
        }

        using var borrowed = _climates.Borrow(season);
        _core.Play(season, limits, borrowed.Climate, result, witness, start);
    }

    /// <summary>
    /// Plays one season with places as given, and works out the places that would be held on each day were there no limits, and whether it
    /// would
    /// fit: what a play with <see cref="PlaceLimits.None"/> tells of them, in less time.
    /// </summary>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="asGiven">Filled.</param>
    /// <param name="withoutLimits">
    /// Filled where a limit bit; of it <see cref="SeasonResult.Held"/>, plants out and in time and whether it fits are to be read, and
    /// nothing else.
    /// </param>
    /// <returns>The one of the two that tells of the season without limits: as given, where no limit ever bit.</returns>
    public SeasonResult PlayBoth(int season, SeasonResult asGiven, SeasonResult withoutLimits)
    {
        ArgumentNullException.ThrowIfNull(asGiven);
        ArgumentNullException.ThrowIfNull(withoutLimits);
        using var borrowed = _climates.Borrow(season);
        _core.PlayBoth(season, borrowed.Climate, asGiven, withoutLimits);
        return asGiven.LimitEverBit ? withoutLimits : asGiven;
    }

    // Of any season, since what they share is asked alone: the weather of the days that are over.
    private Beliefs? Seen()
    {
        if (Plan.Past is not { TellsOfLuck: true } past)
        {
            return null;
        }

        using var borrowed = _climates.Borrow(0);
        return Beliefs.Of(Plan, past, borrowed.Climate);
    }

    private SeasonCore Core(LotGrain grain, GivenStays? stays) =>
        new(
            new SeasonState(Plan.Scenario, BatchStates.Of(Plan.Scenario, Plan.Batches, _lucks), _tables, _climates.Layout, PlayMode.Season)
            {
                Seed = Seed,
                SownInTimeDays = Plan.SownInTimeDays,
                Grain = grain,
                Stays = stays,
                Past = Plan.Past,
            }
        );
}
