namespace BenchSim.Engine.Tests;

public class PlacesTests
{
    private readonly Simulation _simulation = new();
    private readonly List<string> _log = [];

    [Fact]
    public void Who_asks_first_is_served_first_even_if_a_later_request_would_fit()
    {
        // 5 places; a holds 4 until day 10. b wants 3 and waits; c wants 1, which is free, and waits behind b.
        var bench = new Places(_simulation, "bench", 5);
        Hold(bench, "a", 4, 0, 10);
        Hold(bench, "b", 3, 1, 10);
        Hold(bench, "c", 1, 2, 10);
        _simulation.Run();
        Assert.Equal(["a got 4 on 0", "b got 3 on 10", "c got 1 on 10"], _log);
    }

    [Fact]
    public void With_overtaking_allowed_a_later_request_that_fits_goes_ahead()
    {
        var bench = new Places(_simulation, "bench", 5, mayOvertake: true);
        Hold(bench, "a", 4, 0, 10);
        Hold(bench, "b", 3, 1, 10);
        Hold(bench, "c", 1, 2, 3);
        Hold(bench, "d", 2, 3, 1);
        Hold(bench, "e", 1, 4, 1);
        _simulation.Run();

        // e waits for c's place, free on day 5, and gets it although b and d asked before; then a leaves and b and d fit together.
        Assert.Equal(["a got 4 on 0", "c got 1 on 2", "e got 1 on 5", "b got 3 on 10", "d got 2 on 10"], _log);
    }

    [Fact]
    public void Take_what_fits_takes_part_and_respects_the_line()
    {
        var bench = new Places(_simulation, "bench", 5);
        Hold(bench, "a", 3, 0, 10);
        _simulation.Start(TakePart(1, 4), "part");
        Hold(bench, "b", 3, 2, 1);
        _simulation.Start(TakePart(3, 4), "part");
        _simulation.Run();
        Assert.Equal(["a got 3 on 0", "part got 2 on 1", "part got 0 on 3", "b got 3 on 10"], _log);

        async Process TakePart(double at, int most)
        {
            await _simulation.Until(at);
            var got = bench.TakeWhatFits(most);
            _log.Add(FormattableString.Invariant($"part got {got} on {_simulation.Now}"));
            await _simulation.Delay(1.5);
            if (got > 0)
            {
                bench.Leave(got);
            }
        }
    }

    [Fact]
    public void A_request_above_the_capacity_is_refused_at_once()
    {
        var bench = new Places(_simulation, "bench", 8);
        Hold(bench, "lot 7", 9, 0, 1);
        var fault = Assert.Throws<ProcessException>(_simulation.Run);
        var refusal = Assert.IsType<PlacesRefusedException>(fault.InnerException);
        Assert.Equal((9, 8, "bench"), (refusal.Wanted, refusal.Most, refusal.Places));
        Assert.Equal(
            "lot 7, day 0: lot 7 asks for 9 places of bench, which never has more than 8. Ask for fewer, or in parts.",
            fault.Message
        );
    }

    [Fact]
    public void Too_much_is_refused_where_it_is_asked_for_and_not_only_where_it_is_awaited()
    {
        var bench = new Places(_simulation, "bench", 8);
        _simulation.Start(Ask(), "lot");
        _simulation.Run();
        Assert.Equal(1, _simulation.Events);

#pragma warning disable CS1998 // A process that never waits.
        async Process Ask()
        {
            Assert.Throws<PlacesRefusedException>(() => bench.Take(9));
            Assert.Throws<PlacesRefusedException>(() => bench.Use(9, 1));
        }
#pragma warning restore CS1998
    }

    [Fact]
    public void A_request_for_places_that_come_later_waits_for_them()
    {
        var house = new Places(_simulation, "house", 0, most: 6);
        Hold(house, "lot", 6, 0, 1);
        _simulation.Start(Open(house, 30, 6), "opening");
        _simulation.Run();
        Assert.Equal(["lot got 6 on 30"], _log);
    }

    [Fact]
    public void A_request_in_line_is_refused_when_the_places_go_away_for_good()
    {
        var bench = new Places(_simulation, "bench", 5);
        Hold(bench, "a", 5, 0, 10);
        _simulation.Start(Ask(), "b", at: 1);
        Hold(bench, "c", 2, 2, 1);
        _simulation.Start(Open(bench, 3, 2), "closing");
        _simulation.Run();
        Assert.Equal(["a got 5 on 0", "b refused on 3", "c got 2 on 10"], _log);

        async Process Ask()
        {
            try
            {
                await bench.Take(4);
            }
            catch (PlacesRefusedException)
            {
                _log.Add(FormattableString.Invariant($"b refused on {_simulation.Now}"));
            }
        }
    }

    [Fact]
    public void A_request_refused_in_the_middle_of_the_line_leaves_those_around_it_standing()
    {
        // a holds all 5 until day 10. b, c and d wait for 2, 4 and 1; of 3 places c can never have 4. On day 10 b and d have room side by side.
        var bench = new Places(_simulation, "bench", 5);
        Hold(bench, "a", 5, 0, 10);
        Hold(bench, "b", 2, 1, 1);
        _simulation.Start(Ask(), "c", at: 1.5);
        Hold(bench, "d", 1, 2, 1);
        _simulation.Start(Open(bench, 3, 3), "closing");
        _simulation.Run(5);
        Assert.Equal(2, bench.InLine);
        _simulation.Run();
        Assert.Equal(["a got 5 on 0", "c refused on 3", "b got 2 on 10", "d got 1 on 10"], _log);

        async Process Ask()
        {
            try
            {
                await bench.Take(4);
            }
            catch (PlacesRefusedException)
            {
                _log.Add(FormattableString.Invariant($"c refused on {_simulation.Now}"));
            }
        }
    }

    [Fact]
    public void Nobody_is_thrown_out_when_the_capacity_falls_and_none_are_given_until_enough_are_left()
    {
        var bench = new Places(_simulation, "bench", 5);
        Hold(bench, "a", 3, 0, 10);
        Hold(bench, "b", 2, 0, 20);
        _simulation.Start(Open(bench, 1, 3), "closing");
        Hold(bench, "c", 1, 2, 1);
        _simulation.Run(5);
        Assert.Equal((5, 3, 0), (bench.Held, bench.Capacity, bench.Free));
        _simulation.Run();
        Assert.Equal(["a got 3 on 0", "b got 2 on 0", "c got 1 on 10"], _log);
    }

    [Fact]
    public void Places_without_limit_never_make_anyone_wait()
    {
        var bench = new Places(_simulation, "field", Places.Unlimited);
        Hold(bench, "a", int.MaxValue - 1, 0, 10);
        Hold(bench, "b", 1, 1, 10);
        _simulation.Run();
        Assert.Equal(["a got 2147483646 on 0", "b got 1 on 1"], _log);
    }

    [Fact]
    public void A_process_leaves_only_what_it_holds()
    {
        var bench = new Places(_simulation, "bench", 5);
        _simulation.Start(LeaveTooMany(), "lot");
        var fault = Assert.Throws<ProcessException>(_simulation.Run);
        Assert.Equal("lot, day 0: lot cannot leave 3 of bench: it holds 2.", fault.Message);

        async Process LeaveTooMany()
        {
            await bench.Take(2);
            bench.Leave(3);
        }
    }

    [Fact]
    public void A_process_that_ends_with_places_in_hand_is_a_fault()
    {
        var bench = new Places(_simulation, "bench", 5);
        _simulation.Start(Forget(), "lot", 3);
        Assert.Equal(
            "lot 3, day 0: It ended while it still held 2 of bench. Leave them first.",
            Assert.Throws<ProcessException>(_simulation.Run).Message
        );

        async Process Forget() => await bench.Take(2);
    }

    [Theory]
    [InlineData(1, "3 of bench")]
    [InlineData(3, "1 of mat")]
    public void What_is_left_in_hand_is_named_also_when_other_places_were_left(int left, string named)
    {
        var mat = new Places(_simulation, "mat", 1);
        var bench = new Places(_simulation, "bench", 3);
        _simulation.Start(Forget(), "lot");
        Assert.Equal(
            $"lot, day 0: It ended while it still held {named}. Leave them first.",
            Assert.Throws<ProcessException>(_simulation.Run).Message
        );

        async Process Forget()
        {
            await mat.Take(1);
            await bench.Take(3);
            (left == 1 ? mat : bench).Leave(left);
        }
    }

    [Fact]
    public void Senseless_numbers_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Places(_simulation, "bench", -1));
        var bench = new Places(_simulation, "bench", 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => bench.Take(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => bench.Take(1, order: 40_000));
        Assert.Throws<ArgumentOutOfRangeException>(() => bench.Leave(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => bench.TakeWhatFits(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => bench.ChangeCapacity(-1));
        Assert.Throws<InvalidOperationException>(() => bench.Leave(1));
        Assert.Throws<InvalidOperationException>(() => bench.TakeWhatFits(1));
    }

    [Fact]
    public void The_order_of_a_request_decides_whose_turn_comes_first_not_who_gets_the_places()
    {
        var bench = new Places(_simulation, "bench", 2);
        Hold(bench, "a", 2, 0, 10);
        Hold(bench, "b", 1, 1, 1, order: 5);
        Hold(bench, "c", 1, 2, 1);
        _simulation.Run();
        Assert.Equal(["a got 2 on 0", "c got 1 on 10", "b got 1 on 10"], _log);
    }

    [Fact]
    public void Statistics_of_a_small_case_worked_out_by_hand()
    {
        // 2 places. a holds 2 from 0 to 4. b asks for 1 on day 1, gets it on day 4 and keeps it to day 10.
        var bench = new Places(_simulation, "bench", 2);
        bench.Watch();
        Hold(bench, "a", 2, 0, 4);
        Hold(bench, "b", 1, 1, 6);
        _simulation.Run(20);

        // Held: 2 x 4 + 1 x 6 = 14 place-days in 20 days. In line: 1 x 3 days. Waits: 0 and 3 days: mean 1.5, variance (1.5^2 + 1.5^2) / 1.
        Assert.Equal(14, bench.HeldLevel!.Area(20), 12);
        Assert.Equal(0.7, bench.HeldLevel.Mean(20), 12);
        Assert.Equal((0.0, 2.0), (bench.HeldLevel.Min, bench.HeldLevel.Max));
        Assert.Equal(3, bench.LineLevel!.Area(20), 12);
        Assert.Equal(
            (2L, 1.5, 4.5, 0.0, 3.0),
            (bench.Waits!.Count, bench.Waits.Mean, bench.Waits.Variance, bench.Waits.Min, bench.Waits.Max)
        );
    }

    private void Hold(Places places, string who, int count, double from, double days, int order = 0)
    {
        _simulation.Start(Story(), who, at: from);

        async Process Story()
        {
            await places.Take(count, order);
            _log.Add(FormattableString.Invariant($"{who} got {count} on {_simulation.Now}"));
            await _simulation.Delay(days);
            places.Leave(count);
        }
    }

    private async Process Open(Places places, double on, int capacity)
    {
        await _simulation.Until(on);
        places.ChangeCapacity(capacity);
    }
}
