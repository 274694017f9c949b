namespace BenchSim.Engine.Tests;

public class WaitReportTests
{
    private readonly Simulation _simulation = new();

    [Fact]
    public void Nobody_waits()
    {
        _simulation.Run(3);
        var report = _simulation.WhoWaits();
        Assert.Empty(report.Lines);
        Assert.Empty(report.Rings);
        Assert.False(report.IsGridlock);
        Assert.Equal("Day 3: nobody waits.", report.ToString());
    }

    [Fact]
    public void Two_that_want_what_the_other_holds_are_named()
    {
        var mat = new Places(_simulation, "mat", 2);
        var bench = new Places(_simulation, "bench", 5);
        _simulation.Start(TakeThen(mat, 2, bench, 4), "lot", 1);
        _simulation.Start(TakeThen(bench, 3, mat, 1), "lot", 2);
        _simulation.Run();
        var report = _simulation.WhoWaits();
        Assert.True(report.IsGridlock);
        Assert.Equal(["lot 1", "lot 2"], Assert.Single(report.Rings));
        Assert.Equal(
            "Day 1: 2 in line, nothing is due, so nobody will ever go on.\n"
                + "lot 1 waits since day 1 for 4 of bench: 3 of 5 held by lot 2 (3)\n"
                + "lot 2 waits since day 1 for 1 of mat: 2 of 2 held by lot 1 (2)\n"
                + "ring: lot 1 waits for lot 2 waits for lot 1",
            report.ToString()
        );
    }

    [Fact]
    public void One_that_waits_for_what_it_holds_itself_is_a_ring_of_one()
    {
        var bench = new Places(_simulation, "bench", 5);
        _simulation.Start(TakeThen(bench, 3, bench, 4), "lot");
        _simulation.Run();
        Assert.Equal(["lot"], Assert.Single(_simulation.WhoWaits().Rings));
    }

    // a holds the mat and waits for the bench behind b; the bench has room for a but not for b; b waits for c, who waits for the mat.
    [Fact]
    public void A_ring_may_go_through_the_line()
    {
        var mat = new Places(_simulation, "mat", 1);
        var bench = new Places(_simulation, "bench", 5);
        _simulation.Start(TakeThen(mat, 1, bench, 1, after: 2), "a");
        _simulation.Start(TakeThen(bench, 2, mat, 1, after: 0.5), "c");
        _simulation.Start(Ask(bench, 4), "b", at: 1);
        _simulation.Run();
        var report = _simulation.WhoWaits();
        Assert.Equal(["a", "c"], Assert.Single(report.Rings, ring => ring.Count == 2));
        Assert.Equal("a waits since day 2 for 1 of bench: 2 of 5 held by c (2), behind b in line", report.Lines[0].ToString());
        Assert.True(report.IsGridlock);
    }

    [Fact]
    public void Three_in_a_ring_are_named_in_order()
    {
        var mat = new Places(_simulation, "mat", 1);
        var bench = new Places(_simulation, "bench", 5);
        var lane = new Places(_simulation, "lane", 1);
        _simulation.Start(TakeThen(mat, 1, bench, 1, after: 2), "y");
        _simulation.Start(TakeThen(lane, 1, mat, 1, after: 1), "z");
        _simulation.Start(TakeThen(bench, 5, lane, 1, after: 0.5), "x");
        _simulation.Run();

        // y waits for x, who holds the bench; x waits for z, who holds the lane; z waits for y, who holds the mat.
        Assert.Equal("y x z", string.Join(' ', Assert.Single(_simulation.WhoWaits().Rings)));
    }

    [Fact]
    public void Behind_one_who_can_never_be_served_is_told_with_the_line()
    {
        // x holds 1 of 3 and asks for 3: it waits for itself. y asks for 1, which is free, and stands behind it.
        var bench = new Places(_simulation, "bench", 3);
        _simulation.Start(TakeThen(bench, 1, bench, 3), "x");
        _simulation.Start(Ask(bench, 1), "y", at: 2);
        _simulation.Run();
        var report = _simulation.WhoWaits();
        Assert.Equal("x", string.Join(' ', Assert.Single(report.Rings)));
        Assert.Equal("y waits since day 2 for 1 of bench: 1 of 3 held by x (1), behind x in line", report.Lines[1].ToString());
    }

    [Fact]
    public void A_ring_of_one_that_others_lead_to_is_named_once()
    {
        // As above, but y, behind x in line, was started first and is looked at first.
        var bench = new Places(_simulation, "bench", 3);
        _simulation.Start(Ask(bench, 1), "y", at: 2);
        _simulation.Start(TakeThen(bench, 1, bench, 3), "x");
        _simulation.Run();
        Assert.Equal(["x"], Assert.Single(_simulation.WhoWaits().Rings));
    }

    [Fact]
    public void Those_in_line_and_those_who_hold_are_told_in_the_order_in_which_they_were_started()
    {
        // The first process is over when the others come and go: what it left behind in memory is used by the last one started.
        var bench = new Places(_simulation, "bench", 2);
        _simulation.Start(Stay(bench, 2, 1), "first");
        _simulation.Start(Stay(bench, 1, 10), "second", at: 2);
        _simulation.Start(Ask(bench, 2), "third", at: 3);
        _simulation.Run(2.5);
        _simulation.Start(TakeThen(bench, 1, bench, 1), "last", at: 2.5);
        _simulation.Run(5);
        var report = _simulation.WhoWaits();
        Assert.Equal("third, last", string.Join(", ", report.Lines.Select(line => line.Process)));
        Assert.Equal("second, last", string.Join(", ", report.Lines[0].Holders.Select(holder => holder.Process)));
    }

    [Fact]
    public void Waiting_is_no_gridlock_while_something_is_due()
    {
        var bench = new Places(_simulation, "bench", 2);
        _simulation.Start(Stay(bench, 2, 10), "first");
        _simulation.Start(Stay(bench, 1, 10), "second");
        _simulation.Run(5);
        var report = _simulation.WhoWaits();
        Assert.False(report.IsGridlock);
        Assert.Empty(report.Rings);
        Assert.Equal("Day 5: 1 in line.\nsecond waits since day 0 for 1 of bench: 2 of 2 held by first (2)", report.ToString());
    }

    [Fact]
    public void Places_taken_away_for_a_time_leave_a_waiter_without_a_holder()
    {
        var bench = new Places(_simulation, "bench", 0, most: 3);
        _simulation.Start(Ask(bench, 3), "lot");
        _simulation.Run();
        Assert.Equal(
            "Day 0: 1 in line, nothing is due, so nobody will ever go on.\nlot waits since day 0 for 3 of bench: 0 of 0 held",
            _simulation.WhoWaits().ToString()
        );
    }

    [Fact]
    public void Many_holders_are_counted_not_listed()
    {
        var bench = new Places(_simulation, "bench", 8);
        for (var i = 1; i <= 8; i++)
        {
            _simulation.Start(Stay(bench, 1, 10), "lot", i);
        }

        _simulation.Start(Ask(bench, 8), "late", at: 1);
        _simulation.Run(2);
        Assert.Equal(
            "late waits since day 1 for 8 of bench: 8 of 8 held by lot 1 (1), lot 2 (1), lot 3 (1), lot 4 (1), lot 5 (1) and 3 more",
            Assert.Single(_simulation.WhoWaits().Lines).ToString()
        );
    }

    [Fact]
    public void Five_holders_are_all_listed()
    {
        var bench = new Places(_simulation, "bench", 5);
        for (var i = 1; i <= 5; i++)
        {
            _simulation.Start(Stay(bench, 1, 10), "lot", i);
        }

        _simulation.Start(Ask(bench, 5), "late", at: 1);
        _simulation.Run(2);
        Assert.Equal(
            "late waits since day 1 for 5 of bench: 5 of 5 held by lot 1 (1), lot 2 (1), lot 3 (1), lot 4 (1), lot 5 (1)",
            Assert.Single(_simulation.WhoWaits().Lines).ToString()
        );
    }

    [Fact]
    public void A_ring_of_many_is_one_ring()
    {
        const int Count = 20_000;
        var places = Enumerable.Range(0, Count).Select(i => new Places(_simulation, $"place {i}", 1)).ToArray();
        for (var i = 0; i < Count; i++)
        {
            _simulation.Start(TakeThen(places[i], 1, places[(i + 1) % Count], 1), "lot", i);
        }

        _simulation.Run();
        Assert.Equal(Count, Assert.Single(_simulation.WhoWaits().Rings).Count);
    }

    private async Process TakeThen(Places first, int count, Places second, int then, double after = 1)
    {
        await first.Take(count);
        await _simulation.Delay(after);
        await second.Take(then);
    }

    private static async Process Ask(Places places, int count)
    {
        await places.Take(count);
        places.Leave(count);
    }

    private async Process Stay(Places places, int count, double days)
    {
        await places.Take(count);
        await _simulation.Delay(days);
        places.Leave(count);
    }
}
