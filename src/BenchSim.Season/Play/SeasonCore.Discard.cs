namespace BenchSim.Season.Play;

/// <summary>Step 0: what is past saving is thrown out, each with its reason.</summary>
internal sealed partial class SeasonCore
{
    // On a table stands only what is up, which can but be too late there.
    private void Discard()
    {
        if (mode == PlayMode.Planning)
        {
            return;
        }

        foreach (var batch in Each(asked))
        {
            if (IsAwake(batch))
            {
                DiscardFrom(batch, batch.OnMat);
                DiscardFrom(batch, batch.OnBench);
            }
        }
    }

    // A tray on the table that could go to the field in this round is first given the chance to.
    private void DiscardLateFromTable()
    {
        if (mode == PlayMode.Planning)
        {
            return;
        }

        foreach (var batch in Each(asked))
        {
            for (var index = batch.OnTable.Count - 1; index >= 0; index--)
            {
                if (IsTooLate(batch, batch.OnTable[index]))
                {
                    ThrowOut(batch, batch.OnTable, index, DiscardReason.OverHeld);
                }
            }
        }
    }

    private void DiscardFrom(BatchState batch, List<Lot> lots)
    {
        for (var index = lots.Count - 1; index >= 0; index--)
        {
            if (ReasonToDiscard(batch, lots[index]) is { } reason)
            {
                ThrowOut(batch, lots, index, reason);
            }
        }
    }

    // A millionth of an hour: whole days apart, two rounds differ by the last bit of a number where the round is at ten past the hour.
    private const double Instant = 1e-6;

    private DiscardReason? ReasonToDiscard(BatchState batch, Lot lot)
    {
        if (lot.EmergedHour > now)
        {
            return now - lot.SowHour + Instant >= batch.Crop.EmergeGiveUpDays * 24.0 ? DiscardReason.NeverCameUp : null;
        }

        if (lot.IsFlat)
        {
            return lot.PotHour <= now && day - tables.RoundAtOrAfter(lot.PotHour) >= batch.Crop.FlatDiscardDays
                ? DiscardReason.FlatOverHeld
                : null;
        }

        return IsTooLate(batch, lot) ? DiscardReason.OverHeld : null;
    }

    // The day it is due is never before the day it was grown: most are told apart by that alone.
    private bool IsTooLate(BatchState batch, Lot lot) =>
        lot.GrownHour <= now
        && day - (int)(lot.GrownHour / 24) >= batch.Crop.DiscardAfterDays
        && day - DueDay(batch, lot) >= batch.Crop.DiscardAfterDays;

    // The first work round at least the hardening nights after it is grown.
    private int DueDay(BatchState batch, Lot lot) => tables.RoundAtOrAfter(lot.GrownHour + (batch.Crop.HardeningNights * 24.0));

    private void ThrowOut(BatchState batch, List<Lot> lots, int index, DiscardReason reason)
    {
        var lot = lots[index];
        lots.RemoveAt(index);
        Hold(batch, lot.Space, -lot.Count * batch.PlacesEach(lot.IsFlat));
        moves += lot.Count;
        witness?.Discarded(batch, lot, reason, now);
        var outcome = result.Batches[batch.Index];
        outcome.Discarded[(int)reason] += lot.Count;
        if (lot.IsFlat)
        {
            outcome.FlatsDiscarded += lot.Count;
        }
        else
        {
            outcome.TraysDiscarded += lot.Count;
            CountOverHeld(batch, lot);
        }

        spare.Push(lot);
    }
}
