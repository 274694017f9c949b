using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

/// <summary>
/// Daily records of a climate whose laws are known. The usual low is 6 - 9 cos(2 pi (day - 20) / 365) C. A day's low departs from it by 3
/// K times a residual of variance 1 that carries over with correlation 0.6: normal, or a gamma variable of shape 4 less its mean, half the
/// sum of eight squared normal series (so that it carries over with the square of their correlation), of skew 1. Highs lie 11 K above,
/// correlated 0.6 with the lows. Each calendar year shifts all its days by one normal draw. Three days in ten are wet, by themselves.
/// </summary>
internal sealed class InventedClimate(double skew, double yearSdC)
{
    private const int Springs = 181;

    /// <summary>A record of whole years from 2001 on.</summary>
    public ImmutableArray<DailyWeather> Record(int years, int seed)
    {
        var random = new Random(seed);
        var parts = Enumerable.Range(0, 8).Select(_ => Draw()).ToArray();
        var (normal, high, year) = (Draw(), Draw(), 0.0);
        var days = ImmutableArray.CreateBuilder<DailyWeather>();
        for (var date = new DateOnly(2001, 1, 1); date.Year < 2001 + years; date = date.AddDays(1))
        {
            year = date.DayOfYear == 1 ? yearSdC * Draw() : year;
            for (var part = 0; part < parts.Length; part++)
            {
                parts[part] = (Math.Sqrt(0.6) * parts[part]) + (Math.Sqrt(0.4) * Draw());
            }

            normal = (0.6 * normal) + (0.8 * Draw());
            high = (0.5 * high) + (Math.Sqrt(0.75) * Draw());
            var residual = skew == 0 ? normal : skew * ((parts.Sum(part => part * part) / 2) - 4) / 2;
            var usual = 6 - (9 * Math.Cos(2 * Math.PI * (date.DayOfYear - 20) / 365));
            var low = usual + (3 * residual) + year;
            var tmax = usual + 11 + (3.5 * ((0.6 * residual) + (0.8 * high))) + year;
            days.Add(new DailyWeather(date, low, Math.Max(low + 0.5, tmax), random.NextDouble() < 0.3 ? 5 : 0));
        }

        return days.ToImmutable();

        double Draw() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    /// <summary>What springs show: mean and standard deviation of the day of the last frost, share of springs with a frost on day 130 (10
    /// May) or later, and standard deviation of the mean temperature of March to May.</summary>
    public static (double LastFrost, double LastFrostSd, double FrostAfter, double MeanSd) Figures(IEnumerable<DailyWeather> days)
    {
        var springs = days.GroupBy(day => day.Date.Year).Select(year => year.Take(Springs).ToArray()).ToList();
        var last = springs.Select(spring => (double)Array.FindLastIndex(spring, day => day.TminC <= 0) + 1).Where(day => day > 0).ToList();
        var means = springs.Select(spring => spring[59..151].Average(day => (day.TminC + day.TmaxC) / 2)).ToList();
        return (last.Average(), Sd(last), last.Count(day => day >= 130) / (double)springs.Count, Sd(means));

        static double Sd(List<double> values)
        {
            var mean = values.Average();
            return Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1));
        }
    }

    /// <summary>Years that a model makes.</summary>
    public static DailyWeather[] Generated(WeatherModel model, int years)
    {
        var first = new DateOnly(2001, 1, 1);
        var count = first.AddYears(years).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        new WeatherGenerator(model).Draw(9, 0, first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }
}
