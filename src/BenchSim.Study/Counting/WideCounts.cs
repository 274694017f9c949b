using System.Numerics;

namespace BenchSim.Study.Counting;

/// <summary>
/// How often each whole number was seen in each of many cells, where the numbers may spread widely. A cell that only ever sees 0 takes no
/// room.
/// </summary>
public sealed class WideCounts(int cells)
{
    private readonly WideCount?[] _cells = new WideCount?[cells];

    /// <summary>Number of cells.</summary>
    public int Cells => _cells.Length;

    /// <summary>Counts one season of one cell.</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="value">0 or more.</param>
    public void Add(int cell, long value)
    {
        if (value != 0)
        {
            (_cells[cell] ??= new WideCount()).Add(value, 1);
        }
    }

    /// <summary>Adds another thread's counts.</summary>
    public void Merge(WideCounts other)
    {
        for (var cell = 0; cell < _cells.Length; cell++)
        {
            if (other._cells[cell] is { } count)
            {
                (_cells[cell] ??= new WideCount()).Merge(count);
            }
        }
    }

    /// <summary>Reads a cell: the values seen besides 0, or their classes.</summary>
    public void Read(int cell, Seen seen)
    {
        seen.Clear();
        _cells[cell]?.Read(seen);
    }

    /// <summary>Fills an empty cell.</summary>
    /// <returns>False when what was seen cannot be so.</returns>
    internal bool TryFill(int cell, Seen seen) => (_cells[cell] = new WideCount()).TryFill(seen);
}

/// <summary>
/// One quantity of wide range (tray-days, late plant-days, minutes of work), zeros left out. Sums, smallest and largest are always exact.
/// Quantiles are exact up to <see cref="MostValues"/> different values, so for up to as many seasons; beyond that values are counted in
/// classes no wider than 1/256 of their lower end and a quantile is the upper end of its class: never too low, too high by less than 0.4 %.
/// Which of the two holds depends on the values alone, not on the order or the threads in which they came.
/// </summary>
internal sealed class WideCount
{
    /// <summary>Different values that are counted one by one.</summary>
    public const int MostValues = 1024;

    private const int ClassBits = 8;
    private const int ClassesAnOctave = 1 << ClassBits;
    private const int FirstCapacity = 8;

    // Open addressing, linear probing, at most half full. A count of 0 marks a free slot.
    private (long Value, int Seasons)[] _slots = new (long, int)[FirstCapacity];
    private int _different;

    // Once there are classes the values themselves are gone, and so what they add up to is kept.
    private ExactCounts? _classes;
    private Moments _moments;

    /// <summary>Counts seasons.</summary>
    /// <param name="value">1 or more.</param>
    /// <param name="seasons">Seasons that had it.</param>
    public void Add(long value, int seasons)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value);
        if (_classes is not null)
        {
            AddToClass(value, seasons);
            return;
        }

        var slot = Slot(value);
        if (_slots[slot].Seasons > 0)
        {
            _slots[slot].Seasons += seasons;
        }
        else if (_different == MostValues)
        {
            ToClasses();
            AddToClass(value, seasons);
        }
        else
        {
            _slots[slot] = (value, seasons);
            if (++_different * 2 > _slots.Length)
            {
                Double();
            }
        }
    }

    /// <summary>Adds another count.</summary>
    public void Merge(WideCount other)
    {
        if (other._classes is null)
        {
            foreach ((var value, var seasons) in other._slots)
            {
                if (seasons > 0)
                {
                    Add(value, seasons);
                }
            }

            return;
        }

        ToClasses();
        _classes!.Merge(other._classes);
        _moments = _moments.Plus(other._moments);
    }

    /// <summary>The values seen, or where there are too many their classes.</summary>
    public void Read(Seen seen)
    {
        if (_classes is not null)
        {
            _classes.Read(0, seen);
            seen.SetClassed(_moments);
            return;
        }

        foreach ((var value, var seasons) in _slots)
        {
            if (seasons > 0)
            {
                seen.Add(value, seasons);
            }
        }

        seen.Sort();
    }

    /// <summary>Fills an empty count. A value or class of 0 is left out.</summary>
    /// <returns>False when there are more values than are counted one by one, or classes that cannot belong to the moments.</returns>
    public bool TryFill(Seen seen)
    {
        if (!seen.IsClassed)
        {
            foreach ((var value, var seasons) in seen.Values)
            {
                if (value > 0)
                {
                    Add(value, seasons);
                }
            }

            return _classes is null;
        }

        _classes = new ExactCounts(1);
        _classes.Fill(0, seen);
        var moments = seen.Moments();
        var hasZeros = seen.Values.Count > 0 && seen.Values[0].Value == 0;
        _classes.Read(0, seen);
        if (!IsPossible(moments, seen, hasZeros))
        {
            return false;
        }

        // The smallest value besides 0 is not told apart from its class where some season had 0; nothing asks for it then.
        _moments = moments with { Seasons = seen.Seasons, Least = hasZeros ? 1 : moments.Least };
        return true;
    }

    /// <summary>The class of a value: itself below 512, then 256 classes an octave.</summary>
    internal static int ClassOf(long value)
    {
        var shift = Math.Max(0, BitOperations.Log2((ulong)value) - ClassBits);
        return (shift * ClassesAnOctave) + (int)(value >> shift);
    }

    /// <summary>The largest value of a class.</summary>
    internal static long UpperEnd(int index)
    {
        var shift = Math.Max(0, (index / ClassesAnOctave) - 1);
        return ((index - (shift * ClassesAnOctave) + 1L) << shift) - 1;
    }

    private static bool IsPossible(Moments moments, Seen classes, bool hasZeros)
    {
        if (classes.Values.Count == 0 || ClassOf(moments.Most) != classes.Values[^1].Value)
        {
            return false;
        }

        if (hasZeros ? moments.Least != 0 : moments.Least == 0 || ClassOf(moments.Least) != classes.Values[0].Value)
        {
            return false;
        }

        UInt128 n = (uint)moments.Seasons;
        UInt128 most = (ulong)moments.Most;
        return moments.Sum >= most
            && moments.Sum <= n * most
            && moments.Squares <= n * most * most
            && n * moments.Squares >= moments.Sum * moments.Sum;
    }

    private void AddToClass(long value, int seasons)
    {
        _classes!.Add(0, ClassOf(value), seasons);
        _moments = _moments.Plus(Moments.Of(value, seasons));
    }

    private int Slot(long value)
    {
        var mask = _slots.Length - 1;

        // Fibonacci hashing: the high bits of the product are well mixed.
        var slot = (int)(((ulong)value * 0x9E3779B97F4A7C15) >> 32) & mask;
        while (_slots[slot].Seasons != 0 && _slots[slot].Value != value)
        {
            slot = (slot + 1) & mask;
        }

        return slot;
    }

    private void Double()
    {
        var old = _slots;
        _slots = new (long, int)[old.Length * 2];
        foreach (var each in old)
        {
            if (each.Seasons > 0)
            {
                _slots[Slot(each.Value)] = each;
            }
        }
    }

    private void ToClasses()
    {
        if (_classes is not null)
        {
            return;
        }

        _classes = new ExactCounts(1);
        foreach ((var value, var seasons) in _slots)
        {
            if (seasons > 0)
            {
                AddToClass(value, seasons);
            }
        }

        _slots = [];
    }
}
