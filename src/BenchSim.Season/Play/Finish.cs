namespace BenchSim.Season.Play;

/// <summary>
/// Step 4. From the benches on which trays grow to those on which they finish, mostly cooler ones, where there is room; staying is not
/// waiting.
/// </summary>
internal sealed class Finish(SeasonState state) : Activity(state)
{
    protected override List<BatchState> Batches => State.WithBenches;

    protected override void Attempt(BatchState batch)
    {
        if (batch.Finish.Length == 0)
        {
            return;
        }

        foreach (var lot in State.Moves.TakeInHand(batch.OnBench))
        {
            if (lot.MovedRound == State.Round || !(lot.FinishHour <= State.Now))
            {
                continue;
            }

            batch.OnBench.Remove(lot);
            if (State.Moves.Into(batch, lot, batch.Finish, batch.OnBench) > 0)
            {
                LotMoves.Insert(batch.OnBench, lot);
            }
        }
    }
}
