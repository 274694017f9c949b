using System.Runtime.InteropServices;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// The state of a season as it is played: the day, the batches with their lots, who holds which places, and the books beside it. The
/// activities of the
/// round read and change it; nothing of a season is kept anywhere else.
/// </summary>
internal sealed class SeasonState
{
    public SeasonState(Scenario scenario, BatchState[] batches, SiteTables tables, ClimateLayout layout, PlayMode mode)
    {
        (Scenario, Batches, Tables, Layout) = (scenario, batches, tables, layout);
        IsPlanning = mode == PlayMode.Planning;
        Rules = scenario.Rules;
        var growers = batches.Length == 0 ? 0 : batches.Max(batch => batch.Grower) + 1;
        Places = new PlaceBook(tables, growers);
        Labour = new LabourOfDay(Rules, IsPlanning);
        Holds = new WeatherHolds(this);
        Heat = new LotHeat(this);
        Ledger = new Ledger(this);
        Moves = new LotMoves(this);
    }

    public Scenario Scenario { get; }

    public SiteRules Rules { get; }

    public SiteTables Tables { get; }

    public ClimateLayout Layout { get; }

    /// <summary>Batches in the order of the plan.</summary>
    public BatchState[] Batches { get; }

    /// <summary>Whether planned dates are worked out, and no season is played.</summary>
    public bool IsPlanning { get; }

    /// <summary>Stays and sowing instants given from outside; null in every season.</summary>
    public GivenStays? Stays { get; init; }

    /// <summary>The days that are over; null where the season is played from its first day.</summary>
    public SeasonPast? Past { get; init; }

    /// <summary>Calendar days a sowing may wait and still count as sown in time.</summary>
    public int SownInTimeDays { get; init; }

    /// <summary>Seed of all luck; the batches have theirs already.</summary>
    public ulong Seed { get; init; }

    /// <summary>How lots are kept; changes no result.</summary>
    public LotGrain Grain { get; init; }

    public PlaceBook Places { get; }

    public LabourOfDay Labour { get; }

    public WeatherHolds Holds { get; }

    public LotHeat Heat { get; }

    public Ledger Ledger { get; }

    public LotMoves Moves { get; }

    /// <summary>
    /// Batches that a round has anything to ask, in rank: with trays to be sown, or with a lot that is due, refused or held. A batch that
    /// only grows, or
    /// stands its nights on a table, is not among them.
    /// </summary>
    public List<BatchState> Asked { get; } = [];

    /// <summary>Those of them with sowings that are due, in rank, as the round finds them.</summary>
    public List<BatchState> WithSowings { get; } = [];

    /// <summary>Those with a lot on mats that may do anything but grow.</summary>
    public List<BatchState> WithMats { get; } = [];

    /// <summary>Those with a lot on benches that may do anything but grow.</summary>
    public List<BatchState> WithBenches { get; } = [];

    /// <summary>Those with trays on a table that may do anything but stand their nights.</summary>
    public List<BatchState> WithTables { get; } = [];

    public SeasonClimate Climate { get; private set; } = null!;

    public SeasonResult Result { get; private set; } = null!;

    public ISeasonWitness? Witness { get; private set; }

    /// <summary>Number of the season, from 0.</summary>
    public int Season { get; private set; }

    public int Day { get; set; }

    /// <summary>Instant of the latest round, hours from the midnight that opens day 0; -1 before the first.</summary>
    public double Now { get; set; }

    /// <summary>Number of the latest round, from 1.</summary>
    public int Round { get; set; }

    /// <summary>
    /// Lots taken off their spaces or put on them in this round: with rounds at any time, the round is made again until there are none.
    /// </summary>
    public int Changes { get; set; }

    /// <summary>Whether trays may leave the mat early in this pass.</summary>
    public bool MayLeaveMatEarly { get; set; }

    /// <summary>Whether trays may go to the table early in this pass.</summary>
    public bool MayTableEarly { get; set; }

    /// <summary>Empties the state for a season.</summary>
    public void Begin(int season, SeasonClimate climate, SeasonResult result, ISeasonWitness? witness)
    {
        (Season, Climate, Result, Witness) = (season, climate, result, witness);
        foreach (var batch in Batches)
        {
            Moves.Recycle(batch.OnMat);
            Moves.Recycle(batch.OnBench);
            Moves.Recycle(batch.OnTable);
            batch.Clear();
        }

        Places.Clear();
        Labour.Clear();
        Ledger.Begin();
        Asked.Clear();
        (Now, Round, Changes) = (-1, 0, 0);
        (MayLeaveMatEarly, MayTableEarly) = (false, false);
    }

    /// <summary>
    /// Sorts the batches asked by where they have something to ask. What moves in a round has nothing more to ask in it, so once a round is
    /// enough.
    /// </summary>
    public void SortAsked()
    {
        WithSowings.Clear();
        WithMats.Clear();
        WithBenches.Clear();
        WithTables.Clear();
        foreach (var batch in Asked)
        {
            if (batch.Unsown > 0)
            {
                WithSowings.Add(batch);
            }

            if (!batch.IsAwake)
            {
                continue;
            }

            Holds.Nights(batch, Day);
            if (batch.OnMat.Count > 0)
            {
                WithMats.Add(batch);
            }

            if (batch.OnBench.Count > 0)
            {
                WithBenches.Add(batch);
            }

            if (batch.OnTable.Count > 0)
            {
                WithTables.Add(batch);
            }
        }
    }

    /// <summary>Draws the luck of a batch in this season, unless it was drawn in the season's last play.</summary>
    public void DrawLuck(BatchState batch)
    {
        if (batch.SeasonDrawn == Season)
        {
            return;
        }

        batch.SeasonDrawn = IsPlanning ? -1 : Season;
        var luck = IsPlanning ? new SeasonLuck(1, 1, batch.Plan.Germination, batch.Crop.StandLoss) : batch.Luck.Of(Season);
        var (emergence, growth) = (batch.Crop.EmergeHeat * luck.Emergence, luck.Growth);
        batch.EmergeNeed = HeatTable.Units(emergence);
        batch.LeaveNeed = HeatTable.Units(emergence * batch.LeaveSpread);
        batch.EarlyNeed = HeatTable.Units(emergence * batch.EarlySpread);
        batch.GrowthNeed = HeatTable.Units(growth * batch.GrowthDegreeDays);
        batch.PotUpNeed = HeatTable.Units(growth * batch.PotUpDegreeDays);
        batch.PacketGermination = luck.Germination;
        batch.StandLoss = luck.StandLoss;
    }

    /// <summary>To go through a list that nothing changes meanwhile, without the checks of its own enumerator.</summary>
    public static ReadOnlySpan<T> Each<T>(List<T> list) => CollectionsMarshal.AsSpan(list);
}
