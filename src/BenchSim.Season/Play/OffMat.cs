using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Step 6. Mat to bench: enough are up; place.</summary>
internal sealed class OffMat(SeasonState state) : Activity(state)
{
    protected override List<BatchState> Batches => State.WithMats;

    protected override void Attempt(BatchState batch)
    {
        foreach (var lot in State.Moves.TakeInHand(batch.OnMat))
        {
            if (lot.MovedRound != State.Round && MayLeave(batch, lot, out var early))
            {
                Relief? relief = early ? Relief.OffMatEarly : null;
                State.Moves.IntoOrRefuse(batch, lot, batch.Benches, batch.OnMat, batch.OnBench, relief);
            }
        }
    }

    private bool MayLeave(BatchState batch, Lot lot, out bool early)
    {
        early = false;
        if (lot.LeaveMatHour <= State.Now)
        {
            return true;
        }

        early = State.MayLeaveMatEarly && State.Heat.OfEmergence(batch, lot, State.Now) >= batch.EarlyNeed;
        return early;
    }
}
