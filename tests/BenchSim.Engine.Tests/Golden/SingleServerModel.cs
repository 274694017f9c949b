namespace BenchSim.Engine.Tests.Golden;

/// <summary>
/// The golden single server (M/M/1), a process a customer: in single steps, with a process that sends the customers; or in one, with customers
/// who use the server and send the next one.
/// </summary>
internal sealed class SingleServerModel
{
    private readonly Simulation _simulation = new();
    private readonly Places _server;
    private readonly Xoshiro _comings = new(1001);
    private readonly Xoshiro _services = new(2002);
    private double _sojourn;

    public SingleServerModel() => _server = new Places(_simulation, "server", 1);

    public Simulation Simulation => _simulation;

    public double MeanSojourn(int customers)
    {
        _simulation.Start(Send(customers), "door");
        _simulation.Run();
        return _sojourn / customers;
    }

    public double MeanSojournInOne(int customers)
    {
        _simulation.Start(VisitInOne(customers), "customer", at: _comings.Exponential(1.25));
        _simulation.Run();
        return _sojourn / customers;
    }

    private async Process Send(int customers)
    {
        for (var i = 0; i < customers; i++)
        {
            await _simulation.Delay(_comings.Exponential(1.25));
            _simulation.Start(Visit(), "customer", i);
        }
    }

    private async Process Visit()
    {
        var came = _simulation.Now;
        await _server.Take(1);
        await _simulation.Delay(_services.Exponential(1));
        _server.Leave(1);
        _sojourn += _simulation.Now - came;
    }

    private async Process VisitInOne(int customers)
    {
        var came = _simulation.Now;
        if (customers > 1)
        {
            _simulation.Start(VisitInOne(customers - 1), "customer", at: came + _comings.Exponential(1.25));
        }

        await _server.Use(1, _services.Exponential(1));
        _sojourn += _simulation.Now - came;
    }
}
