using System.Numerics;

namespace BenchSim.Season.Climate;

/// <summary>
/// A running heat sum over a season, kept in whole millionths of a degree-day so that equal sums are equal and ties agree.
/// Linear between hours. Instants are hours from the midnight that opens day 0.
/// </summary>
public sealed class HeatTable
{
    /// <summary>Parts of a degree-day in one unit of the table.</summary>
    public const double UnitsADegreeDay = 1e6;

    // A season often needs only the beginning of a table; ten days at a time cost little in steps and waste little.
    private const int HoursAStep = 240;

    private readonly long[] cumulative;
    private FillHours? rates;
    private double sum;
    private int filled;

    /// <summary>Makes a table that can hold a number of hours; <see cref="Fill"/> gives it content.</summary>
    /// <param name="hours">Hours, 1 or more.</param>
    public HeatTable(int hours)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(hours, 1);
        cumulative = new long[hours + 1];
    }

    /// <summary>Hours covered.</summary>
    public int Hours => cumulative.Length - 1;

    /// <summary>Whole units of a heat sum in degree-days, rounded to a millionth of a degree-day.</summary>
    /// <param name="degreeDays">Degree-days, 0 or more.</param>
    public static long Units(double degreeDays) => (long)Math.Round(degreeDays * UnitsADegreeDay);

    /// <summary>Gives the daily rates of the hours from one on, one for each element.</summary>
    internal delegate void FillHours(int fromHour, Span<double> ratesADay);

    /// <summary>Fills the table from a daily rate that holds for each hour.</summary>
    /// <param name="ratesADay">Degree-days a day, one for each hour.</param>
    public void Fill(ReadOnlySpan<double> ratesADay)
    {
        if (ratesADay.Length < Hours)
        {
            throw new ArgumentException("There must be one rate for each hour.", nameof(ratesADay));
        }

        rates = null;
        (sum, filled) = (0, 0);
        Span<double> step = stackalloc double[HoursAStep];
        while (filled < Hours)
        {
            var next = step[..Math.Min(HoursAStep, Hours - filled)];
            ratesADay.Slice(filled, next.Length).CopyTo(next);
            Add(next);
        }
    }

    /// <summary>Empties the table; its hours are then filled as far as they are asked for. Not for use by several threads before <see cref="FillAll"/>.</summary>
    /// <param name="fill">Gives the rates.</param>
    internal void Start(FillHours fill)
    {
        rates = fill;
        (sum, filled) = (0, 0);
    }

    /// <summary>Fills every hour that has not been asked for yet, after which reading changes nothing.</summary>
    internal void FillAll() => FillTo(Hours);

    private void FillTo(int hours)
    {
        Span<double> step = stackalloc double[HoursAStep];
        while (filled < hours)
        {
            var next = step[..Math.Min(HoursAStep, Hours - filled)];
            rates!(filled, next);
            Add(next);
        }
    }

    // Adds up hour after hour, in place, then rounds several hours a step.
    private void Add(Span<double> ratesADay)
    {
        var table = cumulative.AsSpan(filled + 1, ratesADay.Length);
        var running = sum;
        foreach (ref var hour in ratesADay)
        {
            running += hour;
            hour = running;
        }

        // No season is long or hot enough to leave the range in which these conversions are the same on every machine.
        const double Scale = UnitsADegreeDay / 24;
        var at = 0;
        for (; at <= table.Length - Vector<double>.Count; at += Vector<double>.Count)
        {
            Vector.ConvertToInt64Native(Vector.Round(new Vector<double>(ratesADay[at..]) * Scale)).CopyTo(table[at..]);
        }

        for (; at < table.Length; at++)
        {
            table[at] = double.ConvertToIntegerNative<long>(Math.Round(ratesADay[at] * Scale));
        }

        sum = running;
        filled += ratesADay.Length;
    }

    /// <summary>Heat from the opening of day 0 to an instant, in units.</summary>
    /// <param name="hour">Instant, hours; beyond the table it stands still.</param>
    public long At(double hour)
    {
        var whole = (int)hour;
        if (whole >= filled)
        {
            FillTo(Math.Min(whole + 1, Hours));
            if (whole >= Hours)
            {
                return cumulative[^1];
            }
        }

        var part = hour - whole;
        var low = cumulative[whole];

        // Halves go up, not to the even neighbour: two halves a whole sum apart must stay as far apart, or a tie at half past the hour is missed.
        return part == 0 ? low : low + (long)Math.Floor((part * (cumulative[whole + 1] - low)) + 0.5);
    }

    /// <summary>The first instant from a given one on at which the running sum reaches a level.</summary>
    /// <param name="level">Level of the sum from the opening of day 0, in units.</param>
    /// <param name="fromHour">Instant to start from, hours.</param>
    /// <returns>The instant in hours; positive infinity when it is not reached within the table.</returns>
    public double FirstAtOrAbove(long level, double fromHour)
    {
        if (At(fromHour) >= level)
        {
            return fromHour;
        }

        while (cumulative[filled] < level)
        {
            if (filled == Hours)
            {
                return double.PositiveInfinity;
            }

            FillTo(filled + 1);
        }

        var low = Math.Min((int)fromHour, Hours);
        var high = filled;
        while (high - low > 1)
        {
            var middle = (low + high) >>> 1;
            if (cumulative[middle] >= level)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        var step = cumulative[high] - cumulative[low];

        // The sum is rounded, so it reaches the level half a unit below it; any later and At(now) could be there before this instant is.
        return cumulative[high] == level ? high : low + ((level - 0.5 - cumulative[low]) / step);
    }
}
