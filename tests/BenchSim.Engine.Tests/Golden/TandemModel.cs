namespace BenchSim.Engine.Tests.Golden;

/// <summary>
/// The golden tandem: 150 entities, number e comes at day 0.8 e with 1 to 12 units and passes four stages in series, first come first
/// served; it takes min(units, capacity) of a stage and keeps what it has of a stage until it has what it needs of the next.
/// </summary>
internal sealed class TandemModel
{
    public const int Entities = 150;
    private const int Stages = 4;
    private static readonly double[] s_meanDays = [7, 28, 21, 7];
    private readonly Simulation _simulation = new();
    private readonly Places[] _stages = new Places[Stages];
    private readonly int[] _units = new int[Entities];
    private readonly double[] _days = new double[Entities * Stages];
    private readonly double[] _left = new double[Entities];

    public TandemModel(params int[] capacities)
    {
        for (var i = 0; i < Stages; i++)
        {
            _stages[i] = new Places(_simulation, $"stage {i + 1}", capacities[i]);
        }
    }

    public Simulation Simulation => _simulation;

    /// <summary>Plays one replication and gives the mean time in the system and the mean time of leaving.</summary>
    public (double Sojourn, double Finish) Play(ulong seed)
    {
        Draw(seed);
        return Play();
    }

    public void Draw(ulong seed)
    {
        var random = new Xoshiro(seed);
        for (var e = 0; e < Entities; e++)
        {
            _units[e] = random.OneTo(12);
            for (var i = 0; i < Stages; i++)
            {
                _days[(e * Stages) + i] = random.Lognormal(s_meanDays[i], 0.3);
            }
        }
    }

    public (double Sojourn, double Finish) Play()
    {
        _simulation.Reset();
        for (var e = 0; e < Entities; e++)
        {
            _simulation.Start(Pass(e), "entity", e, 0.8 * e);
        }

        _simulation.Run();
        double sojourn = 0,
            finish = 0;
        for (var e = 0; e < Entities; e++)
        {
            sojourn += _left[e] - (0.8 * e);
            finish += _left[e];
        }

        return (sojourn / Entities, finish / Entities);
    }

    private async Process Pass(int e)
    {
        var held = 0;
        for (var i = 0; i < Stages; i++)
        {
            var wanted = Math.Min(_units[e], _stages[i].Capacity);
            await _stages[i].Take(wanted);
            if (i > 0)
            {
                _stages[i - 1].Leave(held);
            }

            held = wanted;
            await _simulation.Delay(_days[(e * Stages) + i]);
        }

        _stages[Stages - 1].Leave(held);
        _left[e] = _simulation.Now;
    }
}
