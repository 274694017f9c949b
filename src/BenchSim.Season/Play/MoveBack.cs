namespace BenchSim.Season.Play;

/// <summary>Step 5. From a later preference to an earlier one, where there is room; wanting to is not waiting.</summary>
internal sealed class MoveBack(SeasonState state) : Activity(state)
{
    protected override List<BatchState> Batches => State.WithBenches;

    protected override void Attempt(BatchState batch)
    {
        foreach (var lot in State.Moves.TakeInHand(batch.OnBench))
        {
            var preference = Array.IndexOf(batch.Benches, lot.Space);
            if (lot.MovedRound == State.Round || preference <= 0 || batch.FinishesOn(lot.Space))
            {
                continue;
            }

            batch.OnBench.Remove(lot);
            if (State.Moves.Into(batch, lot, batch.Benches.AsSpan(0, preference), batch.OnBench) > 0)
            {
                LotMoves.Insert(batch.OnBench, lot);
            }
        }
    }
}
