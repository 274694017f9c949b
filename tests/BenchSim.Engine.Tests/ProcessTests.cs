using System.Runtime.CompilerServices;

namespace BenchSim.Engine.Tests;

public class ProcessTests
{
    private readonly Simulation _simulation = new();
    private readonly List<string> _log = [];

    [Fact]
    public void A_process_awaited_is_a_part_of_the_one_that_awaits_it()
    {
        _simulation.Start(Day(), "day");
        _simulation.Run();
        Assert.Equal(["morning done at 0.5", "evening done at 1"], _log);

        async Process Day()
        {
            await Half("morning");
            await Half("evening");
        }

        async Process Half(string which)
        {
            await _simulation.Delay(0.5);
            _log.Add(FormattableString.Invariant($"{which} done at {_simulation.Now}"));
        }
    }

    [Fact]
    public void Parts_that_never_wait_do_not_pile_up()
    {
        var count = 0;
        _simulation.Start(Many(), "many");
        _simulation.Run();
        Assert.Equal(1_000_000, count);

        async Process Many()
        {
            for (var i = 0; i < 1_000_000; i++)
            {
                await One();
            }
        }

#pragma warning disable CS1998 // A part that happens not to wait is what is tried here.
        async Process One() => count++;
#pragma warning restore CS1998
    }

    [Fact]
    public void Parts_within_parts_go_as_deep_as_wanted()
    {
        _simulation.Start(Descend(50_000), "miner");
        _simulation.Run();
        Assert.Equal(1, _simulation.Now);

        async Process Descend(int depth)
        {
            if (depth == 0)
            {
                await _simulation.Delay(1);
            }
            else
            {
                await Descend(depth - 1);
            }
        }
    }

    [Fact]
    public void What_a_part_throws_can_be_caught_by_the_whole()
    {
        _simulation.Start(Whole(), "whole");
        _simulation.Run();
        Assert.Equal(["caught: too cold"], _log);

        async Process Whole()
        {
            try
            {
                await Part();
            }
            catch (InvalidOperationException fault)
            {
                _log.Add($"caught: {fault.Message}");
            }

            await _simulation.Delay(1);
        }

        async Process Part()
        {
            await _simulation.Delay(1);
            throw new InvalidOperationException("too cold");
        }
    }

    [Fact]
    public void What_a_process_throws_comes_out_of_the_run_with_its_name_and_time()
    {
        _simulation.Start(Fail(), "lot", 7);
        var fault = Assert.Throws<ProcessException>(_simulation.Run);
        Assert.Equal("lot 7", fault.Process);
        Assert.Equal(2.5, fault.Time);
        Assert.Equal("lot 7, day 2.5: too cold", fault.Message);
        Assert.IsType<InvalidOperationException>(fault.InnerException);
        Assert.Contains("over", Assert.Throws<InvalidOperationException>(_simulation.Run).Message, StringComparison.Ordinal);
        _simulation.Reset();
        _simulation.Run();

        async Process Fail()
        {
            await _simulation.Delay(2.5);
            throw new InvalidOperationException("too cold");
        }
    }

    [Fact]
    public void A_process_lives_once()
    {
        var process = Rest();
        _simulation.Start(process, "once");
        Assert.Throws<InvalidOperationException>(() => _simulation.Start(process, "twice"));
        _simulation.Run();
        Assert.Throws<InvalidOperationException>(() => _simulation.Start(process, "again"));
        Assert.Throws<InvalidOperationException>(() => _simulation.Start(default, "nothing"));

        async Process Rest() => await _simulation.Delay(1);
    }

    [Fact]
    public void A_process_cannot_await_what_is_not_of_its_simulation()
    {
        var other = new Simulation();
        Assert.Contains("simulation", Fault(async () => await other.Delay(1)), StringComparison.Ordinal);
        Assert.Contains("running process", Fault(async () => await new Places(other, "bench", 1).Take(1)), StringComparison.Ordinal);
        Assert.Contains("not System", Fault(async () => await Task.Delay(1000)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pause_must_be_awaited_at_once()
    {
        Assert.Contains("at once", Fault(Keep), StringComparison.Ordinal);

        async Process Keep()
        {
            var kept = _simulation.Delay(5);
            await _simulation.Delay(1);
            await kept;
        }
    }

    [Fact]
    public async Task Outside_a_process_nothing_can_be_awaited()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(async () => await _simulation.Delay(1));
        await Assert.ThrowsAsync<InvalidOperationException>(async () => await new Places(_simulation, "bench", 1).Take(1));
    }

    [Fact]
    public void A_run_inside_a_run_is_refused() =>
        Assert.Contains(
            "running already",
            Fault(async () =>
            {
                await _simulation.Delay(1);
                _simulation.Run();
            }),
            StringComparison.Ordinal
        );

    [Fact]
    public void Reset_ends_those_who_wait_and_all_is_as_new()
    {
        var bench = new Places(_simulation, "bench", 2);
        bench.Watch();
        for (var round = 0; round < 3; round++)
        {
            _simulation.Reset();
            for (var i = 0; i < 4; i++)
            {
                _simulation.Start(Stay(bench), "lot", i);
            }

            _simulation.Run(1);
            Assert.Equal((2, 2, 0), (bench.Held, bench.InLine, bench.Free));
            bench.ChangeCapacity(9);
        }

        _simulation.Reset();
        Assert.Equal((0.0, 0, 0, 2), (_simulation.Now, bench.Held, bench.InLine, bench.Capacity));
        Assert.Equal(0, bench.Waits!.Count);
        Assert.Empty(_simulation.WhoWaits().Lines);
        _simulation.Run();
        Assert.Equal(0, _simulation.Events);

        async Process Stay(Places places)
        {
            await places.Take(1);
            await _simulation.Delay(100);
            places.Leave(1);
        }
    }

    [Fact]
    public void Many_runs_cut_off_keep_no_memory()
    {
        var bench = new Places(_simulation, "bench", 3);
        for (var round = 0; round < 100; round++)
        {
            CutOff();
        }

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var round = 0; round < 100; round++)
        {
            CutOff();
        }

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100);

        void CutOff()
        {
            _simulation.Reset();
            for (var i = 0; i < 20; i++)
            {
                _simulation.Start(Whole(bench), "lot", i);
            }

            _simulation.Run(5);
        }

        async Process Whole(Places places) => await Part(places);

        async Process Part(Places places)
        {
            await places.Take(1);
            await _simulation.Delay(100);
            places.Leave(1);
        }
    }

    // The first run leaves frames to be used again; the second takes them and is let go in the middle.
    [Fact]
    public void Nothing_outlives_a_simulation_that_is_let_go()
    {
        Leave(100);
        var left = Leave(1);
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
        Assert.False(left.IsAlive);

        [MethodImpl(MethodImplOptions.NoInlining)]
        static WeakReference Leave(double until)
        {
            var simulation = new Simulation();
            for (var i = 0; i < 20; i++)
            {
                simulation.Start(Rest(simulation), "lot", i);
            }

            simulation.Run(until);
            return new WeakReference(simulation);
        }

        static async Process Rest(Simulation simulation) => await simulation.Delay(10);
    }

    [Fact]
    public void A_simulation_may_go_on_in_another_thread()
    {
        var bench = new Places(_simulation, "bench", 3);
        var left = 0;
        for (var i = 0; i < 50; i++)
        {
            _simulation.Start(Visit(), "lot", i);
        }

        for (var day = 1; day <= 20; day++)
        {
            var thread = new Thread(() => _simulation.Run(day));
            thread.Start();
            thread.Join();
        }

        // 50 visits of a day each, three at a time: seventeen days.
        Assert.Equal((50, 0), (left, bench.Held));

        async Process Visit()
        {
            await Part();
            left++;
        }

        async Process Part() => await bench.Use(1, 1);
    }

    [Fact]
    public void Parts_that_are_over_leave_their_memory_to_the_next()
    {
        _simulation.Start(Whole(2000), "whole");
        _simulation.Run(1000);
        var before = GC.GetAllocatedBytesForCurrentThread();
        _simulation.Run();
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100);

        async Process Whole(int days)
        {
            for (var day = 0; day < days; day++)
            {
                await Day();
            }
        }

        async Process Day() => await _simulation.Delay(1);
    }

    private string Fault(Func<Process> story)
    {
        var simulation = _simulation;
        simulation.Reset();
        simulation.Start(story(), "story");
        return Assert.Throws<ProcessException>(simulation.Run).Message;
    }
}
