using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Plays seasons of one plan, one at a time. Not safe for use by several threads: make <see cref="Another"/> for each.</summary>
public sealed class SeasonPlayer
{
    private readonly ClimateStore climates;
    private readonly SiteTables tables;
    private readonly BatchLuck[] lucks;
    private readonly SeasonCore core;
    private SeasonClimate? own;

    /// <summary>Makes a player.</summary>
    /// <param name="plan">The plan to play.</param>
    /// <param name="seed">Seed of all luck.</param>
    public SeasonPlayer(SeasonPlan plan, ulong seed)
        : this(plan, seed, LotGrain.AsSplit, null) { }

    internal SeasonPlayer(SeasonPlan plan, ulong seed, LotGrain grain, StaysFromOutside? stays)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Plan = plan;
        Seed = seed;
        climates = new ClimateStore(plan.Scenario, plan.Days);
        tables = new SiteTables(plan.Scenario, plan.Days);
        lucks = BatchStates.Lucks(plan.Scenario, plan.Batches, seed);
        core = Core(grain, stays);
    }

    private SeasonPlayer(SeasonPlayer other)
    {
        Plan = other.Plan;
        Seed = other.Seed;
        climates = other.climates;
        tables = other.tables;
        lucks = other.lucks;
        core = Core(other.core.Grain, other.core.Stays);
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

    internal void Play(int season, PlaceLimits limits, SeasonResult result, ISeasonWitness? witness)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(result);
        core.Play(season, limits, climates.For(Seed, season, ref own), result, witness);
    }

    private SeasonCore Core(LotGrain grain, StaysFromOutside? stays) =>
        new(Plan.Scenario, BatchStates.Of(Plan.Scenario, Plan.Batches, lucks), tables, climates.Layout, PlayMode.Season)
        {
            Grain = grain,
            Stays = stays,
        };
}
