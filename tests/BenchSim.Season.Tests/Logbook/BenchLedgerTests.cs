using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using static BenchSim.Season.Tests.Logbook.SmallLog;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>What stands where by a log; every figure was counted by hand from the rows.</summary>
public class BenchLedgerTests
{
    // 10 sown, 6 and 4 moved off the mat; 3 of the first 6 and 1 more to the table; 2 thrown out of what is left of the 6 and the 4.
    [Fact]
    public void Trays_go_their_way_lowest_first()
    {
        var ledger = Ledger(
            Sown(0, "trays", 10),
            Moved(4, 6, Bench),
            Moved(7, 4, Bench),
            Moved(20, 3, Table),
            Moved(21, 1, Table, from: Bench),
            Gone(22, LogKind.ThrownOut, 3, from: Bench)
        );
        Assert.Equal([("trays", Bench, 7, 3, 0, 7), ("trays", Table, 0, 3, 0, 20), ("trays", Table, 3, 1, 0, 21)], Piles(ledger));
        var batch = ledger.Batches[0];
        Assert.Equal((10, 7, 3), (batch.Sown, batch.Standing(areFlats: false), batch.TraysThrownOut));
        Assert.Equal(4, batch.Standing(areFlats: false, Table));
        Assert.Equal([new(Mat, Day(0)), new(Bench, Day(4)), new(Table, Day(20))], batch.Piles[1].Path.ToArray());
        Assert.Empty(ledger.Differences);
    }

    [Fact]
    public void The_way_out_is_told_by_day()
    {
        var batch = Ledger(
            Sown(0, "trays", 10),
            Moved(4, 10, Bench),
            Moved(20, 8, Table),
            Gone(30, LogKind.SetOut, 3) with
            {
                Count = 140,
            },
            Gone(31, LogKind.HandedOver, 4),
            Gone(32, LogKind.SetOut, 3, from: Bench) with
            {
                Trays = 1,
            }
        ).Batches[0];
        Assert.Equal([(Day(30), 3, 140), (Day(32), 1, null)], batch.Out.ToArray());
        Assert.Equal([(Day(31), 4)], batch.HandedOver.ToArray());
        Assert.Equal((1, 1), (batch.Standing(areFlats: false, Table), batch.Standing(areFlats: false, Bench)));
    }

    // 5 flats: 2 give 7 trays, 2 more give 8, the last 1, and one more tray comes of what was left over.
    [Fact]
    public void Flats_are_used_up_and_trays_are_filled()
    {
        var ledger = Ledger(
            Sown(0, "flats", 5),
            Moved(5, 5, Bench, flats: true),
            PottedUp(12, 2, 7),
            PottedUp(14, 2, 8, North),
            PottedUp(15, 1, 1, North),
            PottedUp(15, 0, 1, North)
        );
        Assert.Equal(
            [("trays", Bench, 0, 7, 0, 12), ("trays", North, 7, 8, 0, 14), ("trays", North, 15, 1, 0, 15), ("trays", North, 16, 1, 0, 15)],
            Piles(ledger, 1)
        );
        var batch = ledger.Batches[1];
        Assert.Equal((5, 5, 17), (batch.Sown, batch.FlatsUsed, batch.Filled));
        Assert.All(batch.Piles, pile => Assert.Equal(Bench, pile.Path[1].Space));
        Assert.Equal(Day(12), batch.Piles[0].PottedOn);
        Assert.Equal([new(Mat, Day(0)), new(Bench, Day(5)), new(North, Day(14))], batch.Piles[1].Path.ToArray());
    }

    // The flat that fills a tray gives it its past: the second sowing.
    [Fact]
    public void A_tray_takes_the_past_of_the_flat_that_filled_it()
    {
        var ledger = Ledger(Sown(0, "flats", 2, Bench), Sown(7, "flats", 1, Bench), PottedUp(20, 3, 9, North));
        Assert.Equal(("trays", North, 0, 9, (int?)7, 20), Assert.Single(Piles(ledger, 1)));
        Assert.Equal([(Day(0), 2), (Day(7), 1)], ledger.Batches[1].Sowings.ToArray());
    }

    [Fact]
    public void Rows_count_in_order_of_date_and_then_of_the_log()
    {
        var ledger = Ledger(Moved(7, 2, North, from: Bench), Moved(4, 5, Bench), Sown(0, "trays", 5), Moved(7, 2, Table, from: North));
        Assert.Equal([("trays", Bench, 2, 3, 0, 4), ("trays", Table, 0, 2, 0, 7)], Piles(ledger));
    }

    [Fact]
    public void Rows_after_the_day_do_not_count()
    {
        LogEntry[] rows = [Sown(0, "trays", 5), Moved(4, 5, Bench), Moved(20, 5, Table)];
        Assert.Equal(5, BenchLedger.Of(Site, rows, Day(19)).Batches[0].Standing(areFlats: false, Bench));
        Assert.Equal(5, BenchLedger.Of(Site, rows, Day(20)).Batches[0].Standing(areFlats: false, Table));
    }

    // 10 on the bench, 8 counted: 2 missing. Then 9 counted: one of the two was overlooked.
    [Fact]
    public void A_count_corrects_and_the_difference_is_told()
    {
        var ledger = Ledger(Sown(0, "trays", 10, Bench), Counted(10, 8, Bench));
        Assert.Equal(8, ledger.Batches[0].Standing(areFlats: false));
        Assert.Equal(new CountedOtherwise(Day(10), 0, false, Bench, 10, 8, -2, false), Assert.Single(ledger.Differences));

        ledger = Ledger(Sown(0, "trays", 10, Bench), Counted(10, 8, Bench), Counted(17, 9, Bench));
        Assert.Equal([("trays", Bench, 0, 1, 0, 0), ("trays", Bench, 2, 8, 0, 0)], Piles(ledger));
        Assert.Equal(new CountedOtherwise(Day(10), 0, false, Bench, 10, 8, -1, false), Assert.Single(ledger.Differences));
        Assert.Empty(ledger.Elsewhere);
    }

    // 10 sown on the mat; a walk finds 7 on the bench and 3 on the mat: the 7 were moved, and nobody wrote it down.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_one_count_misses_and_another_finds_was_moved(bool benchFirst)
    {
        LogEntry[] walk = [Counted(6, 7, Bench), Counted(7, 3, Mat)];
        var ledger = Ledger([
            Sown(0, "trays", 10),
            .. benchFirst ? walk : [walk[1] with { Date = Day(6) }, walk[0] with { Date = Day(7) }],
        ]);
        Assert.Equal([("trays", Mat, 7, 3, 0, 0), ("trays", Bench, 0, 7, 0, benchFirst ? 6 : 7)], Piles(ledger));
        Assert.Empty(ledger.Differences);
        Assert.Equal(new CountedElsewhere(Day(7), 0, false, Mat, Bench, 7), Assert.Single(ledger.Elsewhere));
    }

    // 4 days between the two counts are more than a walk takes: 7 are missing, and 7 others are found.
    [Fact]
    public void Counts_far_apart_do_not_explain_each_other()
    {
        var ledger = Ledger(Sown(0, "trays", 10), Counted(6, 3, Mat), Counted(10, 7, Bench));
        Assert.Equal([-7, 7], ledger.Differences.Select(each => each.Unexplained));
        Assert.Equal([("trays", Mat, 7, 3, 0, 0), ("trays", Bench, 10, 7, 0, 10)], Piles(ledger));
        Assert.Empty(ledger.Elsewhere);
    }

    // The walk of day 6: 3 counted on the mat, the flats were not seen there; 2 trays came to the mat that day.
    [Fact]
    public void A_walk_sets_to_none_what_was_not_seen()
    {
        var ledger = Ledger(
            Sown(0, "trays", 5),
            Sown(0, "flats", 4),
            Walked(6, Mat),
            Counted(6, 3, Mat),
            Sown(6, "trays", 2, Bench),
            Walked(6, Bench)
        );
        Assert.Equal([("trays", Mat, 2, 3, 0, 0), ("trays", Bench, 5, 2, 6, 6)], Piles(ledger));
        Assert.Empty(Piles(ledger, 1));
        Assert.Equal(
            [new CountedOtherwise(Day(6), 0, false, Mat, 5, 3, -2, false), new CountedOtherwise(Day(6), 1, true, Mat, 4, 0, -4, true)],
            ledger.Differences.ToArray()
        );
    }

    // Begun in mid-season: what the first day of counting finds stands there, and nothing is missing or too much.
    [Fact]
    public void A_log_may_begin_with_counts()
    {
        var ledger = Ledger(Counted(20, 6, Bench), Counted(20, 4, Table), Counted(21, 5, Bench), Gone(30, LogKind.SetOut, 4, from: Table));
        var batch = ledger.Batches[0];
        Assert.Equal((Day(20), 10, 0), (batch.BegunOn, batch.BegunTrays, batch.Sown));
        Assert.Equal([("trays", Bench, 1, 5, null, 20)], Piles(ledger));
        Assert.Equal(-1, Assert.Single(ledger.Differences).Unexplained);
        Assert.True(batch.IsBegun);
        Assert.False(ledger.Batches[1].IsBegun);
    }

    // Nothing is left of it, and the log says so: it is not to be sown any more.
    [Fact]
    public void A_count_of_none_begins_a_batch_too()
    {
        var batch = Ledger(Counted(40, 0, Table)).Batches[0];
        Assert.True(batch.IsBegun);
        Assert.Empty(batch.Piles);
    }

    [Fact]
    public void What_is_seen_and_not_handled_moves_nothing()
    {
        LogEntry[] rows = [Sown(0, "trays", 5)];
        var seen = new[] { LogKind.Up, LogKind.Good, LogKind.Ready, LogKind.NotReady, LogKind.Covered, LogKind.CarriedIn, LogKind.Mishap };
        Assert.Equal(
            Piles(Ledger(rows)),
            Piles(
                Ledger([
                    .. rows,
                    .. seen.Select(what => new LogEntry
                    {
                        Date = Day(9),
                        BatchId = "trays",
                        What = what,
                        Count = 3,
                        Of = 5,
                    }),
                ])
            )
        );
    }
}
