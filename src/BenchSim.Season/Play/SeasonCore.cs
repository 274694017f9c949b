using System.Runtime.InteropServices;
using BenchSim.Engine;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>How a core plays.</summary>
internal enum PlayMode
{
    /// <summary>A season: its weather, its luck, its holds.</summary>
    Season,

    /// <summary>The planned dates: normal weather, no luck, no holds, no labour limits, no waiting for a date.</summary>
    Planning,
}

/// <summary>
/// Plays one season as a sweep over lots: the state is here, the steps of the round in the files beside this one
/// (docs/model.md section 3). Nothing is allocated a season once the lots have been made.
/// </summary>
internal sealed partial class SeasonCore
{
    private readonly Scenario scenario;
    private readonly SiteRules rules;
    private readonly SiteTables tables;
    private readonly ClimateLayout layout;
    private readonly BatchState[] batches;
    private readonly BatchState[] ranked;
    private readonly Simulation simulation = new();
    private readonly BatchState[] latestFirst;
    private readonly List<BatchState> due = [];
    private readonly List<BatchState> active = [];
    private readonly List<BatchState> asked = [];
    private readonly Stack<Lot> spare = new();
    private readonly int[] held;
    private readonly int[] heldByGrower;
    private readonly int[] closedInStep;
    private readonly int[] closedInPass;
    private readonly PlayMode mode;
    private readonly bool maySleep;

    private SeasonClimate climate = null!;
    private SeasonResult result = null!;
    private ISeasonWitness? witness;
    private int[][] capacity = [];
    private int season;
    private int day;
    private double now;
    private int round;
    private int step;
    private int pass;
    private bool aisleOpen;
    private int moves;
    private int daysKept;

    public SeasonCore(Scenario scenario, BatchState[] batches, SiteTables tables, ClimateLayout layout, PlayMode mode)
    {
        this.scenario = scenario;
        this.batches = batches;
        this.tables = tables;
        this.layout = layout;
        this.mode = mode;
        rules = scenario.Rules;
        maySleep =
            rules.Rounds == RoundKind.WorkRound
            && !rules.MoveBack
            && !rules.Reliefs.Contains(Relief.OffMatEarly)
            && !rules.Reliefs.Contains(Relief.TableEarly);
        ranked =
        [
            .. batches
                .OrderBy(batch => batch.SetOutDay)
                .ThenBy(batch => batch.SowDay)
                .ThenBy(batch => batch.Plan.Order.Id, IdOrder.Instance),
        ];
        for (var rank = 0; rank < ranked.Length; rank++)
        {
            ranked[rank].Rank = rank;
        }

        latestFirst = [.. batches.OrderByDescending(batch => batch.SowDay)];
        var growers = batches.Length == 0 ? 0 : batches.Max(batch => batch.Grower) + 1;
        held = new int[scenario.Spaces.Length];
        heldByGrower = new int[growers];
        closedInStep = new int[scenario.Spaces.Length];
        closedInPass = new int[scenario.Spaces.Length];
    }

    /// <summary>Stays and sowing instants given from outside, to check the model against queueing theory; null in every season.</summary>
    public StaysFromOutside? Stays { get; init; }

    /// <summary>How lots are kept; changes no result.</summary>
    public LotGrain Grain { get; init; }

    public IReadOnlyList<BatchState> Batches => batches;

    public Scenario Scenario => scenario;

    /// <summary>Places held in a space now.</summary>
    public int HeldIn(int space) => held[space];

    /// <summary>Places of a space today.</summary>
    public int PlacesOf(int space) => capacity[space][day];

    /// <summary>Plays a season.</summary>
    public void Play(int season, PlaceLimits limits, SeasonClimate climate, SeasonResult result, ISeasonWitness? witness = null)
    {
        this.season = season;
        this.climate = climate;
        this.result = result;
        this.witness = witness;
        capacity = tables.Capacity(limits);
        Clear();
        foreach (var batch in batches)
        {
            DrawLuck(batch);
        }

        witness?.Begins(this);
        RunDays(0);
        day = tables.Days - 1;
        Finish();
    }

    private void RunDays(int firstDay)
    {
        day = firstDay;
        simulation.Reset();
        simulation.Start(PlayDays(), "the work rounds");
        simulation.Run();
    }

    // The one process of a season: it waits for the next round (or change), sweeps the lots, and waits again. A sweep says more plainly than a
    // process a lot could who goes first when a whole bench moves at once (docs/decisions/007-a-sweep-of-lots.md).
    private async Process PlayDays()
    {
        for (; day < tables.Days && !IsWalkedOut; day++)
        {
            var instant = (day * 24) + tables.RoundHour;
            if (rules.Rounds == RoundKind.AnyTime)
            {
                for (var next = NextChange(instant); next <= instant; next = NextChange(instant))
                {
                    await simulation.Until(next / 24);
                    SettleAt(next, Math.Min((int)(next / 24), tables.Days - 1));
                }

                await simulation.Until(instant / 24);
                SettleAt(instant, (int)(instant / 24));
            }
            else if (tables.IsWorkDay[day])
            {
                await simulation.Until(instant / 24);
                now = instant;
                WorkRound();
            }

            KeepDay();
            witness?.DayEnds(this, day);
        }
    }

    private void WorkRound()
    {
        BeginRound();
        RunPass();
        ReliefPasses();
        GiveUpSowings();
    }

    private void BeginRound()
    {
        round++;
        aisleOpen = false;
        earlyOffMat = false;
        earlyTable = false;
        BeginLabour();
        FindActive();
        FindAsked();
    }

    // Batches that stand somewhere or are due to be sown, in rank; no step of a round brings another to life, and one that is over stays so.
    private void FindActive()
    {
        for (var index = active.Count - 1; index >= 0; index--)
        {
            if (active[index].IsOver)
            {
                active.RemoveAt(index);
            }
        }

        for (var index = due.Count - 1; index >= 0; index--)
        {
            var batch = due[index];
            if (IsSowDue(batch))
            {
                due.RemoveAt(index);
                Activate(batch);
            }
            else if (Stays is null)
            {
                // The rest are due later.
                return;
            }
        }
    }

    private void Activate(BatchState batch)
    {
        var at = active.Count;
        while (at > 0 && active[at - 1].Rank > batch.Rank)
        {
            at--;
        }

        active.Insert(at, batch);
    }

    // What is kept of a day is what hindered in its last pass: a tray that a relief pass no longer asks does not wait.
    private void ClearHindrances()
    {
        foreach (var batch in Each(asked))
        {
            batch.SowWaiting = 0;
            if (IsAwake(batch))
            {
                ClearHindrances(batch.OnMat);
                ClearHindrances(batch.OnBench);
            }

            ClearHindrances(batch.OnTable);
        }
    }

    private static void ClearHindrances(List<Lot> lots)
    {
        foreach (var lot in Each(lots))
        {
            lot.Hindrance = Hindrance.None;
        }
    }

    // One sweep, downstream first; a tray moves at most once a round.
    private void RunPass()
    {
        pass++;
        ClearHindrances();
        Discard();
        SetOut();
        DiscardLateFromTable();
        BenchToTable();
        PotUp();
        if (rules.MoveBack)
        {
            MoveBack();
        }

        MatToBench();
        Sow();
    }

    private void Clear()
    {
        Array.Clear(held);
        Array.Clear(heldByGrower);
        foreach (var batch in batches)
        {
            Recycle(batch.OnMat);
            Recycle(batch.OnBench);
            Recycle(batch.OnTable);
            batch.Clear();
        }

        result.Prepare(held.Length, scenario.Houses.Length, batches.Length, heldByGrower.Length, tables.Days, rules.Reliefs.Length);
        result.Season = season;
        due.Clear();
        due.AddRange(latestFirst);
        active.Clear();
        asked.Clear();
        now = -1;
        labourDay = -1;
        daysKept = 0;
        round = 0;
        step = 0;
        pass = 0;
        Array.Clear(closedInStep);
        Array.Clear(closedInPass);
    }

    private void Recycle(List<Lot> lots)
    {
        foreach (var lot in lots)
        {
            spare.Push(lot);
        }

        lots.Clear();
    }

    private void DrawLuck(BatchState batch)
    {
        var planning = mode == PlayMode.Planning;
        var emergence = batch.Crop.EmergeHeat * (planning ? 1 : batch.Luck.Emergence(season));
        var growth = planning ? 1 : batch.Luck.Growth(season);
        batch.EmergeNeed = HeatTable.Units(emergence);
        batch.LeaveNeed = HeatTable.Units(emergence * batch.LeaveSpread);
        batch.EarlyNeed = HeatTable.Units(emergence * batch.EarlySpread);
        batch.GrowthNeed = HeatTable.Units(growth * batch.GrowthDegreeDays);
        batch.PotUpNeed = HeatTable.Units(growth * batch.PotUpDegreeDays);
        batch.PacketGermination = planning ? batch.Plan.Germination : batch.Luck.Packet(season);
    }

    // To go through a list that nothing changes meanwhile, without the checks of its own enumerator.
    private static ReadOnlySpan<T> Each<T>(List<T> list) => CollectionsMarshal.AsSpan(list);

    private Lot NewLot()
    {
        if (!spare.TryPop(out var lot))
        {
            lot = new Lot();
        }

        return lot;
    }

    private double FillDraw(BatchState batch, LuckPurpose purpose, int index) =>
        mode == PlayMode.Planning ? 0.5 : batch.Luck.Fill(season, purpose, index);
}
