using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using static BenchSim.Season.Tests.Logbook.SmallLog;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>
/// What is due and has no row. On the small site seed is up after 3 days, so what is sown on day 0 leaves the mat on day 3; flats are
/// potted up 7 days later, on day 10; trays sown directly are grown 14 days after they are up, on day 17, and with 3 nights on the table
/// they could go out on day 20, a Sunday, so on day 21; potting up costs 2 days more.
/// </summary>
public class DueWorkTests
{
    private static readonly SeasonPlan s_plan = SmallSite.Plan(Site);

    [Fact]
    public void The_plan_is_as_the_remarks_say()
    {
        var (trays, flats) = (s_plan.Batches[0], s_plan.Batches[1]);
        Assert.Equal((Day(0), Day(3), Day(17), Day(21)), (trays.SowOn, trays.OffMatOn, trays.TableOn, trays.SetOutOn));
        Assert.Equal((Day(3), Day(10), 8), (flats.OffMatOn, flats.PotUpOn, trays.Trays));
    }

    // 8 trays and 3 flats are planned (400 plants of 50 cells, 600 seedlings of 200): none sown.
    [Fact]
    public void Sowings_without_a_row_are_due_from_their_day_on()
    {
        Assert.Equal(
            [new(WorkKind.Sow, 0, 8, false, null, Day(0)), new(WorkKind.Sow, 1, 3, true, null, Day(0))],
            DueWork.Of(s_plan, Ledger(), Day(0)).ToArray()
        );
        Assert.Equal(
            [new(WorkKind.Sow, 0, 3, false, null, Day(0)), new(WorkKind.Sow, 1, 3, true, null, Day(0))],
            DueWork.Of(s_plan, Ledger(Sown(1, "trays", 5, Bench)), Day(2)).ToArray()
        );
    }

    [Fact]
    public void A_batch_that_a_count_begins_or_that_has_all_its_trays_is_not_to_be_sown()
    {
        Assert.Empty(DueWork.Of(s_plan, Ledger(Counted(30, 0, Table), Counted(30, 0, Bench, flats: true)), Day(30)));
        var filled = Ledger(Counted(1, 0, Table), Sown(1, "flats", 1, Bench), PottedUp(9, 1, s_plan.Batches[1].Trays, North));
        Assert.Empty(DueWork.Of(s_plan, filled, Day(9)));
    }

    // Off the mat on day 3, potted up on day 10, to the table on day 17, out on day 21; each asked for its next job alone.
    [Fact]
    public void What_stands_is_asked_for_its_next_job()
    {
        LogEntry[] sown = [Sown(0, "trays", 8), Sown(0, "flats", 3)];
        Assert.Empty(Due(2, sown));
        Assert.Equal([new(WorkKind.OffMat, 0, 8, false, Mat, Day(3)), new(WorkKind.OffMat, 1, 3, true, Mat, Day(3))], Due(16, sown));
        LogEntry[] moved = [.. sown, Moved(3, 5, Bench), Moved(3, 3, North, from: Mat), Moved(3, 3, Bench, flats: true)];
        Assert.Equal([new(WorkKind.PotUp, 1, 3, true, Bench, Day(10))], Due(16, moved));
        Assert.Equal(
            [
                new(WorkKind.PotUp, 1, 3, true, Bench, Day(10)),
                new(WorkKind.ToTable, 0, 5, false, Bench, Day(17)),
                new(WorkKind.ToTable, 0, 3, false, North, Day(17)),
            ],
            Due(17, moved)
        );
        Assert.Equal(
            [new(WorkKind.SetOut, 0, 8, false, Table, Day(21))],
            Due(21, [.. sown[..1], Moved(17, 8, Table), Counted(20, 0, Bench, flats: true)])
        );
    }

    // Sown 4 days late, off the mat 4 days later than planned; potted up 2 days after that day, 14 + 2 days of growth from then.
    [Fact]
    public void What_was_sown_later_is_due_so_much_later()
    {
        LogEntry[] late = [Sown(4, "trays", 8), Sown(4, "flats", 3)];
        Assert.Empty(Due(6, late));
        Assert.Equal(Day(7), Assert.Single(Due(7, late), job => job.Batch == 0).On);
        var potted = Due(60, [.. late, Moved(7, 8, Bench), Moved(7, 3, Bench, flats: true), PottedUp(16, 3, 12, North)]);
        Assert.Equal(
            s_plan.Batches[1].TableOn.AddDays(6),
            Assert.Single(potted, job => job is { Batch: 1, Kind: WorkKind.ToTable, AreFlats: false }).On
        );
    }

    private static DueJob[] Due(int day, LogEntry[] rows) => [.. DueWork.Of(s_plan, Ledger(rows), Day(day))];
}
