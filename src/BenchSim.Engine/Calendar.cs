namespace BenchSim.Engine;

/// <summary>
/// What is bound to happen, and when: a heap with four children a node, the earliest on top. Keys are time, then kind, then the running
/// number of the entry, so that no two are equal and the way out is one and only one.
/// </summary>
internal sealed class Calendar
{
    private const int Children = 4;
    private Entry[] _entries = new Entry[64];
    private int _count;
    private long _sequence;

    public bool IsEmpty => _count == 0;

    /// <summary>Time of the earliest entry; infinite when there is none.</summary>
    public double NextTime => _count == 0 ? double.PositiveInfinity : _entries[0].Time;

    public void Clear()
    {
        _count = 0;
        _sequence = 0;
    }

    public void Add(double time, BoundEvent happening)
    {
        if (_count == _entries.Length)
        {
            Array.Resize(ref _entries, 2 * _count);
        }

        // The kind in the upper 16 bits, the running number in the lower 48.
        Rise(_count++, new Entry(time, ((long)happening.Kind << 48) | _sequence++, happening.Subject));
    }

    /// <summary>Takes the earliest entry. The calendar must not be empty.</summary>
    public BoundEvent Take()
    {
        var top = _entries[0];
        var last = _entries[--_count];
        if (_count > 0)
        {
            Sink(last);
        }

        return new BoundEvent((int)(top.Rank >> 48), top.Subject);
    }

    private void Rise(int at, Entry entry)
    {
        while (at > 0)
        {
            var parent = (at - 1) / Children;
            if (!entry.IsBefore(_entries[parent]))
            {
                break;
            }

            _entries[at] = _entries[parent];
            at = parent;
        }

        _entries[at] = entry;
    }

    private void Sink(Entry entry)
    {
        var entries = _entries.AsSpan(0, _count);
        var at = 0;
        while (true)
        {
            var child = (at * Children) + 1;
            if (child >= entries.Length)
            {
                break;
            }

            var least = child;
            for (var other = child + 1; other < Math.Min(child + Children, entries.Length); other++)
            {
                least = entries[other].IsBefore(entries[least]) ? other : least;
            }

            if (!entries[least].IsBefore(entry))
            {
                break;
            }

            entries[at] = entries[least];
            at = least;
        }

        entries[at] = entry;
    }

    private readonly record struct Entry(double Time, long Rank, int Subject)
    {
        public bool IsBefore(in Entry other) => Time < other.Time || (Time == other.Time && Rank < other.Rank);
    }
}
