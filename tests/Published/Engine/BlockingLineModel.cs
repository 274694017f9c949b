using BenchSim.Engine;

namespace Published.Engine;

/// <summary>
/// Stations in series with blocking after service: who is done at a station and finds no place before the next keeps its slot until there is
/// one. A station has slots, and in front of them a buffer; both together are its area. Before the first station there is either always
/// somebody, or people come at random and are lost when its area is full.
/// </summary>
internal sealed class BlockingLineModel
{
    private readonly Simulation _simulation = new();
    private readonly Places[] _areas;
    private readonly Places[] _slots;
    private readonly Level[] _blocked;
    private readonly Level[] _full;
    private readonly Level _inSystem = new(0, 0);
    private readonly double[] _rates;
    private readonly double _arrivalRate;
    private Draws _draws = null!;
    private long _came;
    private long _lost;
    private long _left;

    /// <summary>A line.</summary>
    /// <param name="rates">Service rate of a slot, by station.</param>
    /// <param name="slots">Slots, by station.</param>
    /// <param name="buffers">Places in front, by station; those of the first count only when people come at random.</param>
    /// <param name="arrivalRate">Rate at which people come; 0 when there is always somebody.</param>
    public BlockingLineModel(double[] rates, int[] slots, int[] buffers, double arrivalRate)
    {
        _rates = rates;
        _arrivalRate = arrivalRate;
        _slots = slots.Select((count, i) => new Places(_simulation, $"slots {i + 1}", count)).ToArray();
        _areas = slots.Select((count, i) => new Places(_simulation, $"area {i + 1}", count + buffers[i])).ToArray();
        _blocked = Array.ConvertAll(slots, _ => new Level(0, 0));
        _full = Array.ConvertAll(slots, _ => new Level(0, 0));
        foreach (var places in _slots)
        {
            places.Watch();
        }
    }

    public LineFigures Play(Draws draws, double warmUp, double length)
    {
        _draws = draws;
        _simulation.Reset();
        if (_arrivalRate > 0)
        {
            _simulation.Start(Send(), "door");
        }
        else
        {
            for (var i = 0; i < _slots[0].Capacity; i++)
            {
                _simulation.Start(Pass(), "unit");
            }
        }

        foreach (var level in _blocked.Concat(_full))
        {
            Clear(level);
        }

        Clear(_inSystem);
        _simulation.Run(warmUp);
        foreach (var places in _slots)
        {
            places.Watch();
        }

        foreach (var level in _blocked.Concat(_full).Append(_inSystem))
        {
            level.Restart(warmUp);
        }

        _came = _lost = _left = 0;
        var end = warmUp + length;
        _simulation.Run(end);
        return new LineFigures(
            _left / length,
            _inSystem.Mean(end),
            Array.ConvertAll(_blocked, level => level.Mean(end)),
            Array.ConvertAll(_slots, places => places.HeldLevel!.Mean(end)),
            Array.ConvertAll(_full, level => level.Mean(end)),
            _came > 0 ? (double)_lost / _came : 0
        );
    }

    private static void Clear(Level level)
    {
        level.Restart(0);
        level.Set(0, 0);
    }

    private async Process Send()
    {
        while (true)
        {
            await _simulation.Delay(_draws.Exponential(1 / _arrivalRate));
            _simulation.Start(Arrive(), "unit");
        }
    }

    private async Process Arrive()
    {
        _came++;
        if (_areas[0].TakeWhatFits(1) == 0)
        {
            _lost++;
            return;
        }

        await WorkThrough();
    }

    private async Process Pass()
    {
        await _areas[0].Take(1);
        await WorkThrough();
    }

    private async Process WorkThrough()
    {
        Change(_inSystem, 1);
        for (var i = 0; i < _slots.Length; i++)
        {
            await _slots[i].Take(1);
            NoteFull(i);
            await _simulation.Delay(_draws.Exponential(1 / _rates[i]));
            if (i + 1 < _slots.Length)
            {
                Change(_blocked[i], 1);
                await _areas[i + 1].Take(1);
                Change(_blocked[i], -1);
            }

            LeaveStation(i);
        }

        Change(_inSystem, -1);
        _left++;
    }

    private void LeaveStation(int i)
    {
        _slots[i].Leave(1);
        _areas[i].Leave(1);
        NoteFull(i);
        if (i == 0 && _arrivalRate == 0)
        {
            _simulation.Start(Pass(), "unit");
        }
    }

    private void NoteFull(int i) => _full[i].Set(_simulation.Now, _slots[i].Free == 0 ? 1 : 0);

    private void Change(Level level, int by) => level.Set(_simulation.Now, level.Value + by);
}
