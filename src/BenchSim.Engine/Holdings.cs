namespace BenchSim.Engine;

/// <summary>
/// How many places of which kinds one process holds. Most hold one kind at a time, which stands here; only further kinds need an array. A
/// structure: it stands in one field of the story and is never copied.
/// </summary>
internal struct Holdings()
{
    // A count of 0: nothing is held here. Its kind never stands among the others.
    private Holding _first;
    private Holding[] _others = [];
    private int _otherCount;

    public readonly bool IsEmpty => _first.Count == 0 && _otherCount == 0;

    /// <summary>All kinds held, each once.</summary>
    public readonly IEnumerable<Holding> All()
    {
        var others = _others.Take(_otherCount);
        return _first.Count > 0 ? others.Prepend(_first) : others;
    }

    public readonly int Of(int placesIndex)
    {
        foreach (var holding in All())
        {
            if (holding.PlacesIndex == placesIndex)
            {
                return holding.Count;
            }
        }

        return 0;
    }

    public void Add(int placesIndex, int count)
    {
        if (IsEmpty)
        {
            _first = new Holding { PlacesIndex = placesIndex, Count = count };
        }
        else
        {
            AddToSome(placesIndex, count);
        }
    }

    /// <summary>Takes places off; false, and no change, if fewer are held.</summary>
    public bool Remove(int placesIndex, int count)
    {
        if (_first.PlacesIndex != placesIndex)
        {
            return RemoveFromOthers(placesIndex, count);
        }

        if (_first.Count < count)
        {
            return false;
        }

        _first.Count -= count;
        return true;
    }

    public void Clear()
    {
        _first.Count = 0;
        _otherCount = 0;
    }

    private void AddToSome(int placesIndex, int count)
    {
        if (_first.PlacesIndex == placesIndex)
        {
            _first.Count += count;
            return;
        }

        var at = IndexOf(placesIndex);
        if (at >= 0)
        {
            _others[at].Count += count;
            return;
        }

        var holding = new Holding { PlacesIndex = placesIndex, Count = count };
        if (_first.Count == 0)
        {
            _first = holding;
            return;
        }

        if (_otherCount == _others.Length)
        {
            Array.Resize(ref _others, Math.Max(4, 2 * _otherCount));
        }

        _others[_otherCount++] = holding;
    }

    private bool RemoveFromOthers(int placesIndex, int count)
    {
        var at = IndexOf(placesIndex);
        if (at < 0 || _others[at].Count < count)
        {
            return false;
        }

        _others[at].Count -= count;
        if (_others[at].Count == 0)
        {
            _others[at] = _others[--_otherCount];
        }

        return true;
    }

    private readonly int IndexOf(int placesIndex)
    {
        for (var i = 0; i < _otherCount; i++)
        {
            if (_others[i].PlacesIndex == placesIndex)
            {
                return i;
            }
        }

        return -1;
    }

    public struct Holding
    {
        public int PlacesIndex;
        public int Count;
    }
}
