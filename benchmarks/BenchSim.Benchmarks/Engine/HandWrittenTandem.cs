namespace BenchSim.Benchmarks.Engine;

/// <summary>The tandem model as a loop over events, with arrays for all state: what the engine is measured against.</summary>
internal sealed class HandWrittenTandem
{
    private readonly int _entities;
    private readonly int[] _capacities;
    private readonly int[] _units;
    private readonly double[][] _days;
    private readonly EventHeap _heap = new();
    private readonly Queue<int>[] _lines;
    private readonly int[] _held;
    private readonly int[] _stage;
    private int _offset;
    private double _now;

    public HandWrittenTandem(int entities, int[] capacities, int[] units, double[][] days)
    {
        _entities = entities;
        _capacities = capacities;
        _units = units;
        _days = days;
        _lines = Array.ConvertAll(capacities, _ => new Queue<int>());
        _held = new int[capacities.Length];
        _stage = new int[entities];
    }

    public double Play(int replication)
    {
        _offset = replication * _entities;
        double sum = 0;
        for (var e = 0; e < _entities; e++)
        {
            _stage[e] = -1;
            _heap.Push(0.8 * e, e);
        }

        while (!_heap.IsEmpty)
        {
            (_now, var e) = _heap.Pop();
            var next = _stage[e] + 1;
            if (next < _capacities.Length)
            {
                _lines[next].Enqueue(e);
                Serve(next);
            }
            else
            {
                sum += _now - (0.8 * e);
                Free(next - 1, e);
            }
        }

        return sum;
    }

    private void Serve(int stage)
    {
        var line = _lines[stage];
        while (line.TryPeek(out var e))
        {
            var wanted = Wanted(e, stage);
            if (_held[stage] + wanted > _capacities[stage])
            {
                return;
            }

            line.Dequeue();
            _held[stage] += wanted;
            _stage[e] = stage;
            _heap.Push(_now + _days[stage][_offset + e], e);
            if (stage > 0)
            {
                Free(stage - 1, e);
            }
        }
    }

    private void Free(int stage, int e)
    {
        _held[stage] -= Wanted(e, stage);
        Serve(stage);
    }

    private int Wanted(int e, int stage) => Math.Min(_units[_offset + e], _capacities[stage]);
}
