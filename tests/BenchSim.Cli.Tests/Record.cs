using System.Text;

namespace BenchSim.Cli.Tests;

/// <summary>Daily weather records made for tests.</summary>
internal static class Record
{
    /// <summary>
    /// Whole years. The low of a day is the number of its month, one more and one less in turn; the high is 10 above the low; every third
    /// day has 3 mm of
    /// rain. Over two years every month has as many days of the one kind as of the other, so its mean low is its number.
    /// </summary>
    public static string Years(int years, int first = 2021, Func<DateOnly, double, double>? low = null)
    {
        var text = new StringBuilder("date,tmin,tmax,rain\n");
        var day = new DateOnly(first, 1, 1);
        var end = day.AddYears(years);
        for (var number = 0; day < end; day = day.AddDays(1), number++)
        {
            double usual = day.Month + (number % 2 == 0 ? 1 : -1);
            var lowest = low is null ? usual : low(day, usual);
            text.Append($"{day:yyyy-MM-dd},{lowest:0.0},{lowest + 10:0.0},{(number % 3 == 0 ? 3 : 0)}\n");
        }

        return text.ToString();
    }
}
