using BenchSim.Engine;

namespace Published.Engine;

/// <summary>
/// A single station: customers come at random, are served by the first free of some servers, first come first served, and are lost when the
/// system holds as many as it can. One call of <see cref="Play"/> is one replication: warm-up, then figures.
/// </summary>
internal sealed class QueueModel
{
    private readonly Simulation _simulation = new();
    private readonly Places _room;
    private readonly Places _servers;
    private readonly Tally _sojourns = new();
    private readonly bool _inOne;
    private double _arrivalRate;
    private double _measuredFrom;
    private Func<Draws, double> _service = null!;
    private Draws _draws = null!;
    private long _came;
    private long _lost;
    private long _left;

    /// <summary>A station.</summary>
    /// <param name="servers">Servers.</param>
    /// <param name="most">The most customers in the system.</param>
    /// <param name="inOne">Whether a customer uses a server in one (<see cref="Places.Use"/>) or takes, holds and leaves it in steps.</param>
    public QueueModel(int servers, int most = Places.Unlimited, bool inOne = false)
    {
        _inOne = inOne;
        _room = new Places(_simulation, "room", most);
        _servers = new Places(_simulation, "servers", servers);
        _room.Watch();
        _servers.Watch();
    }

    public Dictionary<string, double> Play(double arrivalRate, Func<Draws, double> service, Draws draws, double warmUp, double length)
    {
        (_arrivalRate, _service, _draws, _measuredFrom) = (arrivalRate, service, draws, warmUp);
        _simulation.Reset();
        _simulation.Start(Send(), "door");
        _simulation.Run(warmUp);
        _room.Watch();
        _servers.Watch();
        _sojourns.Clear();
        _came = _lost = _left = 0;
        var end = warmUp + length;
        _simulation.Run(end);
        return new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["L"] = _room.HeldLevel!.Mean(end),
            ["Lq"] = _servers.LineLevel!.Mean(end),
            ["carried_load"] = _servers.HeldLevel!.Mean(end),
            ["Wq"] = _servers.Waits!.Mean,
            ["W"] = _sojourns.Mean,
            ["P_block"] = (double)_lost / _came,
            ["throughput"] = _left / length,
        };
    }

    private async Process Send()
    {
        for (var number = 0; ; number++)
        {
            await _simulation.Delay(_draws.Exponential(1 / _arrivalRate));
            _simulation.Start(Visit(), "customer", number);
        }
    }

    private async Process Visit()
    {
        _came++;
        if (_room.TakeWhatFits(1) == 0)
        {
            _lost++;
            return;
        }

        var came = _simulation.Now;
        if (_inOne)
        {
            await _servers.Use(1, _service(_draws));
        }
        else
        {
            await _servers.Take(1);
            await _simulation.Delay(_service(_draws));
            _servers.Leave(1);
        }

        _room.Leave(1);
        _left++;
        if (came >= _measuredFrom)
        {
            _sojourns.Add(_simulation.Now - came);
        }
    }
}
