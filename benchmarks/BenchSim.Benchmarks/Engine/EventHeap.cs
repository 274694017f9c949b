namespace BenchSim.Benchmarks.Engine;

/// <summary>
/// The calendar of the hand-written loops: a heap with four children a node, keys time and running number, one event a node, written out
/// for speed. It stands for what a programmer would write who has no engine.
/// </summary>
internal sealed class EventHeap
{
    private Entry[] _entries = new Entry[64];
    private int _count;
    private long _sequence;

    public bool IsEmpty => _count == 0;

    public void Clear() => _count = 0;

    public void Push(double time, int what)
    {
        if (_count == _entries.Length)
        {
            Array.Resize(ref _entries, 2 * _count);
        }

        var entry = new Entry(time, _sequence++, what);
        var at = _count++;
        var entries = _entries;
        while (at > 0)
        {
            var parent = (at - 1) >> 2;
            if (!entry.Precedes(in entries[parent]))
            {
                break;
            }

            entries[at] = entries[parent];
            at = parent;
        }

        entries[at] = entry;
    }

    public (double Time, int What) Pop()
    {
        var top = _entries[0];
        var last = _entries[--_count];
        var entries = _entries.AsSpan(0, _count);
        var at = 0;
        while (true)
        {
            var child = (at << 2) + 1;
            if (child >= entries.Length)
            {
                break;
            }

            var end = Math.Min(child + 4, entries.Length);
            var least = child;
            for (child++; child < end; child++)
            {
                if (entries[child].Precedes(in entries[least]))
                {
                    least = child;
                }
            }

            if (!entries[least].Precedes(in last))
            {
                break;
            }

            entries[at] = entries[least];
            at = least;
        }

        if (_count > 0)
        {
            entries[at] = last;
        }

        return (top.Time, top.What);
    }

    private readonly struct Entry(double time, long number, int what)
    {
        public readonly double Time = time;
        public readonly long Number = number;
        public readonly int What = what;

        public bool Precedes(in Entry other) => Time < other.Time || (Time == other.Time && Number < other.Number);
    }
}
