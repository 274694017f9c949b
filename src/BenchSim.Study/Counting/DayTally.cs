using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using BenchSim.Study.Results;

namespace BenchSim.Study.Counting;

/// <summary>
/// A tally of a whole number for each day. All days share one array of counts, each with its own window of values in it: what a season touches
/// is then one count a day, and nothing at all on days of 0, which are what is left of the seasons.
/// </summary>
internal sealed class DayTally(int days)
{
    private const int FirstWindow = 8;

    private readonly Window[] _windows = new Window[days];
    private int[] _counts = new int[days * FirstWindow];
    private int _used;
    private int _seasons;

    /// <summary>Counts one season.</summary>
    /// <param name="values">0 or more, by day.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(int[] values)
    {
        _seasons++;
        var windows = _windows;
        var counts = _counts;
        for (var day = 0; day < windows.Length; day++)
        {
            var value = values[day];
            if (value == 0)
            {
                continue;
            }

            var window = windows[day];
            var at = value - window.Low;
            if ((uint)at < (uint)window.Length)
            {
                counts[window.Start + at]++;
            }
            else
            {
                Add(day, value, 1);
                counts = _counts;
            }
        }
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(DayTally other)
    {
        _seasons += other._seasons;
        for (var day = 0; day < _windows.Length; day++)
        {
            var window = other._windows[day];
            for (var at = 0; at < window.Length; at++)
            {
                var count = other._counts[window.Start + at];
                if (count > 0)
                {
                    Add(day, window.Low + at, count);
                }
            }
        }
    }

    /// <summary>Number of days.</summary>
    public int Days => _windows.Length;

    /// <summary>The values seen on a day, in rising order, with the seasons of each.</summary>
    public (long Value, int Seasons)[] Counted(int day)
    {
        var window = _windows[day];
        (long Value, int Seasons)[] seen =
        [
            .. _counts
                .AsSpan(window.Start, window.Length)
                .ToArray()
                .Select((seasons, at) => ((long)window.Low + at, seasons))
                .Where(each => each.seasons > 0),
        ];
        var zeros = _seasons - seen.Sum(each => each.Seasons);
        return zeros > 0 ? [(0, zeros), .. seen] : seen;
    }

    /// <summary>Puts the values of a day into an empty tally.</summary>
    /// <param name="day">Day.</param>
    /// <param name="counted">Values from 0 to the largest whole number, with the seasons of each: <paramref name="seasons"/> in all.</param>
    /// <param name="seasons">Seasons counted, the same for each day.</param>
    public void Fill(int day, (long Value, int Seasons)[] counted, int seasons)
    {
        _seasons = seasons;
        foreach ((var value, var count) in counted)
        {
            if (value > 0)
            {
                Add(day, (int)value, count);
            }
        }
    }

    /// <summary>What was counted, by day; at least one season.</summary>
    public ImmutableArray<DaySpread> ToSpreads() => [.. Enumerable.Range(0, _windows.Length).Select(ToSpread)];

    private void Add(int day, int value, int seasons)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        if ((uint)(value - _windows[day].Low) >= (uint)_windows[day].Length)
        {
            Widen(day, value);
        }

        _counts[_windows[day].Start + value - _windows[day].Low] += seasons;
    }

    // A window that grows moves to the end of the array. As it at least doubles each time, what it leaves behind is never more than what is in use.
    private void Widen(int day, int value)
    {
        var old = _windows[day];
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

        _windows[day] = next;
    }

    private DaySpread ToSpread(int day)
    {
        var window = _windows[day];
        ReadOnlySpan<int> counts = _counts.AsSpan(window.Start, window.Length);
        var seen = 0;
        Int128 sum = 0;
        var most = 0;
        for (var at = 0; at < counts.Length; at++)
        {
            if (counts[at] == 0)
            {
                continue;
            }

            most = window.Low + at;
            seen += counts[at];
            sum += (long)most * counts[at];
        }

        var zeros = _seasons - seen;
        return new DaySpread((double)sum / _seasons, Quantile(10), Quantile(50), Quantile(90), Quantile(95), most);

        int Quantile(int percent)
        {
            var needed = Tally.SeasonsNeeded(percent, _seasons) - zeros;
            if (needed <= 0)
            {
                return 0;
            }

            var at = 0;
            for (long reached = _counts[window.Start]; reached < needed; reached += _counts[window.Start + at])
            {
                at++;
            }

            return window.Low + at;
        }
    }

    private readonly record struct Window(int Start, int Low, int Length);
}
