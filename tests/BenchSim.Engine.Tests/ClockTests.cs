namespace BenchSim.Engine.Tests;

public class ClockTests
{
    private readonly Simulation _simulation = new();
    private readonly List<string> _log = [];

    [Fact]
    public void Nothing_runs_before_the_run()
    {
        _simulation.Start(Say("a"), "a");
        Assert.Empty(_log);
        _simulation.Run();
        Assert.Equal(["a 0"], _log);
    }

    [Fact]
    public void Time_goes_as_the_processes_say()
    {
        _simulation.Start(Walk("a", 1, 2, 0.5), "a");
        _simulation.Start(Walk("b", 2, 0.25), "b", at: 0.5);
        _simulation.Run();
        Assert.Equal(["a 1", "b 2.5", "b 2.75", "a 3", "a 3.5"], _log);
        Assert.Equal(3.5, _simulation.Now);
    }

    [Fact]
    public void At_one_time_the_lower_order_goes_first_and_then_who_was_put_down_first()
    {
        _simulation.Start(Say("late"), "late", at: 1, order: 1);
        _simulation.Start(Say("first"), "first", at: 1);
        _simulation.Start(Say("second"), "second", at: 1);
        _simulation.Start(Say("early"), "early", at: 1, order: -1);
        _simulation.Run();
        Assert.Equal(["early 1", "first 1", "second 1", "late 1"], _log);
    }

    [Fact]
    public void A_delay_of_nothing_lets_the_others_go_first()
    {
        _simulation.Start(Walk("a", 0), "a");
        _simulation.Start(Say("b"), "b");
        _simulation.Run();
        Assert.Equal(["b 0", "a 0"], _log);
    }

    [Fact]
    public void A_process_started_now_with_a_lower_order_goes_before_those_waiting_for_their_turn()
    {
        _simulation.Start(StartOther(), "starter");
        _simulation.Start(Say("second"), "second");
        _simulation.Run();
        Assert.Equal(["urgent 0", "second 0", "plain 0"], _log);

        async Process StartOther()
        {
            _simulation.Start(Say("plain"), "plain");
            _simulation.Start(Say("urgent"), "urgent", order: -1);
            await _simulation.Delay(1);
        }
    }

    // 40 first turns come, and start 100 others each, when 40 more are still to come: 4,000 stand behind those 40.
    [Fact]
    public void However_many_are_due_now_who_came_first_goes_first()
    {
        var turns = new List<int>();
        for (var i = 0; i < 80; i++)
        {
            _simulation.Start(Turn(i), "early", i);
        }

        _simulation.Run();
        Assert.Equal(Enumerable.Range(0, 80 + 4000), turns);

        async Process Turn(int who)
        {
            turns.Add(who);
            for (var i = 0; i < 100 && who < 40; i++)
            {
                _simulation.Start(Turn(80 + (who * 100) + i), "late");
            }

            await _simulation.Delay(1);
        }
    }

    [Fact]
    public void Run_until_includes_what_is_due_then_and_leaves_the_rest_for_later()
    {
        _simulation.Start(Walk("a", 1, 1, 1), "a");
        _simulation.Run(2);
        Assert.Equal(["a 1", "a 2"], _log);
        Assert.Equal(2, _simulation.Now);
        _simulation.Run(2.5);
        Assert.Equal(2.5, _simulation.Now);
        Assert.Equal(2, _log.Count);
        _simulation.Run();
        Assert.Equal("a 3", _log[^1]);
        Assert.Equal(3, _simulation.Now);
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_senseless_delay_is_refused(double days)
    {
        _simulation.Start(Walk("a", days), "a");
        Assert.IsType<ArgumentOutOfRangeException>(Assert.Throws<ProcessException>(_simulation.Run).InnerException);
    }

    [Fact]
    public void Time_never_goes_back()
    {
        _simulation.Run(5);
        Assert.Throws<ArgumentOutOfRangeException>(() => _simulation.Run(4));
        Assert.Throws<ArgumentOutOfRangeException>(() => _simulation.Start(Say("a"), "a", at: 4.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => _simulation.Until(4.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => _simulation.Start(Say("a"), "a", order: 40_000));
    }

    [Fact]
    public void Events_counts_turns()
    {
        // Two first turns, and one after each of the three delays.
        _simulation.Start(Walk("a", 1, 2), "a");
        _simulation.Start(Walk("b", 1), "b");
        _simulation.Run();
        Assert.Equal(5, _simulation.Events);
    }

    private async Process Say(string what)
    {
        _log.Add(FormattableString.Invariant($"{what} {_simulation.Now}"));
        await _simulation.Delay(0);
    }

    private async Process Walk(string who, params double[] steps)
    {
        foreach (var step in steps)
        {
            await _simulation.Delay(step);
            _log.Add(FormattableString.Invariant($"{who} {_simulation.Now}"));
        }
    }
}
