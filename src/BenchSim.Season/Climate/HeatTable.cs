namespace BenchSim.Season.Climate;

/// <summary>
/// A running heat sum over a season, kept in whole millionths of a degree-day so that equal sums are equal and ties agree.
/// Linear between hours. Instants are hours from the midnight that opens day 0.
/// </summary>
public sealed class HeatTable
{
    /// <summary>Parts of a degree-day in one unit of the table.</summary>
    public const double UnitsADegreeDay = 1e6;

    private readonly long[] cumulative;

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

    /// <summary>Fills the table from a daily rate that holds for each hour.</summary>
    /// <param name="ratesADay">Degree-days a day, one for each hour.</param>
    public void Fill(ReadOnlySpan<double> ratesADay)
    {
        if (ratesADay.Length < Hours) throw new ArgumentException("There must be one rate for each hour.", nameof(ratesADay));
        var sum = 0.0;
        var table = cumulative;
        for (var hour = 0; hour + 1 < table.Length; hour++)
        {
            sum += ratesADay[hour];

            // No season is long or hot enough to leave the range in which this conversion is the same on every machine.
            table[hour + 1] = double.ConvertToIntegerNative<long>(Math.Round(sum * (UnitsADegreeDay / 24)));
        }
    }

    /// <summary>Heat from the opening of day 0 to an instant, in units.</summary>
    /// <param name="hour">Instant, hours; beyond the table it stands still.</param>
    public long At(double hour)
    {
        var whole = (int)hour;
        if (whole >= Hours)
        {
            return cumulative[^1];
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

        if (cumulative[^1] < level)
        {
            return double.PositiveInfinity;
        }

        var low = Math.Min((int)fromHour, Hours);
        var high = Hours;
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
