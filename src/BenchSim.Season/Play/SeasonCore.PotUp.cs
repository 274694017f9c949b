using BenchSim.Season.Climate;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Play;

/// <summary>Step 3: whole flats are emptied into trays (docs/model.md section 2).</summary>
internal sealed partial class SeasonCore
{
    private void PotUp()
    {
        step++;
        foreach (var batch in Each(asked))
        {
            if (!batch.IsPotUp || batch.OnBench.Count == 0 || !IsAwake(batch))
            {
                continue;
            }

            foreach (var lot in TakeInHand(batch.OnBench))
            {
                if (batch.Filled == batch.Plan.Trays)
                {
                    // Its other flats have just been thrown out as surplus.
                    break;
                }

                if (lot.IsFlat && lot.MovedRound != round && lot.PotHour <= now && !EmptyFlats(batch, lot))
                {
                    return;
                }
            }
        }
    }

    // Flat by flat, lowest index first. False when a flat was refused, which ends the step.
    private bool EmptyFlats(BatchState batch, Lot lot)
    {
        while (lot.Count > 0)
        {
            lot.Hindrance = Hindrance.None;
            var seedlings = SeedlingsOf(batch, lot);
            var trays = TraysFrom(batch, lot, seedlings);
            if (!CanPotToday(trays))
            {
                return false;
            }

            if (!TraysFit(batch, lot.Space, trays))
            {
                Refuse(lot, trays * batch.PlacesEach(flat: false));
                foreach (var space in batch.Benches)
                {
                    // The free places this flat needs are kept out of reach of the later steps of this pass.
                    closedInPass[space] = pass;
                }

                return false;
            }

            Empty(batch, lot, seedlings, trays);
            if (batch.Filled == batch.Plan.Trays)
            {
                DiscardSurplus(batch);
                return true;
            }
        }

        return true;
    }

    private int SeedlingsOf(BatchState batch, Lot lot)
    {
        var chance = batch.PacketGermination * Stand.RelativeGermination(batch.Crop, PathMeanOf(lot)) * (1 - batch.Crop.PotUpLoss);
        return batch.FlatFill.Quantile(chance, FillDraw(batch, LuckPurpose.Flat, lot.First));
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

        foreach (var other in Each(batch.OnBench))
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
        var each = batch.PlacesEach(flat: false);
        var own = batch.PlacesEach(flat: true);
        var fit = 0L;
        foreach (var space in batch.Benches)
        {
            var room = (space == ownSpace ? own : 0) + Room(space);
            fit += Math.Max(0, room) / each;
        }

        return fit >= trays;
    }

    private void Empty(BatchState batch, Lot lot, int seedlings, int trays)
    {
        var flat = lot.First;
        Hold(batch, lot.Space, -batch.PlacesEach(flat: true));
        var plants = batch.Carry + seedlings;
        var cells = batch.Plan.Tray.Cells;
        witness?.Potted(batch, flat, seedlings, batch.Filled, trays, now);
        var full = Math.Min(trays, plants / cells);
        StandTrays(batch, lot, full, 0);
        if (full < trays)
        {
            StandTrays(batch, lot, 1, plants - (full * cells));
        }

        batch.Carry = Math.Max(0, plants - (trays * cells));
        pottedToday += trays;
        flatsToday++;
        moves++;
        result.Potted[day] += trays;
        var outcome = result.Batches[batch.Index];
        outcome.FlatsPotted++;
        outcome.TraysStarted += trays;
        outcome.PottedUp = day;
        lot.First++;
        lot.Count--;
        if (lot.Count == 0)
        {
            batch.OnBench.Remove(lot);
            spare.Push(lot);
        }
    }

    // Trays with the flat's past, their need raised by the check of potting up.
    private void StandTrays(BatchState batch, Lot flat, int trays, int plants)
    {
        var each = batch.PlacesEach(flat: false);
        var heat = HeatOfGrowth(batch, flat);
        var mean = PathMeanOf(flat);
        foreach (var space in batch.Benches)
        {
            var count = Math.Min(trays, Math.Max(0, Room(space)) / each);
            if (count == 0)
            {
                continue;
            }

            var lot = NewLot();
            lot.CopyFrom(flat);
            lot.IsFlat = false;
            lot.First = batch.Filled;
            lot.Count = count;
            lot.PottedPlants = plants;
            lot.GrowthHeat = heat;
            lot.PathMeanC = mean;
            lot.GrowthNeed = batch.GrowthNeed + batch.CheckUnits;
            lot.PotHour = double.PositiveInfinity;
            lot.GrownHour = double.PositiveInfinity;
            lot.PlaceDays = 0;
            lot.HoldDays = 0;
            batch.Filled += count;
            trays -= count;
            Settle(batch, lot, space);
            Hold(batch, space, count * each);
            AddLot(batch, batch.OnBench, lot);
            if (trays == 0)
            {
                return;
            }
        }
    }

    private void DiscardSurplus(BatchState batch)
    {
        batch.Unsown = 0;
        batch.SowWaiting = 0;
        DiscardFlats(batch, batch.OnMat);
        DiscardFlats(batch, batch.OnBench);
    }

    private void DiscardFlats(BatchState batch, List<Lot> lots)
    {
        for (var index = lots.Count - 1; index >= 0; index--)
        {
            if (lots[index].IsFlat)
            {
                ThrowOut(batch, lots, index, DiscardReason.Surplus);
            }
        }
    }
}
