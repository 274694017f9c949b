namespace BenchSim.Engine;

/// <summary>
/// Processes that are due at this very instant with order 0, first come first. They carry the same running numbers as calendar entries, so
/// taking the lower number of the two gives the order that the calendar alone would give, without the cost of a heap. A
/// structure for the reason given at <see cref="Calendar"/>.
/// </summary>
internal struct ReadyLine()
{
    private (long Rank, int Slot)[] _ring = new (long, int)[64];
    private int _first;
    private int _count;

    public readonly bool IsEmpty => _count == 0;

    public readonly int Count => _count;

    public readonly long FirstRank => _ring[_first].Rank;

    public void Add(long rank, int slot)
    {
        if (_count == _ring.Length)
        {
            Grow();
        }

        _ring[(_first + _count) & (_ring.Length - 1)] = (rank, slot);
        _count++;
    }

    public int TakeFirst()
    {
        var slot = _ring[_first].Slot;
        _first = (_first + 1) & (_ring.Length - 1);
        _count--;
        return slot;
    }

    public void Clear() => _first = _count = 0;

    private void Grow()
    {
        var wider = new (long, int)[2 * _ring.Length];
        for (var i = 0; i < _count; i++)
        {
            wider[i] = _ring[(_first + i) & (_ring.Length - 1)];
        }

        _ring = wider;
        _first = 0;
    }
}
