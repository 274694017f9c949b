using BenchSim.Season.Climate;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Play;

/// <summary>
/// Step 3. Potting up: whole flats are emptied into trays (docs/model.md section 2). A flat that is refused ends the step.
/// </summary>
internal sealed class PotUp(SeasonState state) : Activity(state)
{
    private bool _ended;

    protected override List<BatchState> Batches => State.WithBenches;

    public override void Attempt()
    {
        _ended = false;
        base.Attempt();
    }

    protected override void Attempt(BatchState batch)
    {
        if (!batch.IsPotUp)
        {
            return;
        }

        if (_ended)
        {
            State.Places.NoteLimit(batch, batch.Benches);
            return;
        }

        foreach (var lot in State.Moves.TakeInHand(batch.OnBench))
        {
            if (batch.Filled == batch.Plan.Trays)
            {
                // Its other flats have just been thrown out as surplus.
                break;
            }

            if (lot.IsFlat && lot.MovedRound != State.Round && lot.PotHour <= State.Now && !EmptyFlats(batch, lot))
            {
                _ended = true;
                return;
            }
        }
    }

    // Flat by flat, lowest index first. False when a flat was refused.
    private bool EmptyFlats(BatchState batch, Lot lot)
    {
        while (lot.Count > 0)
        {
            lot.Hindrance = Hindrance.None;
            var seedlings = SeedlingsOf(batch, lot);
            var trays = TraysFrom(batch, lot, seedlings);
            if (!State.Labour.CanPot(trays))
            {
                return false;
            }

            if (!TraysFit(batch, lot.Space, trays))
            {
                // The free places this flat needs are kept out of reach of the later steps of this pass.
                LotMoves.Refuse(lot, trays * batch.PlacesEach(flat: false));
                State.Places.CloseForPass(batch.Benches);
                return false;
            }

            Empty(batch, lot, seedlings, trays);
            if (batch.Filled == batch.Plan.Trays)
            {
                DiscardSurplus(State, batch);
                return true;
            }
        }

        return true;
    }

    private int SeedlingsOf(BatchState batch, Lot lot)
    {
        var mean = State.Heat.PathMeanOf(lot);
        var chance = batch.PacketGermination * Stand.RelativeGermination(batch.Crop, mean) * (1 - batch.Crop.PotUpLoss) * lot.Spared;
        var draw = State.IsPlanning ? 0.5 : batch.Luck.Fill(State.Season, LuckPurpose.Flat, lot.First);
        return batch.FlatFill.Quantile(chance, draw);
    }

    // Whole trays, and the rest passed on; the last flat rounds up. Never more than the planned trays not yet filled.
    private static int TraysFrom(BatchState batch, Lot lot, int seedlings)
    {
        var plants = batch.Carry + seedlings;
        var cells = batch.Plan.Tray.Cells;
        var trays = IsLastFlat(batch, lot) ? (plants + cells - 1) / cells : plants / cells;
        return Math.Min(trays, batch.Plan.Trays - batch.Filled);
    }

    private static bool IsLastFlat(BatchState batch, Lot lot)
    {
        if (lot.Count > 1 || batch.Unsown > 0 || batch.OnMat.Count > 0)
        {
            return false;
        }

        foreach (var other in SeasonState.Each(batch.OnBench))
        {
            if (other.IsFlat && !ReferenceEquals(other, lot))
            {
                return false;
            }
        }

        return true;
    }

    // Its own place is freed first; its trays may stand on several benches.
    private bool TraysFit(BatchState batch, int ownSpace, int trays)
    {
        var (each, own) = (batch.PlacesEach(flat: false), batch.PlacesEach(flat: true));
        if (State.Places.FitsTogether(batch.Benches, each, ownSpace, own) >= trays)
        {
            return true;
        }

        State.Places.NoteLimit(batch, batch.Benches);
        return false;
    }

    private void Empty(BatchState batch, Lot lot, int seedlings, int trays)
    {
        State.Places.Hold(batch, lot.Space, -batch.PlacesEach(flat: true));
        var plants = batch.Carry + seedlings;
        var cells = batch.Plan.Tray.Cells;
        State.Ledger.KeepPotted(batch, lot.First, seedlings, trays);
        var full = Math.Min(trays, plants / cells);
        StandTrays(batch, lot, full, 0);
        if (full < trays)
        {
            StandTrays(batch, lot, 1, plants - (full * cells));
        }

        batch.Carry = Math.Max(0, plants - (trays * cells));
        State.Labour.PotFlat(trays);
        State.Changes++;
        lot.First++;
        lot.Count--;
        if (lot.Count == 0)
        {
            batch.OnBench.Remove(lot);
            State.Moves.Recycle(lot);
        }
    }

    // Trays with the flat's past, their need raised by the check of potting up.
    private void StandTrays(BatchState batch, Lot flat, int trays, int plants)
    {
        var each = batch.PlacesEach(flat: false);
        var heat = State.Heat.OfGrowth(batch, flat, State.Now);
        var mean = State.Heat.PathMeanOf(flat);
        foreach (var space in batch.Benches)
        {
            var count = Math.Min(trays, Math.Max(0, State.Places.Room(space)) / each);
            if (count < trays)
            {
                State.Places.NoteLimit(batch, space);
            }

            if (count == 0)
            {
                continue;
            }

            var lot = State.Moves.NewLot();
            lot.CopyFrom(flat);
            lot.IsFlat = false;
            lot.First = batch.Filled;
            lot.Count = count;
            lot.PottedPlants = plants;
            lot.Spared = 1;
            lot.GrowthHeat = heat;
            lot.PathMeanC = mean;
            lot.GrowthNeed = batch.GrowthNeed + batch.CheckUnits;
            lot.PotHour = lot.FinishHour = lot.GrownHour = double.PositiveInfinity;
            lot.PottedHour = State.Now;
            lot.PlaceDays = 0;
            lot.HoldDays = 0;
            batch.Filled += count;
            trays -= count;
            State.Heat.BeginStay(batch, lot, space);
            State.Places.Hold(batch, space, count * each);
            State.Moves.Add(batch, batch.OnBench, lot);
            if (trays == 0)
            {
                return;
            }
        }
    }

    /// <summary>The planned trays of a batch are filled: its other flats are thrown out, and none is sown any more.</summary>
    public static void DiscardSurplus(SeasonState state, BatchState batch)
    {
        batch.Unsown = 0;
        batch.SowWaiting = 0;
        DiscardFlats(state, batch, batch.OnMat);
        DiscardFlats(state, batch, batch.OnBench);
    }

    private static void DiscardFlats(SeasonState state, BatchState batch, List<Lot> lots)
    {
        for (var index = lots.Count - 1; index >= 0; index--)
        {
            if (lots[index].IsFlat)
            {
                state.Ledger.ThrowOut(batch, lots, index, DiscardReason.Surplus);
            }
        }
    }
}
