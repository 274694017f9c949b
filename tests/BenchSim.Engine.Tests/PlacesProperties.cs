using CsCheck;

namespace BenchSim.Engine.Tests;

/// <summary>Places under random programs of takes, waits and leaves: what must hold at every step, whatever happens.</summary>
public class PlacesProperties
{
    private static readonly Gen<Step> s_step = Gen.Select(
        Gen.Int[0, 2],
        Gen.Int[1, 6],
        Gen.Int[0, 4],
        Gen.Enum<Way>(),
        (places, count, days, way) => new Step(places, count, days, way)
    );

    private static readonly Gen<(int[] Capacities, Step[][] Programs, bool MayOvertake)> s_case = Gen.Select(
        Gen.Int[1, 8].Array[3],
        s_step.Array[1, 6].Array[1, 20],
        Gen.Bool
    );

    [Fact]
    public void Capacity_line_and_ledger_hold_at_every_step() =>
        s_case.Sample(
            (capacities, programs, mayOvertake) =>
            {
                var simulation = new Simulation();
                var watch = new Watchdog();
                simulation.Trace = watch;
                var places = capacities.Select((capacity, i) => new Places(simulation, $"place {i}", capacity, 0, mayOvertake)).ToArray();
                for (var i = 0; i < programs.Length; i++)
                {
                    simulation.Start(Live(simulation, places, programs[i]), "lot", i, i / 3);
                }

                simulation.Run();

                // Each process leaves what it has before it asks again, so nobody can wait for ever.
                Assert.Empty(simulation.WhoWaits().Lines);
                Assert.All(places, one => Assert.Equal((0, 0), (one.Held, one.InLine)));
                Assert.Equal(programs.Length, watch.Ended);
            },
            iter: 1000,
            seed: "0000000000003"
        );

    // Asking for more while holding can lock up: then the report must say so, and what is held must still add up.
    [Fact]
    public void A_run_ends_with_all_done_or_with_a_report_of_who_waits_for_whom() =>
        s_case.Sample(
            (capacities, programs, mayOvertake) =>
            {
                var simulation = new Simulation();
                var watch = new Watchdog();
                simulation.Trace = watch;
                var places = capacities.Select((capacity, i) => new Places(simulation, $"place {i}", capacity, 0, mayOvertake)).ToArray();
                for (var i = 0; i < programs.Length; i++)
                {
                    simulation.Start(Gather(simulation, places, programs[i]), "lot", i);
                }

                simulation.Run();
                var report = simulation.WhoWaits();
                Assert.Equal(programs.Length, watch.Ended + report.Lines.Count);
                Assert.Equal(report.Lines.Count > 0, report.IsGridlock);

                // Nobody waits for nothing: with nothing due, some of those who wait must wait for each other.
                if (report.IsGridlock)
                {
                    Assert.NotEmpty(report.Rings);
                }

                Assert.All(report.Lines, line => Assert.Equal(line.Held, line.Holders.Sum(holder => holder.Count)));
            },
            iter: 1000,
            seed: "0000000000004"
        );

    // One process takes and leaves places of five kinds as it comes, also more than it holds. Against a ledger.
    [Fact]
    public void A_process_holds_what_it_took_and_has_not_left() =>
        Gen.Select(Gen.Int[0, 4], Gen.Int[-3, 3])
            .Array[0, 60]
            .Sample(
                steps =>
                {
                    var simulation = new Simulation();
                    var kinds = Enumerable.Range(0, 5).Select(i => new Places(simulation, $"kind {i}", 100)).ToArray();
                    var ledger = new int[kinds.Length];
                    simulation.Start(Live(), "lot");
                    simulation.Run();
                    Assert.All(kinds, kind => Assert.Equal(0, kind.Held));

                    async Process Live()
                    {
                        foreach (var (kind, count) in steps)
                        {
                            if (count > 0)
                            {
                                await kinds[kind].Take(count);
                            }
                            else if (count < 0 && -count > ledger[kind])
                            {
                                Assert.Throws<InvalidOperationException>(() => kinds[kind].Leave(-count));
                            }
                            else if (count < 0)
                            {
                                kinds[kind].Leave(-count);
                            }

                            if (count > 0 || -count <= ledger[kind])
                            {
                                ledger[kind] += count;
                            }

                            Assert.Equal(ledger, kinds.Select(one => one.Held));
                        }

                        for (var kind = 0; kind < kinds.Length; kind++)
                        {
                            if (ledger[kind] > 0)
                            {
                                kinds[kind].Leave(ledger[kind]);
                            }
                        }
                    }
                },
                iter: 500,
                seed: "0000000000006"
            );

    private static async Process Live(Simulation simulation, Places[] places, Step[] program)
    {
        foreach (var step in program)
        {
            var one = places[step.Places];
            var count = Math.Min(step.Count, one.Capacity);
            if (step.Way == Way.Use)
            {
                await one.Use(count, step.Days);
                continue;
            }

            if (step.Way == Way.Take)
            {
                await one.Take(count);
            }
            else
            {
                count = one.TakeWhatFits(count);
            }

            await simulation.Delay(step.Days);
            if (count > 0)
            {
                one.Leave(count);
            }
        }
    }

    private static async Process Gather(Simulation simulation, Places[] places, Step[] program)
    {
        var held = new int[places.Length];
        foreach (var step in program)
        {
            var one = places[step.Places];
            var count = Math.Min(step.Count, one.Capacity);
            await one.Take(count);
            held[step.Places] += count;
            await simulation.Delay(step.Days);
        }

        for (var i = 0; i < places.Length; i++)
        {
            if (held[i] > 0)
            {
                places[i].Leave(held[i]);
            }
        }
    }

    /// <summary>How a step comes to its places.</summary>
    public enum Way
    {
        /// <summary>Asks, waits, stays and leaves.</summary>
        Take,

        /// <summary>Takes what fits, stays and leaves.</summary>
        TakeWhatFits,

        /// <summary>All in one.</summary>
        Use,
    }

    /// <summary>One step of a program.</summary>
    public sealed record Step(int Places, int Count, int Days, Way Way);

    /// <summary>Keeps books of its own from what it hears, and compares them with the places at each step.</summary>
    private sealed class Watchdog : ITrace
    {
        private readonly Dictionary<(Places, string), int> _held = [];
        private readonly Dictionary<Places, List<(string Who, int Count)>> _lines = [];
        private double _time;

        public int Ended { get; private set; }

        public void Note(in TraceNote note)
        {
            Assert.True(note.Time >= _time, "Time went back.");
            _time = note.Time;
            if (note.Act == TraceAct.Ends)
            {
                Ended++;
            }

            if (note.Where is not { } places)
            {
                return;
            }

            if (!_lines.TryGetValue(places, out var line))
            {
                _lines.Add(places, line = []);
            }

            if (note.Act == TraceAct.Waits)
            {
                Ask(line, places, note);
            }
            else if (note.Act == TraceAct.Takes)
            {
                Take(line, places, note);
            }
            else
            {
                Change(places, note.Process, -note.Count);
            }

            var held = _held.Where(entry => entry.Key.Item1 == places).Sum(entry => entry.Value);
            Assert.Equal(held, places.Held);
            Assert.InRange(places.Held, 0, places.Capacity);
        }

        private static void Ask(List<(string Who, int Count)> line, Places places, TraceNote note)
        {
            // Whoever has to wait has a reason: it does not fit, or somebody stands before it.
            Assert.True(note.Count > places.Free || (line.Count > 0 && !places.MayOvertake));
            Assert.Equal(line.Count, note.Ahead);
            line.Add((note.Process, note.Count));
        }

        private void Take(List<(string Who, int Count)> line, Places places, TraceNote note)
        {
            var who = note.Process;
            var at = line.FindIndex(one => one.Who == who);
            var ahead = at < 0 ? line : line[..at];

            // Nobody overtakes. Where it is allowed, those ahead would not have fitted into what was free before.
            if (!places.MayOvertake)
            {
                Assert.Empty(ahead);
            }

            Assert.All(ahead, one => Assert.True(one.Count > places.Free + note.Count));
            if (at >= 0)
            {
                line.RemoveAt(at);
            }

            Change(places, note.Process, note.Count);
        }

        private void Change(Places places, string who, int by)
        {
            var count = _held.GetValueOrDefault((places, who)) + by;
            Assert.True(count >= 0, "Left more than it held.");
            _held[(places, who)] = count;
        }
    }
}
