using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>The row that says that a due job was done as planned: by hand, and that the ledger takes it.</summary>
public class PlannedRowTests
{
    [Fact]
    public void A_sowing_goes_to_the_mats_and_from_there_to_the_bench_that_has_room()
    {
        // 100 plants in trays of 50: 2 trays. The first bench has one place.
        var plan = Plan(Scenario([Mat(4), Bench(1, "small"), Bench(9, "large"), Table(9)], [Batch("a", 100, Monday)]));
        var sown = Done(plan, [], Monday);
        Assert.Equal((LogKind.Sown, plan.Batches[0].Trays, null, "mat"), (sown.What, sown.Trays, sown.From, sown.Space));

        var later = plan.Batches[0].OffMatOn!.Value;
        var moved = Done(plan, [sown], later);
        Assert.Equal((LogKind.Moved, sown.Trays, "mat", "large"), (moved.What, moved.Trays, moved.From, moved.Space));
        Assert.Empty(BenchLedger.Of(plan.Scenario, [sown, moved]).Faults);
    }

    [Fact]
    public void The_last_flats_fill_the_trays_that_are_left_of_the_plan()
    {
        var plan = Plan(Scenario([Mat(9), Bench(20), Table(20)], [PotUpBatch("a", 700, Monday)]));
        var batch = plan.Batches[0];
        Assert.True(batch.Flats > 1, "the batch is to take several flats");
        var sown = Done(plan, [], Monday);
        Assert.Equal((LogKind.Sown, batch.Flats, null), (sown.What, sown.Flats, sown.Trays));

        var off = Done(plan, [sown], batch.OffMatOn!.Value);
        var one = new LogEntry
        {
            Date = batch.PotUpOn!.Value,
            BatchId = "a",
            What = LogKind.PottedUp,
            Flats = 1,
            Trays = 3,
            Space = "bench",
        };
        var rest = Done(plan, [sown, off, one], batch.PotUpOn.Value);
        Assert.Equal((LogKind.PottedUp, batch.Flats - 1, batch.Trays - 3), (rest.What, rest.Flats, rest.Trays));
        Assert.Empty(BenchLedger.Of(plan.Scenario, [sown, off, one, rest]).Faults);
    }

    [Fact]
    public void A_setting_out_goes_nowhere()
    {
        var plan = Plan(Scenario([Mat(9), Bench(20), Table(20)], [Batch("a", 100, Monday)]));
        var sown = Done(plan, [], Monday);
        var onTable = new LogEntry
        {
            Date = plan.Batches[0].TableOn,
            BatchId = "a",
            What = LogKind.Moved,
            Trays = sown.Trays,
            Space = "table",
        };
        var off = Done(plan, [sown], plan.Batches[0].OffMatOn!.Value);
        var gone = Done(plan, [sown, off, onTable], plan.Batches[0].SetOutOn);
        Assert.Equal((LogKind.SetOut, sown.Trays, "table", null), (gone.What, gone.Trays, gone.From, gone.Space));
    }

    // The first job that is due on a day, as a row.
    private static LogEntry Done(SeasonPlan plan, LogEntry[] rows, DateOnly on)
    {
        var ledger = BenchLedger.Of(plan.Scenario, rows, on);
        return PlannedRow.Of(plan, ledger, DueWork.Of(plan, ledger, on)[0], on);
    }
}
