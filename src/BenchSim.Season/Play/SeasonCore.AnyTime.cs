namespace BenchSim.Season.Play;

/// <summary>Rounds at any time: the same steps to a fixed point whenever anything changes.</summary>
internal sealed partial class SeasonCore
{
    private bool IsSowDue(BatchState batch) => (Stays?.SowHour(batch) ?? ((batch.SowDay * 24) + tables.RoundHour)) <= now;

    private void SettleAt(double hour, int onDay)
    {
        var today = day;
        now = hour;
        day = onDay;
        do
        {
            moves = 0;
            BeginRound();
            RunPass();
            ReliefPasses();
            GiveUpSowings();
        } while (moves > 0);
        day = today;
    }

    // The earliest instant after now at which a sowing falls due or a threshold is reached.
    private double NextChange(double end)
    {
        var next = double.PositiveInfinity;
        foreach (var batch in ranked)
        {
            if (batch.Unsown > 0)
            {
                Consider(Stays?.SowHour(batch) ?? ((batch.SowDay * 24) + tables.RoundHour), ref next);
            }

            Consider(batch.OnMat, ref next);
            Consider(batch.OnBench, ref next);
            Consider(batch.OnTable, ref next);
        }

        return next <= end ? next : double.PositiveInfinity;
    }

    private void Consider(List<Lot> lots, ref double next)
    {
        foreach (var lot in lots)
        {
            Consider(lot.EmergedHour, ref next);
            Consider(lot.LeaveMatHour, ref next);
            Consider(lot.PotHour, ref next);
            Consider(lot.GrownHour, ref next);
            Consider(lot.HardenedHour, ref next);
        }
    }

    private void Consider(double hour, ref double next)
    {
        if (hour > now && hour < next)
        {
            next = hour;
        }
    }
}
