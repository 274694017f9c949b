using System.Runtime.CompilerServices;

namespace BenchSim.Study.Counting;

/// <summary>
/// How often each whole number was seen in each of many cells (a batch, a day of a space), where the numbers of a cell lie close together:
/// places, days, trays, plants. Everything it says is exact; its size depends on the spread of the values, not on the number of seasons.
/// All cells share one array, each with its own window of values in it, and a 0 takes none: zeros are what is left of the seasons. So a
/// season touches one count a cell at most.
/// </summary>
public sealed class ExactCounts(int cells)
{
    private const int FirstWindow = 8;

    private readonly Window[] _windows = new Window[cells];
    private int[] _counts = new int[cells * FirstWindow];
    private int _used;

    /// <summary>Number of cells.</summary>
    public int Cells => _windows.Length;

    /// <summary>Counts one season of one cell.</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="value">0 or more.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(int cell, int value)
    {
        if (value == 0)
        {
            return;
        }

        ref var window = ref _windows[cell];
        var at = value - window.Low;
        if ((uint)at < (uint)window.Length)
        {
            _counts[window.Start + at]++;
        }
        else
        {
            Add(cell, value, 1);
        }
    }

    /// <summary>Counts one season of a row of cells.</summary>
    /// <param name="first">First cell.</param>
    /// <param name="values">0 or more each.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(int first, ReadOnlySpan<int> values)
    {
        var windows = _windows.AsSpan(first, values.Length);
        var counts = _counts;
        for (var cell = 0; cell < values.Length; cell++)
        {
            var value = values[cell];
            if (value == 0)
            {
                continue;
            }

            var window = windows[cell];
            var at = value - window.Low;
            if ((uint)at < (uint)window.Length)
            {
                counts[window.Start + at]++;
            }
            else
            {
                Add(first + cell, value, 1);
                counts = _counts;
            }
        }
    }

    /// <summary>Counts several seasons of one value.</summary>
    public void Add(int cell, int value, int seasons)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        if (value == 0)
        {
            return;
        }

        if ((uint)(value - _windows[cell].Low) >= (uint)_windows[cell].Length)
        {
            Widen(cell, value);
        }

        _counts[_windows[cell].Start + value - _windows[cell].Low] += seasons;
    }

    /// <summary>Adds another thread's counts.</summary>
    public void Merge(ExactCounts other)
    {
        for (var cell = 0; cell < _windows.Length; cell++)
        {
            var window = other._windows[cell];
            for (var at = 0; at < window.Length; at++)
            {
                var count = other._counts[window.Start + at];
                if (count > 0)
                {
                    Add(cell, window.Low + at, count);
                }
            }
        }
    }

    /// <summary>Reads a cell: the values seen besides 0.</summary>
    public void Read(int cell, Seen seen)
    {
        seen.Clear();
        var window = _windows[cell];
        for (var at = 0; at < window.Length; at++)
        {
            if (_counts[window.Start + at] is > 0 and var seasons)
            {
                seen.Add(window.Low + at, seasons);
            }
        }
    }

    /// <summary>Fills an empty cell.</summary>
    internal void Fill(int cell, Seen seen)
    {
        foreach ((var value, var seasons) in seen.Values)
        {
            Add(cell, (int)value, seasons);
        }
    }

    // A window that grows moves to the end of the array. As it at least doubles each time, what it leaves behind is never more than what is
    // in use.
    private void Widen(int cell, int value)
    {
        var old = _windows[cell];
        var first = old.Length == 0;
        long low = first ? value : Math.Min(value, old.Low);
        var end = first ? value + 1L : Math.Max(value + 1L, (long)old.Low + old.Length);
        var length = Math.Max(Math.Max(FirstWindow, end - low), 2L * old.Length);

        // The room gained lies on the side the values came from; for the first, on both.
        var spare = length - (end - low);
        if (first)
        {
            low -= spare / 2;
        }
        else if (value < old.Low)
        {
            low -= spare;
        }

        Window next = new(_used, (int)Math.Max(1, low), checked((int)length));
        _used = checked(_used + next.Length);
        if (_used > _counts.Length)
        {
            Array.Resize(ref _counts, (int)Math.Max(_used, Math.Min(2L * _counts.Length, Array.MaxLength)));
        }

        if (!first)
        {
            Array.Copy(_counts, old.Start, _counts, next.Start + old.Low - next.Low, old.Length);
        }

        _windows[cell] = next;
    }

    private readonly record struct Window(int Start, int Low, int Length);
}
