using System.Collections.Immutable;
using BenchSim.Report.Words;

namespace BenchSim.Report.Charts;

/// <summary>A mark on an axis.</summary>
/// <param name="At">Where it stands, in the unit of the axis: on an axis of dates the day of the play, 0 first.</param>
/// <param name="Label">What it says.</param>
internal readonly record struct AxisTick(double At, string Label)
{
    /// <summary>Marks at the beginning of months, or every so many weeks in a short play; about
    /// <paramref name="most"/> at the most.</summary>
    public static ImmutableArray<AxisTick> OfDates(Dates dates, int most)
    {
        AxisTick[] months =
        [
            .. Enumerable
                .Range(0, dates.Days)
                .Where(day => dates.Day(day).Day == 1)
                .Select(day => new AxisTick(day, MonthLabel(dates, day))),
        ];
        if (months.Length >= 3)
        {
            var step = (months.Length + most - 1) / most;
            return [.. months.Where((_, index) => index % step == 0)];
        }

        var weeks = Math.Max(1, (dates.Days + (7 * most) - 1) / (7 * most));
        return
        [
            .. Enumerable
                .Range(0, dates.Days)
                .Where(day => day % (7 * weeks) == 0)
                .Select(day => new AxisTick(day, Dates.Brief(dates.Day(day)))),
        ];
    }

    private static string MonthLabel(Dates dates, int day)
    {
        var date = dates.Day(day);

        // January stands under its year: both together would run into February.
        return date.Month == 1 ? date.Year.ToString(null, null) : Dates.ShortMonth(date);
    }
}
