using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>
/// Logs of the small site: "trays" is sown in trays, "flats" in flats; the spaces are mat (0), bench (1), north (2) and table (3). Day 0 is
/// 1 March 2027.
/// </summary>
internal static class SmallLog
{
    public const int Mat = 0;
    public const int Bench = 1;
    public const int North = 2;
    public const int Table = 3;

    public static readonly Scenario Site = SmallSite.Scenario(
        [SmallSite.Mat(20), SmallSite.Bench(60), SmallSite.Bench(60, "north"), SmallSite.Table(60)],
        [SmallSite.Batch("trays", 400, Day(0)), SmallSite.PotUpBatch("flats", 600, Day(0))]
    );

    public static DateOnly Day(int day) => SmallSite.Monday.AddDays(day);

    /// <summary>The ledger of rows without a fault.</summary>
    public static BenchLedger Ledger(params LogEntry[] entries)
    {
        var ledger = BenchLedger.Of(Site, entries);
        Assert.Empty(ledger.Faults);
        return ledger;
    }

    public static LogEntry Sown(int day, string batch, int count, int space = Mat) => Row(day, batch, LogKind.Sown, count, space);

    public static LogEntry Moved(int day, int count, int space, int? from = null, bool flats = false) =>
        Row(day, flats ? "flats" : "trays", LogKind.Moved, count, space, from, flats);

    public static LogEntry PottedUp(int day, int flats, int trays, int space = Bench) =>
        Row(day, "flats", LogKind.PottedUp, trays, space, flats: false) with
        {
            Flats = flats,
        };

    public static LogEntry Counted(int day, int count, int space, bool flats = false) =>
        Row(day, flats ? "flats" : "trays", LogKind.Counted, count, space, flats: flats);

    public static LogEntry Walked(int day, int space) =>
        new()
        {
            Date = Day(day),
            What = LogKind.Walked,
            Space = Site.Spaces[space].Id,
        };

    public static LogEntry Gone(int day, LogKind what, int count, int? from = null, string batch = "trays", bool flats = false) =>
        Row(day, batch, what, count, null, from, flats);

    public static LogEntry Row(int day, string batch, LogKind what, int count, int? space, int? from = null, bool? flats = null)
    {
        var areFlats = flats ?? batch == "flats";
        return new()
        {
            Date = Day(day),
            BatchId = batch,
            What = what,
            Trays = areFlats ? null : count,
            Flats = areFlats ? count : null,
            Space = space is { } to ? Site.Spaces[to].Id : null,
            From = from is { } at ? Site.Spaces[at].Id : null,
        };
    }

    /// <summary>What stands of a batch: flats or trays, space, lowest index, how many, sown and since when, in days.</summary>
    public static (string What, int Space, int First, int Count, int? Sown, int Since)[] Piles(BenchLedger ledger, int batch = 0) =>
        [
            .. ledger
                .Batches[batch]
                .Piles.Select(pile =>
                    (
                        pile.AreFlats ? "flats" : "trays",
                        pile.Space,
                        pile.First,
                        pile.Count,
                        pile.SownOn?.DayNumber - Day(0).DayNumber,
                        pile.Since.DayNumber - Day(0).DayNumber
                    )
                ),
        ];
}
