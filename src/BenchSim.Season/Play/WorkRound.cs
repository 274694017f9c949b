using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// The work round: the activities in their order, downstream first; then, as long as something waits, each relief in the site's order and
/// the activities
/// again; then what is unsown for too long is given up (docs/model.md sections 2 and 3).
/// </summary>
internal sealed class WorkRound
{
    private readonly SeasonState _state;
    private readonly Activity[] _activities;

    public WorkRound(SeasonState state)
    {
        _state = state;
        Activity?[] inOrder =
        [
            state.IsPlanning ? null : new Discard(state),
            new SetOut(state),
            state.IsPlanning ? null : new DiscardFromTable(state),
            new ToTable(state),
            new PotUp(state),
            new Finish(state),
            state.Rules.MoveBack ? new MoveBack(state) : null,
            new OffMat(state),
            new Sow(state),
        ];
        _activities = [.. inOrder.OfType<Activity>()];
    }

    /// <summary>Makes a round among the batches that have anything to ask; a tray moves at most once in it.</summary>
    public void Make()
    {
        _state.Round++;
        _state.Places.IsAisleOpen = false;
        _state.MayLeaveMatEarly = false;
        _state.MayTableEarly = false;
        _state.Labour.Begin(_state.Day);
        _state.SortAsked();
        Pass();
        if (_state.IsPlanning)
        {
            return;
        }

        foreach (var relief in _state.Rules.Reliefs)
        {
            if (!AnythingWaits())
            {
                break;
            }

            if (Opens(relief))
            {
                Pass();
            }
        }

        GiveUpSowings();
    }

    /// <summary>Whether a tray, a flat or a sowing lacks nothing but a place.</summary>
    public bool AnythingWaits() => Waits(SpaceKind.Mat) || Waits(SpaceKind.Bench) || Waits(SpaceKind.Table);

    private void Pass()
    {
        _state.Places.BeginPass();
        ClearHindrances();
        foreach (var activity in _activities)
        {
            _state.Places.BeginStep();
            activity.Attempt();
        }
    }

    // What is kept of a day is what hindered in its last pass: a tray that a relief pass no longer asks does not wait.
    private void ClearHindrances()
    {
        foreach (var batch in SeasonState.Each(_state.WithSowings))
        {
            batch.SowWaiting = 0;
        }

        foreach (var batch in SeasonState.Each(_state.WithMats))
        {
            ClearHindrances(batch.OnMat);
        }

        foreach (var batch in SeasonState.Each(_state.WithBenches))
        {
            ClearHindrances(batch.OnBench);
        }

        foreach (var batch in SeasonState.Each(_state.WithTables))
        {
            ClearHindrances(batch.OnTable);
        }
    }

    private static void ClearHindrances(List<Lot> lots)
    {
        foreach (var lot in SeasonState.Each(lots))
        {
            lot.Hindrance = Hindrance.None;
        }
    }

    // The aisle helps whatever waits; leaving early only what waits for the space that is left.
    private bool Opens(Relief relief) =>
        relief switch
        {
            Relief.Aisle => _state.Places.IsAisleOpen = true,
            Relief.OffMatEarly => _state.MayLeaveMatEarly = Waits(SpaceKind.Mat),
            _ => _state.MayTableEarly = Waits(SpaceKind.Bench),
        };

    private bool Waits(SpaceKind kind)
    {
        foreach (var batch in SeasonState.Each(_state.Asked))
        {
            if (batch.SowWaiting > 0 && kind != SpaceKind.Table && _state.Scenario.Spaces[batch.SowWaitingAt].Kind == kind)
            {
                return true;
            }

            var waits = kind switch
            {
                SpaceKind.Mat => false,
                SpaceKind.Bench => AnyRefused(batch.OnMat, flats: null) || AnyRefused(batch.OnBench, flats: true),
                _ => AnyRefused(batch.OnBench, flats: false),
            };
            if (waits)
            {
                return true;
            }
        }

        return false;
    }

    private static bool AnyRefused(List<Lot> lots, bool? flats)
    {
        foreach (var lot in SeasonState.Each(lots))
        {
            if (lot.Hindrance == Hindrance.Place && (flats is null || lot.IsFlat == flats))
            {
                return true;
            }
        }

        return false;
    }

    // Once the round has tried everything, its reliefs too.
    private void GiveUpSowings()
    {
        foreach (var batch in SeasonState.Each(_state.WithSowings))
        {
            if (batch.Unsown > 0 && batch.DaysWaited(_state.Day) >= _state.Rules.SowGiveUpDays)
            {
                _state.Ledger.GiveUp(batch);
            }
        }
    }
}
