using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// Stays and sowing instants given from outside instead of by heat, so that the round's steps can be checked against queueing theory.
/// One tray a batch; instants in hours.
/// </summary>
/// <param name="SowHour">Instant at which a batch is to be sown.</param>
/// <param name="StayHours">Stay of a batch in a kind of space.</param>
internal sealed record StaysFromOutside(Func<BatchState, double> SowHour, Func<BatchState, SpaceKind, double> StayHours)
{
    public void Override(BatchState batch, Lot lot, SpaceKind kind, double now)
    {
        var leaves = now + StayHours(batch, kind);
        lot.EmergedHour = lot.SowHour;
        switch (kind)
        {
            case SpaceKind.Mat:
                lot.LeaveMatHour = leaves;
                lot.GrownHour = double.PositiveInfinity;
                break;
            case SpaceKind.Bench:
                lot.GrownHour = leaves;
                break;
            case SpaceKind.Table:
                lot.HardenedHour = leaves;
                break;
        }
    }
}
