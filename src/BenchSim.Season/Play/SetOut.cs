namespace BenchSim.Season.Play;

/// <summary>Step 1. Table to field: ready, date, weather hold, labour; the field always has room.</summary>
internal sealed class SetOut(SeasonState state) : Activity(state)
{
    protected override List<BatchState> Batches => State.WithTables;

    protected override void Attempt(BatchState batch)
    {
        // Before its date the weather is not the only thing that keeps it.
        if (batch.OnTable.Count == 0 || !IsDate(batch))
        {
            return;
        }

        bool? fieldHolds = null;
        foreach (var lot in State.Moves.TakeInHand(batch.OnTable))
        {
            if (lot.MovedRound == State.Round || !HasHardened(batch, lot))
            {
                continue;
            }

            if (fieldHolds ??= State.Holds.FromField(batch))
            {
                lot.Hindrance = State.Labour.CanSetOut(1) > 0 ? Hindrance.Hold : Hindrance.None;
                continue;
            }

            var count = State.Labour.CanSetOut(lot.Count);
            if (count > 0)
            {
                Send(batch, lot, count);
            }
        }
    }

    private bool IsDate(BatchState batch) => State.IsPlanning || State.Day >= batch.OutFromDay;

    private bool HasHardened(BatchState batch, Lot lot)
    {
        if (!(lot.GrownHour <= State.Now))
        {
            return false;
        }

        if (State.Stays is not null)
        {
            return lot.HardenedHour <= State.Now;
        }

        if (lot.NightsCounted >= batch.Crop.HardeningNights)
        {
            return true;
        }

        if (lot.Nights >= batch.Crop.HardeningNights)
        {
            // It has stood its nights; only those for which it was carried in keep it.
            lot.Hindrance = Hindrance.Hold;
        }

        return false;
    }

    private void Send(BatchState batch, Lot lot, int count)
    {
        var part = State.Moves.Split(lot, count);
        if (ReferenceEquals(part, lot))
        {
            batch.OnTable.Remove(lot);
        }

        State.Labour.SetOut(count);
        State.Places.Hold(batch, part.Space, -count * batch.PlacesEach(flat: false));
        State.Changes += count;
        State.Ledger.KeepOut(batch, part);
        State.Moves.Recycle(part);
    }
}
