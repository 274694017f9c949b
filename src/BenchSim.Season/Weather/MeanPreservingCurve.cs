namespace BenchSim.Season.Weather;

/// <summary>
/// Daily values through the year whose average over each calendar month is exactly the given monthly mean. The running sum of the months
/// is joined by a periodic cubic spline with knots at the month ends, and a day's value is the rise of the spline over the day (the
/// histospline of Boneva, Kendall and Stefanov 1971): the curve is smooth and its month averages are right by construction. Two harmonics
/// instead miss a month by up to 1.9 C.
/// </summary>
public static class MeanPreservingCurve
{
    /// <summary>Days of a table through the year: 29 February has its own place.</summary>
    public const int TableDays = 366;

    /// <summary>Place of 29 February in a table, from 0.</summary>
    public const int LeapDay = 59;

    private static readonly int[] s_monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>
    /// Daily values of a year. Place 0 is 1 January, place 365 is 31 December; 29 February (place 59) is the mean of its two neighbours
    /// and is not counted in the mean of February.
    /// </summary>
    /// <param name="monthly">Twelve monthly means, any unit.</param>
    public static double[] Daily(ReadOnlySpan<double> monthly)
    {
        if (monthly.Length != 12)
        {
            throw new ArgumentException("There must be twelve monthly means.", nameof(monthly));
        }

        var level = 0.0;
        for (var month = 0; month < 12; month++)
        {
            level += monthly[month] * s_monthDays[month] / 365.0;
        }

        // The running sum of what a month lies above the year's mean comes back to 0 at the year's end: periodic.
        var sums = new double[13];
        for (var month = 0; month < 12; month++)
        {
            sums[month + 1] = sums[month] + ((monthly[month] - level) * s_monthDays[month]);
        }

        sums[12] = 0;

        var curvature = PeriodicCurvature(sums);
        var daily = new double[TableDays];
        var place = 0;
        for (var month = 0; month < 12; month++)
        {
            var before = sums[month];
            for (var day = 1; day <= s_monthDays[month]; day++)
            {
                var after = day == s_monthDays[month] ? sums[month + 1] : Spline(sums, curvature, month, day);
                daily[place++] = level + after - before;
                before = after;
                if (place == LeapDay)
                {
                    place++;
                }
            }
        }

        daily[LeapDay] = (daily[LeapDay - 1] + daily[LeapDay + 1]) / 2;
        return daily;
    }

    /// <summary>Place of a date in a table of <see cref="TableDays"/> days, from 0.</summary>
    /// <param name="date">A date of any year.</param>
    public static int PlaceOf(DateOnly date)
    {
        var place = date.DayOfYear - 1;
        return place >= LeapDay && !DateTime.IsLeapYear(date.Year) ? place + 1 : place;
    }

    private static double Spline(double[] sums, double[] curvature, int month, double day)
    {
        double length = s_monthDays[month];
        var left = length - day;
        return (((curvature[month] * left * left * left) + (curvature[month + 1] * day * day * day)) / (6 * length))
            + (((sums[month] / length) - (curvature[month] * length / 6)) * left)
            + (((sums[month + 1] / length) - (curvature[month + 1] * length / 6)) * day);
    }

    // Second derivatives of the periodic cubic spline at the month starts: the classical cyclic system, solved by elimination (12
    // unknowns).
    private static double[] PeriodicCurvature(double[] sums)
    {
        var system = new double[12, 13];
        for (var month = 0; month < 12; month++)
        {
            var previous = (month + 11) % 12;
            double before = s_monthDays[previous];
            double after = s_monthDays[month];
            system[month, previous] += before / 6;
            system[month, month] += (before + after) / 3;
            system[month, (month + 1) % 12] += after / 6;
            system[month, 12] = ((sums[month + 1] - sums[month]) / after) - ((sums[month] - sums[previous]) / before);
            if (month == 0)
            {
                system[month, 12] = ((sums[1] - sums[0]) / after) - ((sums[12] - sums[11]) / before);
            }
        }

        // Diagonally dominant, so no pivoting is needed.
        for (var pivot = 0; pivot < 12; pivot++)
        {
            for (var row = 0; row < 12; row++)
            {
                if (row == pivot)
                {
                    continue;
                }

                var factor = system[row, pivot] / system[pivot, pivot];
                for (var column = pivot; column < 13; column++)
                {
                    system[row, column] -= factor * system[pivot, column];
                }
            }
        }

        var curvature = new double[13];
        for (var month = 0; month < 12; month++)
        {
            curvature[month] = system[month, 12] / system[month, month];
        }

        curvature[12] = curvature[0];
        return curvature;
    }
}
