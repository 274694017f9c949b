using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>The steps of the round from the field back to the mats.</summary>
internal sealed partial class SeasonCore
{
    private Lot[] hand = new Lot[16];

    // Step 1. Ready, date, weather hold, labour; the field always has room.
    private void SetOut()
    {
        foreach (var batch in Each(asked))
        {
            // Before its date the weather is not the only thing that keeps it.
            if (batch.OnTable.Count == 0 || !IsSetOutDate(batch))
            {
                continue;
            }

            bool? fieldHolds = null;
            foreach (var lot in TakeInHand(batch.OnTable))
            {
                if (lot.MovedRound == round || !HasHardened(batch, lot))
                {
                    continue;
                }

                if (fieldHolds ??= FieldHolds(batch))
                {
                    lot.Hindrance = CanSetOutToday(1) > 0 ? Hindrance.Hold : Hindrance.None;
                    continue;
                }

                var count = CanSetOutToday(lot.Count);
                if (count > 0)
                {
                    Send(batch, lot, count);
                }
            }
        }
    }

    private bool IsSetOutDate(BatchState batch) => mode == PlayMode.Planning || day >= batch.OutFromDay;

    private bool HasHardened(BatchState batch, Lot lot)
    {
        if (!(lot.GrownHour <= now))
        {
            return false;
        }

        if (Stays is not null)
        {
            return lot.HardenedHour <= now;
        }

        if (lot.NightsCounted >= batch.Crop.HardeningNights)
        {
            return true;
        }

        if (lot.Nights >= batch.Crop.HardeningNights)
        {
            // It has stood its nights; only cold ones that did not count keep it.
            lot.Hindrance = Hindrance.Hold;
        }

        return false;
    }

    private void Send(BatchState batch, Lot lot, int count)
    {
        var part = Split(lot, count);
        if (ReferenceEquals(part, lot))
        {
            batch.OnTable.Remove(lot);
        }

        setOutToday += count;
        Hold(batch, part.Space, -count * batch.PlacesEach(flat: false));
        result.SetOut[day] += count;
        moves += count;
        KeepOut(batch, part);
        spare.Push(part);
    }

    // Step 2. Ready, date (or the benches are full), weather hold, place.
    private void BenchToTable()
    {
        step++;
        foreach (var batch in Each(asked))
        {
            if (batch.OnBench.Count == 0 || !IsAwake(batch))
            {
                continue;
            }

            int[]? open = null;
            foreach (var lot in TakeInHand(batch.OnBench))
            {
                if (!lot.IsFlat && lot.MovedRound != round && IsTableReady(batch, lot))
                {
                    ToTable(batch, lot, ref open);
                }
            }
        }
    }

    // The tables without a hold are the same for all lots of the batch in a round, and looked up when the first asks.
    private void ToTable(BatchState batch, Lot lot, ref int[]? open)
    {
        var onDate = mode == PlayMode.Planning || day >= batch.TableFromDay;
        if (!onDate && !IsFull(batch.Benches))
        {
            return;
        }

        open ??= TablesWithoutHold(batch);
        if (open.Length == 0)
        {
            lot.Hindrance = AnyFits(batch.Tables, batch.PlacesEach(flat: false)) ? Hindrance.Hold : Hindrance.None;
            return;
        }

        Relief? relief = lot.GrownHour <= now ? null : Relief.TableEarly;
        if (onDate)
        {
            MoveOrRefuse(batch, lot, open, batch.OnBench, batch.OnTable, relief);
            return;
        }

        // Before its date a tray goes only while the benches are full, so each is asked by itself.
        while (lot.Count > 1 && IsFull(batch.Benches))
        {
            var before = lot.Count;
            var one = Split(lot, 1);
            Insert(batch.OnBench, one);
            MoveOrRefuse(batch, one, open, batch.OnBench, batch.OnTable, relief);
            if (one.Hindrance == Hindrance.Place)
            {
                // Refused: it stands with the rest again, and they are refused with it.
                batch.OnBench.Remove(one);
                lot.First--;
                lot.Count = before;
                spare.Push(one);
                Refuse(lot, batch.PlacesEach(flat: false));
                return;
            }
        }

        if (IsFull(batch.Benches))
        {
            MoveOrRefuse(batch, lot, open, batch.OnBench, batch.OnTable, relief);
        }
    }

    private bool IsTableReady(BatchState batch, Lot lot)
    {
        if (lot.GrownHour <= now)
        {
            return true;
        }

        return earlyTable && lot.EmergedHour <= now && HeatOfGrowth(batch, lot) >= rules.EarlyTableAt * lot.GrowthNeed;
    }

    // Step 4. From a later preference to an earlier one, where there is room; wanting to is not waiting.
    private void MoveBack()
    {
        step++;
        foreach (var batch in Each(asked))
        {
            if (batch.OnBench.Count == 0)
            {
                continue;
            }

            foreach (var lot in TakeInHand(batch.OnBench))
            {
                var preference = Array.IndexOf(batch.Benches, lot.Space);
                if (lot.MovedRound == round || preference <= 0)
                {
                    continue;
                }

                batch.OnBench.Remove(lot);
                if (MoveInto(batch, lot, batch.Benches[..preference], batch.OnBench) > 0)
                {
                    Insert(batch.OnBench, lot);
                }
            }
        }
    }

    // Step 5. Enough are up; place.
    private void MatToBench()
    {
        step++;
        foreach (var batch in Each(asked))
        {
            if (batch.OnMat.Count == 0 || !IsAwake(batch))
            {
                continue;
            }

            foreach (var lot in TakeInHand(batch.OnMat))
            {
                if (lot.MovedRound != round && MayLeaveMat(batch, lot, out var early))
                {
                    MoveOrRefuse(batch, lot, batch.Benches, batch.OnMat, batch.OnBench, early ? Relief.OffMatEarly : null);
                }
            }
        }
    }

    private bool MayLeaveMat(BatchState batch, Lot lot, out bool early)
    {
        early = false;
        if (lot.LeaveMatHour <= now)
        {
            return true;
        }

        early = earlyOffMat && HeatOfEmergence(batch, lot) >= batch.EarlyNeed;
        return early;
    }

    // Moves what fits; what does not is refused, and nobody behind it may take a place it was after.
    private void MoveOrRefuse(BatchState batch, Lot lot, int[] group, List<Lot> source, List<Lot> target, Relief? relief)
    {
        if (AnyFits(group, batch.PlacesEach(lot.IsFlat)))
        {
            var before = lot.Count;
            source.Remove(lot);
            var left = MoveInto(batch, lot, group, target);
            CountRelief(relief, before - left);
            if (left == 0)
            {
                return;
            }

            Insert(source, lot);
        }

        if (relief is null)
        {
            Refuse(lot, batch.PlacesEach(lot.IsFlat));
            CloseForStep(group);
        }
    }

    private bool AnyFits(int[] group, int placesEach)
    {
        foreach (var space in group)
        {
            if (Fits(space, placesEach) > 0)
            {
                return true;
            }
        }

        return false;
    }

    // The lots as they stand before any of them moves.
    private ReadOnlySpan<Lot> TakeInHand(List<Lot> lots)
    {
        if (hand.Length < lots.Count)
        {
            hand = new Lot[2 * lots.Count];
        }

        for (var at = 0; at < lots.Count; at++)
        {
            hand[at] = lots[at];
        }

        return hand.AsSpan(0, lots.Count);
    }
}
