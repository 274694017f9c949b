namespace BenchSim.Season.Play;

/// <summary>
/// Sleep: most trays do nothing but grow on most days, and when that ends is known from the day they came. A batch whose trays on mats and
/// benches all only grow is passed by until the first of them may be moved, potted or thrown out. It changes no result.
/// </summary>
internal sealed partial class SeasonCore
{
    private bool IsAwake(BatchState batch) => batch.WakeHour <= now;

    // The active batches that this round has anything to ask: no step of it wakes another.
    private void FindAsked()
    {
        asked.Clear();
        foreach (var batch in active)
        {
            if (IsAwake(batch) || batch.Unsown > 0 || batch.OnTable.Count > 0)
            {
                asked.Add(batch);
            }
        }
    }

    // A lot that waits, for a place, a date or the weather, is past its hour, so a batch with one stays awake.
    private double NextWake(BatchState batch)
    {
        if (!maySleep)
        {
            return 0;
        }

        var next = double.PositiveInfinity;
        foreach (var lot in Each(batch.OnMat))
        {
            next = Math.Min(next, Math.Min(lot.LeaveMatHour, WakeOf(batch, lot)));
        }

        foreach (var lot in Each(batch.OnBench))
        {
            next = Math.Min(next, WakeOf(batch, lot));
        }

        return next;
    }

    // Ready to pot or grown; or to be given up, should it not be up by then.
    private double WakeOf(BatchState batch, Lot lot)
    {
        var ready = Math.Min(lot.PotHour, lot.GrownHour);
        return lot.EmergedHour <= now ? ready : Math.Min(ready, lot.SowHour + (batch.Crop.EmergeGiveUpDays * 24.0));
    }
}
