using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// A running heat sum over a season, told in whole millionths of a degree-day so that equal sums are equal and ties agree.
/// Linear between hours. Instants are hours from the midnight that opens day 0.
/// </summary>
/// <param name="heat">Fills the sums as far as they are asked for.</param>
/// <param name="block">Holds the sums.</param>
/// <param name="place">Place of this sum in the block.</param>
internal sealed class HeatTable(HeatSums heat, HeatBlock block, int place)
{
    /// <summary>Parts of a degree-day in one unit of the table.</summary>
    public const double UnitsADegreeDay = 1e6;

    // Of what is added up a day's rate stands for each of its hours.
    private const double UnitsASum = UnitsADegreeDay / HourlyClimate.Hours;

    // A number of this size has no room for a fraction: adding it rounds, and the lowest bits of the sum are then the whole number. A
    // processor that cannot turn vectors, or any number, into whole ones at once does this as fast as others; no season is long or hot
    // enough to leave its range.
    private const double Rounding = 3.0 * (1L << 51);

    private readonly double[] _sums = block.Sums;

    /// <summary>The block it stands in.</summary>
    public HeatBlock Block => block;

    /// <summary>Hours covered.</summary>
    public int Hours => heat.Hours;

    /// <summary>Whole units of a heat sum in degree-days, rounded to a millionth of a degree-day.</summary>
    /// <param name="degreeDays">Degree-days, 0 or more.</param>
    public static long Units(double degreeDays) => (long)Math.Round(degreeDays * UnitsADegreeDay);

    /// <summary>
    /// The whole number nearest to a number of a size below 2^51, halves to the even one, as <see cref="Math.Round(double)"/> has it.
    /// </summary>
    internal static long Whole(double number) =>
        BitConverter.DoubleToInt64Bits(number + Rounding) - BitConverter.DoubleToInt64Bits(Rounding);

    /// <summary>Heat from the opening of day 0 to an instant, in units.</summary>
    /// <param name="hour">Instant, hours; beyond the table it stands still.</param>
    public long At(double hour)
    {
        var whole = (int)hour;
        if (whole >= heat.Filled)
        {
            heat.FillTo(whole + 1);
            if (whole >= Hours)
            {
                return UnitsAt(Hours);
            }
        }

        var part = hour - whole;
        var low = UnitsAt(whole);

        // Halves go up, not to the even neighbour: two halves a whole sum apart must stay as far apart, or a tie at half past the hour is
        // missed.
        return part == 0 ? low : low + (long)Math.Floor((part * (UnitsAt(whole + 1) - low)) + 0.5);
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

        var low = Math.Min((int)fromHour, Hours);
        while (UnitsAt(heat.Filled) < level)
        {
            if (heat.Filled == Hours)
            {
                return double.PositiveInfinity;
            }

            low = heat.Filled;
            heat.FillTo(heat.Filled + 1);
        }

        // By days first: midnights are few enough to stay near the processor.
        var midnight = FirstAtOrAbove(level, low / HourlyClimate.Hours, heat.Filled / HourlyClimate.Hours, HourlyClimate.Hours);
        var high = FirstAtOrAbove(level, Math.Max(low, midnight - HourlyClimate.Hours), midnight, 1);
        low = high - 1;
        var (below, reached) = (UnitsAt(low), UnitsAt(high));

        // The sum is rounded, so it reaches the level half a unit below it; any later and At(now) could be there before this instant is.
        return reached == level ? high : low + ((level - 0.5 - below) / (reached - below));
    }

    // The first of the hours, in steps, at which the sum is at a level or above; it is below at "low" and not at "high", both counted in
    // steps.
    private int FirstAtOrAbove(long level, int low, int high, int step)
    {
        while (high - low > 1)
        {
            var middle = (low + high) >>> 1;
            if (UnitsAt(middle * step) >= level)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return high * step;
    }

    private long UnitsAt(int hour) => Whole(_sums[(hour * HeatBlock.Most) + place] * UnitsASum);
}
