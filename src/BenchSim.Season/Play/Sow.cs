namespace BenchSim.Season.Play;

/// <summary>Step 7. Sowing: what is due, on a mat where the crop wants one, else on a bench.</summary>
internal sealed class Sow(SeasonState state) : Activity(state)
{
    protected override List<BatchState> Batches => State.WithSowings;

    protected override void Attempt(BatchState batch)
    {
        if (batch.Unsown == 0)
        {
            return;
        }

        batch.SowWaiting = 0;
        var wantsMat = batch.Mats.Length > 0;
        if (wantsMat)
        {
            Into(batch, batch.Mats, batch.OnMat);
        }

        var mayBench = !wantsMat || batch.DaysWaited(State.Day) >= State.Rules.SowWaitDays;
        if (batch.Unsown > 0 && mayBench)
        {
            Into(batch, batch.Benches, batch.OnBench);
        }

        if (batch.Unsown > 0 && State.Labour.CanSow(1) > 0)
        {
            Refuse(batch, wantsMat, mayBench);
        }
    }

    private void Refuse(BatchState batch, bool wantsMat, bool triedBench)
    {
        batch.SowWaiting = batch.Unsown;
        batch.SowWaitingAt = wantsMat ? batch.Mats[0] : batch.Benches[0];
        if (wantsMat)
        {
            State.Places.CloseForStep(batch.Mats);
        }

        if (triedBench)
        {
            State.Places.CloseForStep(batch.Benches);
        }
    }

    private void Into(BatchState batch, int[] group, List<Lot> target)
    {
        var each = batch.PlacesEach(batch.IsPotUp);
        foreach (var space in group)
        {
            var count = State.Places.Fits(batch, space, each, State.Labour.CanSow(batch.Unsown));
            if (count == 0)
            {
                continue;
            }

            // With stays of their own, trays do not share a past.
            var part = State.Stays is null ? count : 1;
            for (var sown = 0; sown < count; sown += part)
            {
                Stand(batch, space, part, target);
            }

            if (batch.Unsown == 0)
            {
                return;
            }
        }
    }

    private void Stand(BatchState batch, int space, int count, List<Lot> target)
    {
        var lot = State.Moves.NewLot();
        Begin(batch, lot, count);
        State.Heat.BeginStay(batch, lot, space);
        State.Places.Hold(batch, space, count * batch.PlacesEach(batch.IsPotUp));
        State.Ledger.KeepSown(batch, lot);
        State.Labour.Sow(count);
        State.Changes += count;
        State.Moves.Add(batch, target, lot);
    }

    private void Begin(BatchState batch, Lot lot, int count)
    {
        lot.Clear();
        lot.IsFlat = batch.IsPotUp;
        lot.First = batch.NextSown;
        lot.Count = count;
        lot.SowHour = State.Now;
        lot.GrowthNeed = batch.GrowthNeed;
        batch.NextSown += count;
        batch.Unsown -= count;
        batch.LastSown = State.Day;
    }
}
