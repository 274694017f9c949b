namespace BenchSim.Twin.Tests;

/// <summary>
/// A quantity gained hour by hour (docs/model.md section 4): its rate is taken at each whole hour and held for the hour; the running sum
/// runs straight between whole hours and is rounded to a millionth, a half upward. Kept in millionths, so that sums are exact.
/// </summary>
internal sealed class RunningSum
{
    private readonly double[] _atHour;

    public RunningSum(int hours, Func<int, double> aDay)
    {
        _atHour = new double[hours + 1];
        var sum = 0.0;
        for (var hour = 0; hour < hours; hour++)
        {
            sum += aDay(hour) / 24;
            _atHour[hour + 1] = Millionths(sum);
        }
    }

    /// <summary>A number in whole millionths.</summary>
    public static double Millionths(double value) => Math.Round(value * 1e6);

    /// <summary>The sum at an instant.</summary>
    public double At(double hour)
    {
        var whole = (int)Math.Floor(hour);
        return whole >= _atHour.Length - 1
            ? _atHour[^1]
            : Math.Floor(_atHour[whole] + ((hour - whole) * (_atHour[whole + 1] - _atHour[whole])) + 0.5);
    }

    /// <summary>
    /// The first instant after one instant, up to another, at which so much has been gained since the first; endless when it is not.
    /// </summary>
    public double Reaches(double from, double to, double gain)
    {
        if (gain <= 0)
        {
            return from;
        }

        var start = At(from);
        var left = from;
        while (left < to)
        {
            var right = Math.Min(Math.Floor(left) + 1, to);
            if (At(right) - start >= gain)
            {
                var whole = Math.Floor(left);
                return whole + ((gain + start - 0.5 - At(whole)) / (At(whole + 1) - At(whole)));
            }

            left = right;
        }

        return double.PositiveInfinity;
    }
}
