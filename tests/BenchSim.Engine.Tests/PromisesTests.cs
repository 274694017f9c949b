namespace BenchSim.Engine.Tests;

/// <summary>Single promises of the engine's documentation that larger tests pass by.</summary>
public class PromisesTests
{
    private readonly Simulation _simulation = new();

    [Fact]
    public void Events_counts_no_turn_that_is_still_to_come()
    {
        // Two first turns on day 0, and one on day 1; the turns of days 2 and 3 are due.
        var counts = new List<long>();
        _simulation.Start(Walk(1, 2), "a");
        _simulation.Start(Walk(2), "b");
        _simulation.Run(1.5);
        Assert.Equal([1L, 2L], counts);
        Assert.Equal(3, _simulation.Events);

        async Process Walk(params double[] days)
        {
            counts.Add(_simulation.Events);
            foreach (var day in days)
            {
                await _simulation.Delay(day);
            }
        }
    }

    [Fact]
    public void A_run_until_now_plays_what_is_due_now()
    {
        _simulation.Start(Rest(), "a");
        _simulation.Run(0);
        Assert.Equal(1, _simulation.Events);
    }

    [Fact]
    public void After_a_process_threw_nothing_more_can_be_started_or_made()
    {
        _simulation.Start(Fail(), "a");
        Assert.Throws<ProcessException>(_simulation.Run);
        Assert.Throws<InvalidOperationException>(() => _simulation.Start(Rest(), "b"));
        Assert.Throws<InvalidOperationException>(() => new Places(_simulation, "bench", 1));

        async Process Fail()
        {
            await _simulation.Delay(1);
            throw new InvalidOperationException("too cold");
        }
    }

    [Fact]
    public void After_a_run_nobody_takes_or_leaves_places()
    {
        var bench = new Places(_simulation, "bench", 1);
        _simulation.Start(Rest(), "a");
        _simulation.Start(Rest(), "b");
        _simulation.Run();
        Assert.Throws<InvalidOperationException>(() => bench.TakeWhatFits(1));
    }

    [Fact]
    public void An_order_out_of_range_is_refused_in_a_pause() =>
        Assert.IsType<ArgumentOutOfRangeException>(Fault(async () => await _simulation.Delay(1, order: 40_000)));

    [Fact]
    public void A_pause_serves_once() =>
        Assert.IsType<InvalidOperationException>(
            Fault(async () =>
            {
                var pause = _simulation.Delay(1);
                await pause;
                await pause;
            })
        );

    [Fact]
    public void A_simulation_is_not_reset_from_inside() =>
        Assert.IsType<InvalidOperationException>(
            Fault(async () =>
            {
                await _simulation.Delay(1);
                _simulation.Reset();
            })
        );

    [Fact]
    public void A_process_cannot_leave_places_of_which_it_holds_none()
    {
        var bench = new Places(_simulation, "bench", 3);
        Assert.IsType<InvalidOperationException>(
            Fault(async () =>
            {
                await _simulation.Delay(1);
                bench.Leave(1);
            })
        );
    }

    [Fact]
    public void A_process_may_hold_places_of_many_kinds()
    {
        var kinds = Enumerable.Range(0, 20).Select(i => new Places(_simulation, $"place {i}", 1)).ToArray();
        _simulation.Start(TakeAll(), "a");
        _simulation.Run(1);
        Assert.All(kinds, kind => Assert.Equal(1, kind.Held));
        _simulation.Run();
        Assert.All(kinds, kind => Assert.Equal(0, kind.Held));

        async Process TakeAll()
        {
            foreach (var kind in kinds)
            {
                await kind.Take(1);
            }

            await _simulation.Delay(2);
            foreach (var kind in kinds)
            {
                kind.Leave(1);
            }
        }
    }

    [Fact]
    public void After_a_reset_the_very_first_process_waits_no_more()
    {
        var bench = new Places(_simulation, "bench", 0, most: 1);
        _simulation.Start(Ask(), "lot", 0);
        _simulation.Run();
        Assert.Equal("lot 0", Assert.Single(_simulation.WhoWaits().Lines).Process);
        _simulation.Reset();
        Assert.Empty(_simulation.WhoWaits().Lines);

        async Process Ask()
        {
            await bench.Take(1);
            bench.Leave(1);
        }
    }

    private async Process Rest() => await _simulation.Delay(1);

    private Exception? Fault(Func<Process> story)
    {
        _simulation.Start(story(), "story");
        return Assert.Throws<ProcessException>(_simulation.Run).InnerException;
    }
}
