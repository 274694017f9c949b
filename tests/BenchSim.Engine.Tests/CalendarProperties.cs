using CsCheck;

namespace BenchSim.Engine.Tests;

/// <summary>The way of events against plain sorting, over random programs.</summary>
public class CalendarProperties
{
    // A pause as long as this stands for the end of the process.
    private const double EndsAbove = 4;

    private static readonly Gen<double> s_time = Gen.OneOf(Gen.Int[0, 5].Select(whole => (double)whole), Gen.Double[0, 5]);

    // Few different times and orders, so that ties are many.
    [Fact]
    public void First_turns_come_in_the_order_of_a_stable_sort_by_time_and_order() =>
        Gen.Select(s_time, Gen.Int[-2, 2])
            .Array[0, 200]
            .Sample(
                starts =>
                {
                    var simulation = new Simulation();
                    var turns = new List<int>();
                    for (var i = 0; i < starts.Length; i++)
                    {
                        simulation.Start(Note(simulation, turns, i), "process", i, starts[i].Item1, starts[i].Item2);
                    }

                    simulation.Run();
                    var expected = Enumerable.Range(0, starts.Length).OrderBy(i => starts[i].Item1).ThenBy(i => starts[i].Item2);
                    Assert.Equal(expected, turns);
                },
                iter: 500,
                seed: "0000000000001"
            );

    // Each process pauses again and again, and before some pauses, or before it ends, it starts another, which has its only turn now.
    // Against a list from which the least entry is picked by looking at all of them.
    [Fact]
    public void Pauses_and_starts_come_due_as_from_a_list_searched_from_end_to_end() =>
        Gen.Select(s_time, Gen.Int[-1, 1], Gen.Int[0, 2])
            .Array[0, 8]
            .Array[0, 12]
            .Sample(
                programs =>
                {
                    var simulation = new Simulation();
                    var turns = new List<(double, int)>();
                    for (var i = 0; i < programs.Length; i++)
                    {
                        simulation.Start(Pauses(simulation, turns, i, programs[i]), "process", i);
                    }

                    simulation.Run();
                    Assert.Equal(Expected(programs), turns);
                },
                iter: 2000,
                seed: "0000000000002"
            );

    private static List<(double Time, int Who)> Expected((double Days, int Order, int Starts)[][] programs)
    {
        var due = new List<(double Time, int Order, int Number, int Who, int Step)>();
        var number = 0;
        for (var who = 0; who < programs.Length; who++)
        {
            due.Add((0, 0, number++, who, 0));
        }

        var turns = new List<(double, int)>();
        while (due.Count > 0)
        {
            var least = due.MinBy(entry => (entry.Time, entry.Order, entry.Number));
            due.Remove(least);
            turns.Add((least.Time, least.Who));
            if (least.Who < 0 || least.Step == programs[least.Who].Length)
            {
                continue;
            }

            var (days, order, starts) = programs[least.Who][least.Step];
            for (var i = 0; i < starts; i++)
            {
                due.Add((least.Time, 0, number++, -1, 0));
            }

            if (days < EndsAbove)
            {
                due.Add((least.Time + days, order, number++, least.Who, least.Step + 1));
            }
        }

        return turns;
    }

    private static async Process Note(Simulation simulation, List<int> turns, int who)
    {
        turns.Add(who);
        await simulation.Delay(1);
    }

    private static async Process Pauses(
        Simulation simulation,
        List<(double, int)> turns,
        int who,
        (double Days, int Order, int Starts)[] steps
    )
    {
        turns.Add((simulation.Now, who));
        foreach (var (days, order, starts) in steps)
        {
            for (var i = 0; i < starts; i++)
            {
                simulation.Start(OneTurn(simulation, turns), "started");
            }

            if (days >= EndsAbove)
            {
                return;
            }

            await simulation.Delay(days, order);
            turns.Add((simulation.Now, who));
        }
    }

#pragma warning disable CS1998 // A process that never waits.
    private static async Process OneTurn(Simulation simulation, List<(double, int)> turns) => turns.Add((simulation.Now, -1));
#pragma warning restore CS1998
}
