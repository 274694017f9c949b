using BenchSim.Study.Results;

namespace BenchSim.Study.Counting;

/// <summary>
/// A tally of quantities with a small range (places, days, trays, plants): one count a value between the smallest and the largest seen.
/// Everything it says is exact; its size depends on the spread of the values, not on the number of seasons.
/// </summary>
internal sealed class ExactTally : Tally
{
    private int[] _counts = [];
    private int _low;
    private int _zeros;

    /// <summary>Counts one season.</summary>
    /// <param name="value">0 or more.</param>
    public void Add(int value)
    {
        // Most of what is counted is 0 in most seasons: lost trays, trays that wait.
        if (value == 0)
        {
            _zeros++;
            return;
        }

        var counts = _counts;
        var at = value - _low;
        if ((uint)at < (uint)counts.Length)
        {
            counts[at]++;
        }
        else
        {
            Add(value, 1);
        }
    }

    /// <summary>Counts several seasons of one value.</summary>
    public void Add(int value, int seasons)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        if (value == 0)
        {
            _zeros += seasons;
            return;
        }

        if ((uint)(value - _low) >= (uint)_counts.Length)
        {
            Widen(value, value);
        }

        _counts[value - _low] += seasons;
    }

    /// <summary>Adds another tally.</summary>
    public void Merge(ExactTally other)
    {
        _zeros += other._zeros;
        if (other._counts.Length == 0)
        {
            return;
        }

        Widen(other._low, other._low + other._counts.Length - 1);
        for (var i = 0; i < other._counts.Length; i++)
        {
            _counts[other._low + i - _low] += other._counts[i];
        }
    }

    /// <summary>The values seen, in rising order, with the seasons of each.</summary>
    public (long Value, int Seasons)[] Counted() =>
        [
            .. new (long Value, int Seasons)[] { (0, _zeros) }
                .Concat(_counts.Select((seasons, at) => ((long)_low + at, seasons)))
                .Where(each => each.Item2 > 0),
        ];

    /// <inheritdoc/>
    public override Moments Moments()
    {
        var seasons = _zeros;
        UInt128 sum = 0;
        UInt128 squares = 0;
        long least = 0;
        long most = 0;
        for (var i = 0; i < _counts.Length; i++)
        {
            var count = _counts[i];
            if (count == 0)
            {
                continue;
            }

            long value = _low + i;
            least = seasons == 0 ? value : least;
            most = value;
            seasons += count;
            sum += (UInt128)(ulong)value * (uint)count;
            squares += (UInt128)(ulong)value * (ulong)value * (uint)count;
        }

        return new Moments(seasons, sum, squares, least, most);
    }

    /// <summary>Days of the clock as dates, over the seasons in which the thing happened.</summary>
    /// <param name="firstDay">Date of day 0.</param>
    /// <param name="seasons">Seasons played.</param>
    public DateSpread ToDates(DateOnly firstDay, int seasons)
    {
        var n = Moments().Seasons;
        return n == 0 ? new DateSpread(null, null, null, 0, seasons) : new DateSpread(At(10), At(50), At(90), n, seasons);

        DateOnly At(int percent) => firstDay.AddDays((int)Quantile(percent, n));
    }

    /// <inheritdoc/>
    protected override long SmallestNotExceededBy(long seasons) => ValueNotExceededBy(seasons);

    /// <summary>The smallest value that at least so many seasons do not exceed.</summary>
    internal int ValueNotExceededBy(long seasons)
    {
        long sum = _zeros;
        if (sum >= seasons)
        {
            return 0;
        }

        for (var i = 0; i < _counts.Length; i++)
        {
            sum += _counts[i];
            if (sum >= seasons)
            {
                return _low + i;
            }
        }

        throw new InvalidOperationException("Fewer seasons were counted than are asked for.");
    }

    // Values here are 1 or more: 0 has its own count.
    private void Widen(int least, int most)
    {
        if (_counts.Length == 0)
        {
            _low = least;
            _counts = new int[Math.Max(4L, most - (long)least + 1)];
            return;
        }

        // Half as much again on the side that grows, so that growing stays rare.
        long low = _low;
        var end = low + _counts.Length;
        long slack = _counts.Length / 2;
        if (least < low)
        {
            low = Math.Max(1, Math.Min(least, low - slack));
        }

        if (most >= end)
        {
            end = Math.Max(most + 1L, end + slack);
        }

        if (low == _low && end == low + _counts.Length)
        {
            return;
        }

        var wider = new int[end - low];
        _counts.CopyTo(wider, _low - low);
        _counts = wider;
        _low = (int)low;
    }
}
