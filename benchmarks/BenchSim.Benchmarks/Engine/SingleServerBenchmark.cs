using BenchmarkDotNet.Attributes;
using BenchSim.Engine;

namespace BenchSim.Benchmarks.Engine;

/// <summary>
/// A single server at load 0.8 (M/M/1), 20,000 customers a call: as one process a customer, as a server that is a process and works off its
/// line, and as a hand-written event loop with one event for a coming and one for a leaving. The second and the third are the same writing:
/// a customer is a number in a line. As in the golden model, a time is drawn when it is needed, so the draws are part of all three.
/// </summary>
[MemoryDiagnoser]
public class SingleServerBenchmark
{
    private const int Customers = 20_000;
    private readonly Simulation _simulation = new();
    private readonly Places _server;
    private readonly EventHeap _heap = new();
    private readonly Queue<double> _line = new();
    private ExponentialStream _gaps;
    private ExponentialStream _services;
    private double _sum;

    /// <summary>Makes the world that is played again and again.</summary>
    public SingleServerBenchmark() => _server = new Places(_simulation, "server", 1);

    /// <summary>Customers a call.</summary>
    internal static int CustomersEach => Customers;

    /// <summary>Events of the engine's latest call.</summary>
    internal long Events => _simulation.Events;

    /// <summary>All must play the same model before their times are worth comparing.</summary>
    [GlobalSetup]
    public void Agree()
    {
        var loop = Loop();
        if (Math.Abs((loop / Processes()) - 1) > 1e-9 || Math.Abs((loop / Swept()) - 1) > 1e-9)
            throw new InvalidOperationException("The loop and the processes disagree.");
    }

    /// <summary>The hand-written loop.</summary>
    [Benchmark(Baseline = true)]
    public double Loop()
    {
        const int Coming = 0;
        const int Leaving = 1;
        double sum = 0;
        var came = 0;
        Seed();
        _heap.Clear();
        _heap.Push(_gaps.Next(), Coming);
        while (!_heap.IsEmpty)
        {
            var (now, what) = _heap.Pop();
            if (what == Coming)
            {
                _line.Enqueue(now);
                if (_line.Count == 1) _heap.Push(now + _services.Next(), Leaving);
                if (++came < Customers) _heap.Push(now + _gaps.Next(), Coming);
            }
            else
            {
                sum += now - _line.Dequeue();
                if (_line.Count > 0) _heap.Push(now + _services.Next(), Leaving);
            }
        }

        return sum;
    }

    /// <summary>The engine, a process a customer.</summary>
    [Benchmark]
    public double Processes() => Play(Send());

    /// <summary>The engine, the server a process that works off its line.</summary>
    [Benchmark]
    public double Swept() => Play(SendToLine());

    private double Play(Process door)
    {
        _sum = 0;
        Seed();
        _simulation.Reset();
        _simulation.Start(door, "door");
        _simulation.Run();
        return _sum;
    }

    private void Seed()
    {
        _gaps = new ExponentialStream(1, 1.25);
        _services = new ExponentialStream(2, 1);
    }

    private async Process Send()
    {
        for (var i = 0; i < Customers; i++)
        {
            await _simulation.Delay(_gaps.Next());
            _simulation.Start(Visit(), "customer", i);
        }
    }

    private async Process Visit()
    {
        var came = _simulation.Now;
        await _server.Take(1);
        await _simulation.Delay(_services.Next());
        _server.Leave(1);
        _sum += _simulation.Now - came;
    }

    private async Process SendToLine()
    {
        for (var i = 0; i < Customers; i++)
        {
            await _simulation.Delay(_gaps.Next());
            _line.Enqueue(_simulation.Now);
            if (_line.Count == 1) _simulation.Start(Serve(), "server");
        }
    }

    private async Process Serve()
    {
        while (_line.Count > 0)
        {
            await _simulation.Delay(_services.Next());
            _sum += _simulation.Now - _line.Dequeue();
        }
    }
}
