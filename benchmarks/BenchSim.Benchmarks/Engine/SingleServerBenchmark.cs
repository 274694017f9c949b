using BenchmarkDotNet.Attributes;
using BenchSim.Engine;

namespace BenchSim.Benchmarks.Engine;

/// <summary>
/// A single server at load 0.8 (M/M/1), 20,000 customers a call, written in four ways: a process a customer, which sends the next one and
/// uses the server; a process a customer in single steps (take, wait, leave), sent by a door that is a process as well; the server as a
/// process that works off its line; and a hand-written event loop with one event for a coming, which sends the next one, and one for a leaving.
/// In the last two a customer is a number in a line. Times are drawn as it goes, so the draws are part of all: gaps and service times from a
/// stream each, so that a service time is the same whether it is drawn when the customer comes or when it is served.
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
        if (Array.Exists([Processes(), InSteps(), Swept()], sum => Math.Abs((loop / sum) - 1) > 1e-9))
        {
            throw new InvalidOperationException("The loop and the processes disagree.");
        }
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
                if (_line.Count == 1)
                {
                    _heap.Push(now + _services.Next(), Leaving);
                }

                if (++came < Customers)
                {
                    _heap.Push(now + _gaps.Next(), Coming);
                }
            }
            else
            {
                sum += now - _line.Dequeue();
                if (_line.Count > 0)
                {
                    _heap.Push(now + _services.Next(), Leaving);
                }
            }
        }

        return sum;
    }

    /// <summary>The engine, a process a customer.</summary>
    [Benchmark]
    public double Processes()
    {
        Clear();
        _simulation.Start(Visit(0), "customer", 0, _gaps.Next());
        return Play();
    }

    /// <summary>The engine, a process a customer, in single steps.</summary>
    [Benchmark]
    public double InSteps()
    {
        Clear();
        _simulation.Start(Send(), "door");
        return Play();
    }

    /// <summary>The engine, the server a process that works off its line.</summary>
    [Benchmark]
    public double Swept()
    {
        Clear();
        _simulation.Start(SendToLine(), "door");
        return Play();
    }

    private void Clear()
    {
        _sum = 0;
        Seed();
        _simulation.Reset();
    }

    private double Play()
    {
        _simulation.Run();
        return _sum;
    }

    private void Seed()
    {
        _gaps = new ExponentialStream(1, 1.25);
        _services = new ExponentialStream(2, 1);
    }

    private async Process Visit(int number)
    {
        var came = _simulation.Now;
        var next = number + 1;
        if (next < Customers)
        {
            var comes = came + _gaps.Next();
            _simulation.Start(Visit(next), "customer", next, comes);
        }

        await _server.Use(1, _services.Next());
        _sum += _simulation.Now - came;
    }

    private async Process Send()
    {
        for (var i = 0; i < Customers; i++)
        {
            await _simulation.Delay(_gaps.Next());
            _simulation.Start(VisitInSteps(), "customer", i);
        }
    }

    private async Process VisitInSteps()
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
            if (_line.Count == 1)
            {
                _simulation.Start(Serve(), "server");
            }
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
