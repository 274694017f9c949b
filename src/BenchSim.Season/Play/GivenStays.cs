using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// Sowing instants and stays given from outside instead of by dates and heat, so that the activities of the round can be checked against
/// queueing theory. Each tray is then a lot of its own. Instants in hours from the midnight that opens day 0.
/// </summary>
/// <param name="SowHour">
/// Instant at which a batch, by its position in the plan, is to be sown. It is asked when the player is made and again in each play, and
/// must give the batches in one order.
/// </param>
/// <param name="StayHours">Hours that a tray of a batch, by its index from 0, stays in a kind of space once it has a place there.</param>
public sealed record GivenStays(Func<int, double> SowHour, Func<int, int, SpaceKind, double> StayHours)
{
    internal void Override(BatchState batch, Lot lot, SpaceKind kind, double now)
    {
        var leaves = now + StayHours(batch.Index, lot.First, kind);
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
