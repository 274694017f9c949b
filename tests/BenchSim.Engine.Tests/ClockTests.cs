using BenchSim.Engine;
using CsCheck;

namespace BenchSim.Engine.Tests;

/// <summary>The clock: what happens when, in which order, and what it refuses.</summary>
public class ClockTests
{
    private readonly Clock _clock = new();

    [Fact]
    public void Time_goes_from_event_to_event_and_activities_are_tried_after_all_of_a_time()
    {
        _clock.Schedule(2.5, 0, 1);
        _clock.Schedule(1, 0, 2);
        _clock.Schedule(2.5, 0, 3);
        var log = Play();
        Assert.Equal(["1: 0/2", "1: attempt", "2.5: 0/1", "2.5: 0/3", "2.5: attempt"], log);
        Assert.Equal(2.5, _clock.Now);
    }

    [Fact]
    public void At_one_time_the_lower_kind_happens_first_and_then_what_was_scheduled_first()
    {
        _clock.Schedule(1, 1, 10);
        _clock.Schedule(1, 0, 11);
        _clock.Schedule(1, 0, 12);
        _clock.Schedule(1, 32_767, 13);
        Assert.Equal(["1: 0/11", "1: 0/12", "1: 1/10", "1: 32767/13", "1: attempt"], Play());
    }

    [Fact]
    public void What_is_scheduled_for_now_still_happens_now()
    {
        _clock.Schedule(1, 0, 0);
        var log = Play(happening =>
        {
            if (happening.Subject == 0)
            {
                _clock.Schedule(_clock.Now, 0, 1);
            }
        });
        Assert.Equal(["1: 0/0", "1: 0/1", "1: attempt"], log);
    }

    [Fact]
    public void A_stopped_clock_leaves_the_rest_and_a_reset_one_forgets_it()
    {
        _clock.Schedule(1, 0, 0);
        _clock.Schedule(2, 0, 0);
        Assert.Equal(["1: 0/0", "1: attempt"], Play(_ => _clock.Stop()));
        _clock.Reset(5);
        Assert.Empty(Play());
        _clock.Schedule(5, 0, 7);
        Assert.Equal(["5: 0/7", "5: attempt"], Play());
    }

    [Theory]
    [InlineData(0.999)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_time_before_now_or_without_end_is_refused(double time)
    {
        _clock.Reset(1);
        Assert.Throws<ArgumentOutOfRangeException>(() => _clock.Schedule(time, 0, 0));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(32_768)]
    public void A_kind_out_of_range_is_refused(int kind) => Assert.Throws<ArgumentOutOfRangeException>(() => _clock.Schedule(1, kind, 0));

    // Against plain sorting, which keeps the order of equals: whole times and few kinds make many ties, and events that schedule others
    // mix the ways in.
    [Fact]
    public void Events_happen_in_the_order_of_time_kind_and_scheduling() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 3], Gen.Int[0, 4])
            .Array[0, 200]
            .Sample(
                events =>
                {
                    var (clock, happened) = (new Clock(), new List<int>());
                    var expected = new List<(double Time, int Kind, int Subject)>();
                    foreach (var (time, kind, _) in events)
                    {
                        expected.Add((time, kind, expected.Count));
                        clock.Schedule(time, kind, expected.Count - 1);
                    }

                    clock.Run(
                        new Model(
                            happening =>
                            {
                                happened.Add(happening.Subject);
                                if (happening.Subject < events.Length && events[happening.Subject].Item3 is > 0 and var later)
                                {
                                    expected.Add((clock.Now + later, happening.Kind, expected.Count));
                                    clock.Schedule(clock.Now + later, happening.Kind, expected.Count - 1);
                                }
                            },
                            () => { }
                        )
                    );
                    Assert.Equal(expected.OrderBy(each => each.Time).ThenBy(each => each.Kind).Select(each => each.Subject), happened);
                },
                seed: "0000000000001",
                iter: 500
            );

    private List<string> Play(Action<BoundEvent>? happen = null)
    {
        var log = new List<string>();
        _clock.Run(
            new Model(
                happening =>
                {
                    log.Add(FormattableString.Invariant($"{_clock.Now}: {happening.Kind}/{happening.Subject}"));
                    happen?.Invoke(happening);
                },
                () => log.Add(FormattableString.Invariant($"{_clock.Now}: attempt"))
            )
        );
        return log;
    }

    private sealed class Model(Action<BoundEvent> happen, Action attempt) : IThreePhaseModel
    {
        public void Happen(BoundEvent happening) => happen(happening);

        public void Attempt() => attempt();
    }
}
