namespace BenchSim.Season.Play;

/// <summary>
/// Step 1, after setting out: a tray on the table that is too late was first given the chance to go to the field in this round.
/// </summary>
internal sealed class DiscardFromTable(SeasonState state) : Activity(state)
{
    protected override List<BatchState> Batches => State.WithTables;

    protected override void Attempt(BatchState batch)
    {
        for (var index = batch.OnTable.Count - 1; index >= 0; index--)
        {
            if (State.Ledger.IsTooLate(batch, batch.OnTable[index]))
            {
                State.Ledger.ThrowOut(batch, batch.OnTable, index, DiscardReason.OverHeld);
            }
        }
    }
}
