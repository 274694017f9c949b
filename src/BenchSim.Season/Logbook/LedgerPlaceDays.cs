using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>Place-days that the log has each grower hold so far, the measure by which shared spaces are paid.</summary>
public static class LedgerPlaceDays
{
    /// <summary>Place-days before a day, by grower in order of first appearance in the plan.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">Ledger up to the day.</param>
    /// <param name="today">The day; its own is not counted.</param>
    public static IReadOnlyList<(string Grower, long PlaceDays)> ByGrower(SeasonPlan plan, BenchLedger ledger, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        return
        [
            .. plan
                .Batches.Zip(ledger.Batches)
                .GroupBy(pair => pair.First.Order.Grower, StringComparer.Ordinal)
                .Select(own => (own.Key, own.Sum(pair => Of(pair.First, pair.Second, today)))),
        ];
    }

    private static long Of(BatchPlan batch, BatchLedger book, DateOnly today) =>
        book.Piles.Sum(pile => Of(batch, pile, today)) + book.Gone.Sum(gone => Of(batch, gone.Pile, gone.On));

    // From the first stay of its own.
    private static long Of(BatchPlan batch, Pile pile, DateOnly until)
    {
        var each = pile.AreFlats ? batch.Flat?.PlacesEach ?? 0 : batch.Tray.PlacesEach;
        return (long)each * pile.Count * (until.DayNumber - pile.Path[pile.Borrowed].From.DayNumber);
    }
}
