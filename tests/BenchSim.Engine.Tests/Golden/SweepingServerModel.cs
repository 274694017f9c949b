namespace BenchSim.Engine.Tests.Golden;

/// <summary>The golden single server (M/M/1) written the other way: the server is the process and works off its line, a customer a number in it.</summary>
internal sealed class SweepingServerModel
{
    private readonly Simulation _simulation = new();
    private readonly Queue<double> _line = new();
    private readonly Xoshiro _comings = new(1001);
    private readonly Xoshiro _services = new(2002);
    private double _sojourn;

    public double MeanSojourn(int customers)
    {
        _simulation.Start(Send(customers), "door");
        _simulation.Run();
        return _sojourn / customers;
    }

    private async Process Send(int customers)
    {
        for (var i = 0; i < customers; i++)
        {
            await _simulation.Delay(_comings.Exponential(1.25));
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
            await _simulation.Delay(_services.Exponential(1));
            _sojourn += _simulation.Now - _line.Dequeue();
        }
    }
}
