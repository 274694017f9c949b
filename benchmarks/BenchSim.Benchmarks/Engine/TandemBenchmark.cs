using BenchmarkDotNet.Attributes;
using BenchSim.Engine;

namespace BenchSim.Benchmarks.Engine;

/// <summary>
/// The golden tandem model (150 entities, four stages in series, capacities 8, 60, 30, 40, blocking after service), 20 replications a call:
/// as processes of the engine, and as a hand-written event loop.
/// </summary>
[MemoryDiagnoser]
public class TandemBenchmark
{
    private const int Entities = 150;
    private const int Stages = 4;
    private const int Replications = 20;
    private static readonly int[] s_capacities = [8, 60, 30, 40];
    private static readonly double[] s_meanDays = [7, 28, 21, 7];

    private readonly int[] _units = Luck.OneTo(12, Entities * Replications, "units");
    private readonly double[][] _days = Array.ConvertAll(s_meanDays, mean =>
        Luck.Lognormals(Entities * Replications, mean, 0.3, $"stage {mean}")
    );
    private readonly Simulation _simulation = new();
    private readonly Places[] _stages;
    private readonly HandWrittenTandem _loop;
    private double _sum;

    /// <summary>Draws all luck beforehand.</summary>
    public TandemBenchmark()
    {
        _stages = Array.ConvertAll(s_capacities, capacity => new Places(_simulation, "stage", capacity));
        _loop = new HandWrittenTandem(Entities, s_capacities, _units, _days);
    }

    /// <summary>Units of each entity, and its days in each stage: what another engine is to be fed.</summary>
    internal (int[] Units, double[][] Days) Numbers => (_units, _days);

    /// <summary>Events of the engine's latest replication.</summary>
    internal long Events => _simulation.Events;

    /// <summary>Both sides must play the same model before their times are worth comparing.</summary>
    [GlobalSetup]
    public void Agree()
    {
        if (Math.Abs((Loop() / Processes()) - 1) > 1e-9)
        {
            throw new InvalidOperationException("The loop and the processes disagree.");
        }
    }

    /// <summary>The hand-written loop.</summary>
    [Benchmark(Baseline = true)]
    public double Loop()
    {
        double sum = 0;
        for (var r = 0; r < Replications; r++)
        {
            sum += _loop.Play(r);
        }

        return sum;
    }

    /// <summary>The engine.</summary>
    [Benchmark]
    public double Processes()
    {
        _sum = 0;
        for (var r = 0; r < Replications; r++)
        {
            _simulation.Reset();
            for (var e = 0; e < Entities; e++)
            {
                _simulation.Start(Pass((r * Entities) + e), "entity", e, 0.8 * e);
            }

            _simulation.Run();
        }

        return _sum;
    }

    private async Process Pass(int row)
    {
        var came = _simulation.Now;
        var held = 0;
        for (var i = 0; i < Stages; i++)
        {
            var wanted = Math.Min(_units[row], s_capacities[i]);
            await _stages[i].Take(wanted);
            if (i > 0)
            {
                _stages[i - 1].Leave(held);
            }

            held = wanted;
            await _simulation.Delay(_days[i][row]);
        }

        _stages[Stages - 1].Leave(held);
        _sum += _simulation.Now - came;
    }
}
