namespace BenchSim.Engine;

/// <summary>
/// What is due when: a heap with four children a node, the earliest on top. Keys are (time, rank), where rank is order first and then the
/// running number of the entry, so no two keys are equal and the way out is one and only one.
/// </summary>
internal sealed class Calendar
{
    private const int Children = 4;
    private Entry[] _entries = new Entry[64];
    private int _count;

    // A popped top leaves a hole: most processes ask for their next moment at once, and the new entry sinks from the hole.
    private bool _hole;

    public bool IsEmpty => _count == (_hole ? 1 : 0);

    public int Count => _hole ? _count - 1 : _count;

    /// <summary>The earliest entry. The calendar must not be empty.</summary>
    public ref readonly Entry Top
    {
        get
        {
            if (_hole) FillHole();
            return ref _entries[0];
        }
    }

    /// <summary>
    /// Whether an entry is due now and ahead of a rank. Looks past the hole and leaves it open: the process that goes on instead will mostly
    /// fill it. Nothing in the calendar lies before now.
    /// </summary>
    public bool HasBefore(double now, long rank)
    {
        if (!_hole) return _count > 0 && _entries[0].IsDueBefore(now, rank);
        var end = Math.Min(Children + 1, _count);
        for (var i = 1; i < end; i++)
        {
            if (_entries[i].IsDueBefore(now, rank)) return true;
        }

        return false;
    }

    public void Push(double time, long rank, int slot)
    {
        var entry = new Entry(time, rank, slot);
        if (_hole)
        {
            _hole = false;
            Sink(entry);
            return;
        }

        if (_count == _entries.Length) Array.Resize(ref _entries, 2 * _count);
        Rise(_count++, entry);
    }

    /// <summary>Takes the top away. <see cref="Top"/> must have been read since the last change.</summary>
    public void Pop() => _hole = true;

    public void Clear()
    {
        _count = 0;
        _hole = false;
    }

    private void FillHole()
    {
        _hole = false;
        var last = _entries[--_count];
        if (_count > 0) Sink(last);
    }

    private void Rise(int at, Entry entry)
    {
        var entries = _entries;
        while (at > 0)
        {
            var parent = (at - 1) / Children;
            if (!entry.Precedes(in entries[parent])) break;
            entries[at] = entries[parent];
            at = parent;
        }

        entries[at] = entry;
    }

    private void Sink(Entry entry)
    {
        var entries = _entries.AsSpan(0, _count);
        var at = 0;
        while (true)
        {
            var child = (at * Children) + 1;
            if (child >= entries.Length) break;
            var least = Least(entries, child);
            if (!entries[least].Precedes(in entry)) break;
            entries[at] = entries[least];
            at = least;
        }

        entries[at] = entry;
    }

    // Which of four comes first is anybody's guess, and a wrong guess of the processor costs more than the comparison: two pairs, then the two
    // winners, without a branch.
    private static int Least(ReadOnlySpan<Entry> entries, int child)
    {
        if (child + Children <= entries.Length)
        {
            var left = child + (entries[child + 1].Precedes(in entries[child]) ? 1 : 0);
            var right = child + 2 + (entries[child + 3].Precedes(in entries[child + 2]) ? 1 : 0);
            return entries[right].Precedes(in entries[left]) ? right : left;
        }

        var least = child;
        for (child++; child < entries.Length; child++)
        {
            if (entries[child].Precedes(in entries[least])) least = child;
        }

        return least;
    }

    /// <summary>One entry: the process in a slot is due at a time.</summary>
    public readonly struct Entry(double time, long rank, int slot)
    {
        // Times are never below 0, and the bits of such numbers order as the numbers do; adding 0 takes the sign off a zero.
        private readonly long _time = BitConverter.DoubleToInt64Bits(time + 0.0);
        public readonly long Rank = rank;
        public readonly int Slot = slot;

        public double Time => BitConverter.Int64BitsToDouble(_time);

        public bool IsDueBefore(double now, long rank) => Time <= now && Rank < rank;

        // Both sides of the "or" are always worked out: no branch.
        public bool Precedes(in Entry other) => (_time < other._time) | ((_time == other._time) & (Rank < other.Rank));
    }
}
