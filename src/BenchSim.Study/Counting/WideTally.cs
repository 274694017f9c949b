using System.Numerics;

namespace BenchSim.Study.Counting;

/// <summary>
/// A tally of quantities with a wide range (tray-days, late plant-days, minutes of work). Sums, smallest and largest are always exact. Quantiles
/// are exact up to <see cref="MostValues"/> different values besides 0, so for up to as many seasons; beyond that values are counted in classes no wider than
/// 1/256 of their lower end and a quantile is the upper end of its class: never too low, too high by less than 0.4 %.
/// Which of the two holds depends on the values alone, not on the order or the threads in which they came.
/// </summary>
internal sealed class WideTally : Tally
{
    /// <summary>Different values that are counted one by one.</summary>
    public const int MostValues = 1024;

    private const int ClassBits = 8;
    private const int ClassesAnOctave = 1 << ClassBits;
    private const int FirstCapacity = 8;

    // Open addressing, linear probing, at most half full. A count of 0 marks a free slot.
    private long[] _values = new long[FirstCapacity];
    private int[] _counts = new int[FirstCapacity];
    private int _different;
    private ExactTally? _classes;

    private int _seasons;
    private int _zeros;
    private UInt128 _sum;
    private UInt128 _squares;
    private long _least = long.MaxValue;
    private long _most;

    /// <summary>Counts one season.</summary>
    /// <param name="value">0 or more.</param>
    public void Add(long value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        _seasons++;
        if (value == 0)
        {
            _zeros++;
            return;
        }

        _sum += (ulong)value;
        _squares += (UInt128)(ulong)value * (ulong)value;
        _least = Math.Min(_least, value);
        _most = Math.Max(_most, value);
        Count(value, 1);
    }

    /// <summary>Adds another tally.</summary>
    public void Merge(WideTally other)
    {
        _seasons += other._seasons;
        _zeros += other._zeros;
        _sum += other._sum;
        _squares += other._squares;
        _least = Math.Min(_least, other._least);
        _most = Math.Max(_most, other._most);
        if (other._classes is not null)
        {
            if (_classes is null)
            {
                ToClasses();
            }

            _classes!.Merge(other._classes);
            return;
        }

        for (var i = 0; i < other._counts.Length; i++)
        {
            if (other._counts[i] > 0)
            {
                Count(other._values[i], other._counts[i]);
            }
        }
    }

    /// <inheritdoc/>
    public override Moments Moments() => new(_seasons, _sum, _squares, _zeros > 0 || _seasons == 0 ? 0 : _least, _most);

    /// <summary>The values seen, or where there are too many their classes, in rising order, with the seasons of each.</summary>
    public (long Value, int Seasons)[] Counted(out bool isClassed)
    {
        isClassed = _classes is not null;
        var seen = _classes is not null
            ? _classes.Counted()
            : [.. _values.Zip(_counts).Where(each => each.Second > 0).OrderBy(each => each.First)];
        return _zeros > 0 ? [(0, _zeros), .. seen] : seen;
    }

    /// <summary>Puts values into an empty tally.</summary>
    /// <param name="counted">Different values in rising order, with the seasons of each.</param>
    /// <returns>False when there are too many to be counted one by one.</returns>
    public bool TryFill((long Value, int Seasons)[] counted)
    {
        foreach ((var value, var seasons) in counted)
        {
            _seasons += seasons;
            if (value == 0)
            {
                _zeros = seasons;
                continue;
            }

            _sum += (UInt128)(ulong)value * (uint)seasons;
            _squares += (UInt128)(ulong)value * (ulong)value * (uint)seasons;
            _least = Math.Min(_least, value);
            _most = value;
            Count(value, seasons);
        }

        return _classes is null;
    }

    /// <summary>Puts classes into an empty tally.</summary>
    /// <param name="counted">Classes in rising order, with the seasons of each; 0 for the value 0.</param>
    /// <param name="sum">Sum of the values.</param>
    /// <param name="squares">Sum of their squares.</param>
    /// <param name="least">Smallest value.</param>
    /// <param name="most">Largest value.</param>
    /// <returns>False when these cannot belong together.</returns>
    public bool TryFillClasses((long Value, int Seasons)[] counted, UInt128 sum, UInt128 squares, long least, long most)
    {
        _classes = new ExactTally();
        foreach ((var index, var seasons) in counted)
        {
            _seasons += seasons;
            if (index == 0)
            {
                _zeros = seasons;
            }
            else
            {
                _classes.Add((int)index, seasons);
            }
        }

        var lowest = counted.Select(each => each.Value).FirstOrDefault(index => index > 0);
        if (lowest == 0 || ClassOf(most) != counted[^1].Value || (_zeros > 0 ? least != 0 : least == 0 || ClassOf(least) != lowest))
        {
            return false;
        }

        UInt128 n = (uint)_seasons;
        if (sum < (ulong)most || sum > n * (ulong)most || squares > n * (ulong)most * (ulong)most || n * squares < sum * sum)
        {
            return false;
        }

        (_sum, _squares, _most) = (sum, squares, most);

        // The smallest value besides 0 is not told apart from its class where some season had 0; nothing asks for it then.
        _least = _zeros > 0 ? 1 : least;
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

    /// <inheritdoc/>
    protected override long SmallestNotExceededBy(long seasons)
    {
        if (_zeros >= seasons)
        {
            return 0;
        }

        seasons -= _zeros;
        if (_classes is not null)
        {
            return Math.Min(_most, UpperEnd(_classes.ValueNotExceededBy(seasons)));
        }

        var values = new long[_different];
        var counts = new int[_different];
        var filled = 0;
        for (var i = 0; i < _counts.Length; i++)
        {
            if (_counts[i] == 0)
            {
                continue;
            }

            values[filled] = _values[i];
            counts[filled++] = _counts[i];
        }

        Array.Sort(values, counts);
        var at = 0;
        for (long sum = counts[0]; sum < seasons; sum += counts[at])
        {
            at++;
        }

        return values[at];
    }

    private void Count(long value, int seasons)
    {
        if (_classes is not null)
        {
            _classes.Add(ClassOf(value), seasons);
            return;
        }

        var slot = Slot(value);
        if (_counts[slot] == 0)
        {
            if (_different == MostValues)
            {
                ToClasses();
                _classes!.Add(ClassOf(value), seasons);
                return;
            }

            if (++_different * 2 > _counts.Length)
            {
                Double();
                slot = Slot(value);
            }

            _values[slot] = value;
        }

        _counts[slot] += seasons;
    }

    private int Slot(long value)
    {
        var mask = _counts.Length - 1;

        // Fibonacci hashing: the high bits of the product are well mixed.
        var slot = (int)(((ulong)value * 0x9E3779B97F4A7C15) >> 32) & mask;
        while (_counts[slot] != 0 && _values[slot] != value)
        {
            slot = (slot + 1) & mask;
        }

        return slot;
    }

    private void Double()
    {
        var values = _values;
        var counts = _counts;
        _values = new long[values.Length * 2];
        _counts = new int[counts.Length * 2];
        for (var i = 0; i < counts.Length; i++)
        {
            if (counts[i] == 0)
            {
                continue;
            }

            var slot = Slot(values[i]);
            _values[slot] = values[i];
            _counts[slot] = counts[i];
        }
    }

    private void ToClasses()
    {
        ExactTally classes = new();
        for (var i = 0; i < _counts.Length; i++)
        {
            if (_counts[i] > 0)
            {
                classes.Add(ClassOf(_values[i]), _counts[i]);
            }
        }

        _classes = classes;
        _values = [];
        _counts = [];
    }
}
