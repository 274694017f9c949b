using CsCheck;

namespace BenchSim.Engine.Tests;

/// <summary>Taking, holding and leaving places in one.</summary>
public class UseTests
{
    private readonly Simulation _simulation = new();
    private readonly List<string> _log = [];

    [Fact]
    public void The_days_count_from_when_the_places_are_got()
    {
        // 5 places. a uses 4 from day 0 for 10 days. b wants 3 and c, a day later, 1: both get them on day 10, since nobody overtakes.
        var bench = new Places(_simulation, "bench", 5);
        Use(bench, "a", 4, 0, 10);
        Use(bench, "b", 3, 1, 2.5);
        Use(bench, "c", 1, 2, 2);
        _simulation.Run(11);
        Assert.Equal((4, 0), (bench.Held, bench.InLine));
        _simulation.Run();
        Assert.Equal(["a left on 10", "c left on 12", "b left on 12.5"], _log);
        Assert.Equal(0, bench.Held);
    }

    // Each step of a program waits for its moment, then wants places for some days, every other one in a part of the process. Meanwhile the
    // capacities change, so that requests are refused at once and in line. Times have 53 random bits: two of them tie as good as never.
    [Fact]
    public void It_is_take_wait_and_leave_in_one()
    {
        var days = Gen.Double.Unit.Select(share => 4 * share);
        var step = Gen.Select(days, Gen.Int[0, 1], Gen.Int[1, 5], days);
        var change = Gen.Select(days, Gen.Int[0, 1], Gen.Int[0, 6]);
        Gen.Select(Gen.Int[1, 6].Array[2], step.Array[1, 5].Array[1, 12], change.Array[0, 6], Gen.Bool)
            .Sample(
                (capacities, programs, changes, mayOvertake) =>
                {
                    var inSteps = new World(capacities, programs, changes, mayOvertake, inOne: false);
                    var inOne = new World(capacities, programs, changes, mayOvertake, inOne: true);
                    Assert.Equal(inSteps.Log, inOne.Log);
                    Assert.Equal(inSteps.Figures, inOne.Figures);
                    Assert.Equal(inSteps.Waiting, inOne.Waiting, StringComparer.Ordinal);
                },
                iter: 1000,
                seed: "0000000000005"
            );
    }

    [Fact]
    public void It_has_no_turn_between_standing_in_line_and_holding()
    {
        // A single server, two customers. In steps: two first turns, one to go on when the server is free, two ends of service.
        Assert.Equal(5, Turns(InSteps));
        Assert.Equal(4, Turns(InOne));

        static long Turns(Func<Simulation, Places, Process> visit)
        {
            var simulation = new Simulation();
            var server = new Places(simulation, "server", 1);
            for (var i = 0; i < 2; i++)
            {
                simulation.Start(visit(simulation, server), "customer", i);
            }

            simulation.Run();
            Assert.Equal(6, simulation.Now);
            return simulation.Events;
        }

        static async Process InOne(Simulation simulation, Places server) => await server.Use(1, 3);

        static async Process InSteps(Simulation simulation, Places server)
        {
            await server.Take(1);
            await simulation.Delay(3);
            server.Leave(1);
        }
    }

    [Fact]
    public void Who_is_let_in_from_the_line_is_put_down_when_it_gets_its_places()
    {
        // b and c are let in when a leaves on day 2; d, whose turn comes after that of a, then pauses until day 3. All three are due on day 3:
        // first put down, first served, but for the order that c gave.
        var bench = new Places(_simulation, "bench", 2);
        Use(bench, "a", 2, 0, 2);
        Use(bench, "b", 1, 1, 1);
        Use(bench, "c", 1, 1, 1, order: -1);
        _simulation.Start(Rest(), "d");
        _simulation.Run();
        Assert.Equal(["a left on 2", "c left on 3", "b left on 3", "d rested on 3"], _log);

        async Process Rest()
        {
            await _simulation.Delay(2);
            await _simulation.Delay(1);
            _log.Add(FormattableString.Invariant($"d rested on {_simulation.Now}"));
        }
    }

    [Fact]
    public void A_use_of_no_days_lets_all_others_go_first()
    {
        var bench = new Places(_simulation, "bench", 1);
        Use(bench, "a", 1, 0, 0);
        _simulation.Start(Say(), "b");
        _simulation.Run();
        Assert.Equal(["b", "a left on 0"], _log);

#pragma warning disable CS1998 // A process that never waits.
        async Process Say() => _log.Add("b");
#pragma warning restore CS1998
    }

    [Fact]
    public void A_trace_tells_the_single_steps()
    {
        var trace = new ListTrace();
        _simulation.Trace = trace;
        var mat = new Places(_simulation, "mat", 4);
        Use(mat, "lot 1", 3, 0, 2);
        Use(mat, "lot 2", 2, 0.5, 1.5);
        _simulation.Run();
        Assert.Equal(
            [
                "day 0  lot 1 starts",
                "day 0  lot 2 is to start on day 0.5",
                "day 0  lot 1 takes 3 of mat (3 of 4 held)",
                "day 0  lot 1 waits until day 2",
                "day 0.5  lot 2 waits for 2 of mat: 3 of 4 held",
                "day 2  lot 1 leaves 3 of mat (0 of 4 held)",
                "day 2  lot 2 takes 2 of mat (2 of 4 held)",
                "day 2  lot 2 waits until day 3.5",
                "day 2  lot 1 ends",
                "day 3.5  lot 2 leaves 2 of mat (0 of 4 held)",
                "day 3.5  lot 2 ends",
            ],
            trace.Lines
        );
    }

    [Fact]
    public void Who_waits_is_told_and_statistics_are_kept()
    {
        // 2 places. a uses both until day 4; b stands in line for 1 of them from day 1, has it on day 4 and leaves on day 10.
        var bench = new Places(_simulation, "bench", 2);
        bench.Watch();
        Use(bench, "a", 2, 0, 4);
        Use(bench, "b", 1, 1, 6);
        _simulation.Run(2);
        Assert.Equal("b waits since day 1 for 1 of bench: 2 of 2 held by a (2)", Assert.Single(_simulation.WhoWaits().Lines).ToString());
        _simulation.Run(20);

        // Held: 2 x 4 + 1 x 6 place-days. In line: 1 x 3 days. Waits: 0 and 3 days.
        Assert.Equal(14, bench.HeldLevel!.Area(20), 12);
        Assert.Equal(3, bench.LineLevel!.Area(20), 12);
        Assert.Equal((2L, 1.5), (bench.Waits!.Count, bench.Waits.Mean));
    }

    [Fact]
    public void Too_much_is_refused_at_once_and_in_line()
    {
        // Of 5 places 4 are wanted while all are held; on day 3 only 2 are left for good.
        var bench = new Places(_simulation, "bench", 5);
        Use(bench, "a", 5, 0, 10);
        Use(bench, "b", 6, 1, 1);
        Use(bench, "c", 4, 1, 1);
        Use(bench, "d", 2, 2, 1);
        _simulation.Start(Change(bench, 2), "closing", at: 3);
        _simulation.Run();
        Assert.Equal(["b refused on 1", "c refused on 3", "a left on 10", "d left on 11"], _log);
    }

    [Fact]
    public void Whoever_asked_first_may_be_refused_last()
    {
        // Both want 3 of 4 places, which are held; then only 2 are left for good. The order of a request is that of the turn in which it is refused.
        var bench = new Places(_simulation, "bench", 4);
        Use(bench, "a", 4, 0, 10);
        Use(bench, "b", 3, 1, 1, order: 5);
        Use(bench, "c", 3, 2, 1, order: -5);
        _simulation.Start(Change(bench, 2), "closing", at: 3);
        _simulation.Run();
        Assert.Equal(["c refused on 3", "b refused on 3", "a left on 10"], _log);
    }

    [Fact]
    public void More_places_let_in_who_stands_in_line()
    {
        var house = new Places(_simulation, "house", 0, most: 3);
        Use(house, "lot", 3, 0, 4);
        _simulation.Start(Change(house, 3), "opening", at: 30);
        _simulation.Run();
        Assert.Equal(["lot left on 34"], _log);
    }

    [Fact]
    public void A_request_that_was_kept_while_the_places_went_away_is_refused()
    {
        var bench = new Places(_simulation, "bench", 4);
        _simulation.Start(Keep(), "lot");
        _simulation.Start(Change(bench, 2), "closing", at: 1);
        _simulation.Run();
        Assert.Equal(["take refused on 2", "use refused on 2"], _log);
        Assert.Empty(_simulation.WhoWaits().Lines);

        async Process Keep()
        {
            var take = bench.Take(4);
            var use = bench.Use(4, 1);
            await _simulation.Delay(2);
            try
            {
                await take;
            }
            catch (PlacesRefusedException)
            {
                _log.Add(FormattableString.Invariant($"take refused on {_simulation.Now}"));
            }

            try
            {
                await use;
            }
            catch (PlacesRefusedException)
            {
                _log.Add(FormattableString.Invariant($"use refused on {_simulation.Now}"));
            }
        }
    }

    [Fact]
    public void The_clock_never_comes_to_infinity()
    {
        var bench = new Places(_simulation, "bench", 1);
        Use(bench, "a", 1, double.MaxValue, double.MaxValue);
        Assert.IsType<ArgumentOutOfRangeException>(Assert.Throws<ProcessException>(_simulation.Run).InnerException);
        Assert.Equal(double.MaxValue, _simulation.Now);
    }

    [Fact]
    public void Senseless_numbers_are_refused()
    {
        var bench = new Places(_simulation, "bench", 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => bench.Use(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => bench.Use(1, 1, order: 40_000));
        Assert.All([-1, double.NaN, double.PositiveInfinity], days =>
            Assert.Equal("days", Assert.Throws<ArgumentOutOfRangeException>(() => bench.Use(1, days)).ParamName)
        );
    }

    [Fact]
    public void Only_a_process_of_the_same_simulation_can_use_places()
    {
        var other = new Places(new Simulation(), "bench", 1);
        Use(other, "a", 1, 0, 1);
        Assert.IsType<InvalidOperationException>(Assert.Throws<ProcessException>(_simulation.Run).InnerException);
        Assert.Equal(0, other.Held);
        Assert.Throws<InvalidOperationException>(() => other.Use(1, 1).OnCompleted(() => { }));
        Assert.Throws<InvalidOperationException>(() => other.Use(1, 1).UnsafeOnCompleted(() => { }));
    }

    [Fact]
    public void A_reset_frees_places_in_use_and_the_line()
    {
        var bench = new Places(_simulation, "bench", 1);
        for (var round = 0; round < 2; round++)
        {
            _log.Clear();
            Use(bench, "a", 1, 0, 5);
            Use(bench, "b", 1, 1, 5);
            _simulation.Run(2);
            Assert.Equal((1, 1), (bench.Held, bench.InLine));
            _simulation.Reset();
            Assert.Equal((0, 0), (bench.Held, bench.InLine));
        }

        Use(bench, "a", 1, 0, 5);
        _simulation.Run();
        Assert.Equal(["a left on 5"], _log);
    }

    [Fact]
    public void After_a_use_in_line_a_plain_take_has_its_turn_as_soon_as_it_gets_its_places()
    {
        var bench = new Places(_simulation, "bench", 1);
        Use(bench, "a", 1, 0, 5);
        _simulation.Start(Both(), "b", at: 1);
        Use(bench, "c", 1, 2, 4);
        _simulation.Run();

        // b uses the bench from day 5 to 12, stands in line behind c, and takes it on day 16.
        Assert.Equal(["a left on 5", "b left on 12", "c left on 16", "b took it on 16"], _log);

        async Process Both()
        {
            await bench.Use(1, 7);
            _log.Add(FormattableString.Invariant($"b left on {_simulation.Now}"));
            await bench.Take(1);
            _log.Add(FormattableString.Invariant($"b took it on {_simulation.Now}"));
            bench.Leave(1);
        }
    }

    [Fact]
    public void Warm_uses_allocate_nothing()
    {
        const int Customers = 2000;
        var server = new Places(_simulation, "server", 2);
        Play();
        Play();
        var before = GC.GetAllocatedBytesForCurrentThread();
        Play();
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100);

        void Play()
        {
            _simulation.Reset();
            for (var i = 0; i < Customers; i++)
            {
                _simulation.Start(Visit(), "customer", i, i * 0.4);
            }

            _simulation.Run();
        }

        async Process Visit() => await server.Use(1, 1);
    }

#pragma warning disable CS1998 // A process that never waits.
    private static async Process Change(Places places, int capacity) => places.ChangeCapacity(capacity);
#pragma warning restore CS1998

    private void Use(Places places, string who, int count, double from, double days, int order = 0)
    {
        _simulation.Start(Story(), who, at: from);

        async Process Story()
        {
            try
            {
                await places.Use(count, days, order);
                _log.Add(FormattableString.Invariant($"{who} left on {_simulation.Now}"));
            }
            catch (PlacesRefusedException)
            {
                _log.Add(FormattableString.Invariant($"{who} refused on {_simulation.Now}"));
            }
        }
    }

    /// <summary>A random world, played once: who left or was refused when, what the places counted, and who waits at the end.</summary>
    private sealed class World
    {
        private readonly Simulation _simulation = new();
        private readonly Places[] _places;
        private readonly bool _inOne;

        public World(
            int[] capacities,
            (double Pause, int Kind, int Count, double Days)[][] programs,
            (double Pause, int Kind, int Capacity)[] changes,
            bool mayOvertake,
            bool inOne
        )
        {
            _inOne = inOne;
            _places = Array.ConvertAll(capacities, capacity => new Places(_simulation, "bench", capacity, 0, mayOvertake));
            foreach (var places in _places)
            {
                places.Watch();
            }

            for (var i = 0; i < programs.Length; i++)
            {
                _simulation.Start(Live(i, programs[i]), "lot", i);
            }

            _simulation.Start(Change(changes), "changes");
            _simulation.Run(100);
        }

        public List<(double Day, int Who, string What)> Log { get; } = [];

        public IEnumerable<(double HeldDays, double LineDays, long Got, double Wait)> Figures =>
            _places.Select(one => (one.HeldLevel!.Area(100), one.LineLevel!.Area(100), one.Waits!.Count, one.Waits.Mean));

        public IEnumerable<string> Waiting => _simulation.WhoWaits().Lines.Select(line => line.ToString());

        private async Process Live(int who, (double Pause, int Kind, int Count, double Days)[] steps)
        {
            for (var i = 0; i < steps.Length; i++)
            {
                var (pause, kind, count, days) = steps[i];
                await _simulation.Delay(pause);
                try
                {
                    if (!_inOne)
                    {
                        await Step(_places[kind], count, days);
                    }
                    else if (i % 2 == 0)
                    {
                        await _places[kind].Use(count, days);
                    }
                    else
                    {
                        await Part(_places[kind], count, days);
                    }

                    Log.Add((_simulation.Now, who, "left"));
                }
                catch (PlacesRefusedException refusal)
                {
                    Log.Add((_simulation.Now, who, refusal.Message));
                }
            }
        }

        private async Process Step(Places places, int count, double days)
        {
            await places.Take(count);
            await _simulation.Delay(days);
            places.Leave(count);
        }

        private static async Process Part(Places places, int count, double days) => await places.Use(count, days);

        private async Process Change((double Pause, int Kind, int Capacity)[] changes)
        {
            foreach (var (pause, kind, capacity) in changes)
            {
                await _simulation.Delay(pause);
                _places[kind].ChangeCapacity(capacity);
            }
        }
    }
}
