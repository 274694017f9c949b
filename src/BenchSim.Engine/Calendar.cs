namespace BenchSim.Engine;

/// <summary>
/// What is due when: a heap with four children a node, the earliest on top. Keys are (time, rank), where rank is order first and then the
/// running number of the entry, so no two keys are equal and the way out is one and only one. A structure, not a class, so that each turn
/// finds it a step sooner: it stands in one field of the simulation and is never copied.
/// </summary>
internal struct Calendar()
{
    private const int Children = 4;
    private Entry[] _entries = new Entry[64];
    private int _count;

    // A popped top leaves a hole: most processes ask for their next moment at once, and the new entry sinks from the hole.
    private bool _hole;

    public readonly bool IsEmpty => _count == (_hole ? 1 : 0);

    public readonly int Count => _hole ? _count - 1 : _count;

    /// <summary>The earliest entry. The calendar must not be empty.</summary>
    public ref readonly Entry Top
    {
        get
        {
            if (_hole)
            {
                FillHole();
            }

            return ref _entries[0];
        }
    }

    /// <summary>
    /// Whether an entry is due now and ahead of a rank. Looks past the hole and leaves it open: the process that goes on instead will mostly
    /// fill it. Nothing in the calendar lies before now.
    /// </summary>
    public readonly bool HasBefore(double now, long rank)
    {
        if (!_hole)
        {
            return _count > 0 && _entries[0].IsDueBefore(now, rank);
        }

        var end = Math.Min(Children + 1, _count);
        for (var i = 1; i < end; i++)
        {
            if (_entries[i].IsDueBefore(now, rank))
            {
                return true;
            }
        }

        return false;
    }

    public void Push(double time, long rank, int slot)
    {
        var moment = Entry.MomentOf(time);
        if (_hole)
        {
            _hole = false;
            Sink(moment, rank, slot);
            return;
        }

        if (_count == _entries.Length)
        {
            Array.Resize(ref _entries, 2 * _count);
        }

        Rise(_count++, moment, rank, slot);
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
        ref readonly var last = ref _entries[--_count];
        if (_count > 0)
        {
            Sink(last.Moment, last.Rank, last.Slot);
        }
    }

    private void Rise(int at, long moment, long rank, int slot)
    {
        var entries = _entries;
        while (at > 0)
        {
            var parent = (at - 1) / Children;
            ref readonly var above = ref entries[parent];
            if (!above.IsAfter(moment, rank))
            {
                break;
            }

            entries[at].Set(above.Moment, above.Rank, above.Slot);
            at = parent;
        }

        entries[at].Set(moment, rank, slot);
    }

    private void Sink(long moment, long rank, int slot)
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

            var least = Least(entries, child);
            ref readonly var below = ref entries[least];
            if (below.IsAfter(moment, rank))
            {
                break;
            }

            entries[at].Set(below.Moment, below.Rank, below.Slot);
            at = least;
        }

        entries[at].Set(moment, rank, slot);
    }

    // Which of four comes first is anybody's guess, and a wrong guess of the processor costs more than the comparison: two pairs, then the two
    // winners, without a branch.
    private static int Least(ReadOnlySpan<Entry> entries, int child)
    {
        if (child + Children <= entries.Length)
        {
            var left = child + (entries[child].IsAfter(in entries[child + 1]) ? 1 : 0);
            var right = child + 2 + (entries[child + 2].IsAfter(in entries[child + 3]) ? 1 : 0);
            return entries[left].IsAfter(in entries[right]) ? right : left;
        }

        var least = child;
        for (child++; child < entries.Length; child++)
        {
            if (entries[least].IsAfter(in entries[child]))
            {
                least = child;
            }
        }

        return least;
    }

    /// <summary>
    /// One entry: the process in a slot is due at a time. It is written and moved field by field: read whole while its fields are still on their
    /// way to memory, it would hold the processor up.
    /// </summary>
    public struct Entry
    {
        public long Moment;
        public long Rank;
        public int Slot;

        public readonly double Time => BitConverter.Int64BitsToDouble(Moment);

        // Times are never below 0, and the bits of such numbers order as the numbers do; adding 0 takes the sign off a zero.
        public static long MomentOf(double time) => BitConverter.DoubleToInt64Bits(time + 0.0);

        public void Set(long moment, long rank, int slot)
        {
            Moment = moment;
            Rank = rank;
            Slot = slot;
        }

        public readonly bool IsDueBefore(double now, long rank) => Time <= now && Rank < rank;

        public readonly bool IsAfter(ref readonly Entry other) => IsAfter(other.Moment, other.Rank);

        // Both sides of the "or" are always worked out: no branch.
        public readonly bool IsAfter(long moment, long rank) => (moment < Moment) | ((moment == Moment) & (rank < Rank));
    }
}
