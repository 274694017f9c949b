using BenchSim.Engine;

namespace Published.Engine;

/// <summary>Places without limit: whoever comes stays for a while. The rate of coming may change with time (thinning of the fastest rate).</summary>
internal sealed class InfiniteServerModel
{
    private readonly Simulation _simulation = new();
    private readonly Places _bench;
    private readonly Func<double, double> _rate;
    private readonly double _fastest;
    private readonly Func<Draws, double> _stay;
    private double _start;
    private Draws _draws = null!;

    /// <summary>A model.</summary>
    /// <param name="rate">Rate of coming by time.</param>
    /// <param name="fastest">The highest rate there is.</param>
    /// <param name="stay">One stay.</param>
    public InfiniteServerModel(Func<double, double> rate, double fastest, Func<Draws, double> stay)
    {
        (_rate, _fastest, _stay) = (rate, fastest, stay);
        _bench = new Places(_simulation, "bench", Places.Unlimited);
    }

    /// <summary>Plays from a start, empty, and counts who is there at each of some times.</summary>
    public int[] Counts(double start, IReadOnlyList<double> times, Draws draws)
    {
        (_start, _draws) = (start, draws);
        _simulation.Reset();
        _simulation.Start(Send(), "door");
        var counts = new int[times.Count];
        for (var i = 0; i < counts.Length; i++)
        {
            _simulation.Run(times[i] - start);
            counts[i] = _bench.Held;
        }

        return counts;
    }

    private async Process Send()
    {
        for (var number = 0; ; number++)
        {
            await _simulation.Delay(_draws.Exponential(1 / _fastest));
            if (_draws.Uniform() * _fastest < _rate(_start + _simulation.Now))
            {
                _simulation.Start(Stay(), "guest", number);
            }
        }
    }

    private async Process Stay()
    {
        await _bench.Take(1);
        await _simulation.Delay(_stay(_draws));
        _bench.Leave(1);
    }
}
