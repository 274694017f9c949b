namespace BenchSim.Season.Play;

/// <summary>
/// Step 0. What is past saving on mats and benches is thrown out, each with its reason. On a table stands only what is up.
/// </summary>
internal sealed class Discard(SeasonState state) : Activity(state)
{
    // A millionth of an hour: whole days apart, two rounds differ by the last bit of a number where the round is at ten past the hour.
    private const double Instant = 1e-6;

    protected override List<BatchState> Batches => State.WithBenches;

    public override void Attempt()
    {
        foreach (var batch in SeasonState.Each(State.WithMats))
        {
            From(batch, batch.OnMat);
        }

        base.Attempt();
    }

    protected override void Attempt(BatchState batch) => From(batch, batch.OnBench);

    private void From(BatchState batch, List<Lot> lots)
    {
        for (var index = lots.Count - 1; index >= 0; index--)
        {
            if (Reason(batch, lots[index]) is { } reason)
            {
                State.Ledger.ThrowOut(batch, lots, index, reason);
            }
        }
    }

    private DiscardReason? Reason(BatchState batch, Lot lot)
    {
        var now = State.Now;
        if (lot.EmergedHour > now)
        {
            return now - lot.SowHour + Instant >= batch.Crop.EmergeGiveUpDays * 24.0 ? DiscardReason.NeverCameUp : null;
        }

        if (!lot.IsFlat)
        {
            return State.Ledger.IsTooLate(batch, lot) ? DiscardReason.OverHeld : null;
        }

        return lot.PotHour <= now && State.Day - State.Tables.RoundAtOrAfter(lot.PotHour) >= batch.Crop.FlatDiscardDays
            ? DiscardReason.FlatOverHeld
            : null;
    }
}
