using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>What a daily series shows, by the definitions of tests/Published/data/weather_reference.json.</summary>
public sealed record WeatherStatistics
{
    /// <summary>A night below this does not count for hardening, degrees Celsius (40 F).</summary>
    public const double HardeningNightC = 4.4;

    /// <summary>A night at or below this freezes, degrees Celsius.</summary>
    public const double FrostC = 0;

    /// <summary>A night at or below this is a hard frost, degrees Celsius (28 F).</summary>
    public const double HardFrostC = -2.2;

    /// <summary>January to December.</summary>
    public required ImmutableArray<MonthStatistics> Months { get; init; }

    /// <summary>Correlation of the residual of the lowest temperature with yesterday's; residual = (value - month's mean) / month's
    /// standard deviation.</summary>
    public required double TminLag1 { get; init; }

    /// <summary>Correlation of the residual of the highest temperature with yesterday's.</summary>
    public required double TmaxLag1 { get; init; }

    /// <summary>Days counted.</summary>
    public required int Days { get; init; }

    /// <summary>Works out the statistics.</summary>
    /// <param name="days">Days in order of date; gaps are allowed, each date once.</param>
    public static WeatherStatistics Of(ReadOnlySpan<DailyWeather> days)
    {
        var sums = new Tally[12];
        var month = new int[days.Length];
        for (var i = 0; i < days.Length; i++)
        {
            month[i] = days[i].Date.Month - 1;
            sums[month[i]].Add(days[i], i > 0 && FollowsOn(days[i - 1], days[i]) ? days[i - 1].RainMm > 0 : null);
        }

        var (tmin, tmax) = (new double[days.Length], new double[days.Length]);
        for (var i = 0; i < days.Length; i++)
        {
            ref var sum = ref sums[month[i]];
            (tmin[i], tmax[i]) = (days[i].TminC - (sum.Tmin / sum.Days), days[i].TmaxC - (sum.Tmax / sum.Days));
            sum.AddDeviation(tmin[i], tmax[i]);
        }

        var months = new MonthStatistics[12];
        for (var at = 0; at < 12; at++)
        {
            months[at] = sums[at].ToStatistics();
        }

        for (var i = 0; i < days.Length; i++)
        {
            (tmin[i], tmax[i]) = (tmin[i] / months[month[i]].TminSdC, tmax[i] / months[month[i]].TmaxSdC);
        }

        return new WeatherStatistics
        {
            Months = [.. months],
            TminLag1 = Lag1(days, tmin),
            TmaxLag1 = Lag1(days, tmax),
            Days = days.Length,
        };
    }

    /// <summary>
    /// Day of the year (1 January = 1) of the last night of each year, up to 30 June, whose lowest temperature is at or below a
    /// threshold; 0 for a year without one. Years not whole from January to June are left out.
    /// </summary>
    /// <param name="days">Days in order of date.</param>
    /// <param name="thresholdC">Threshold, degrees Celsius.</param>
    public static ImmutableArray<int> LastSpringNight(ReadOnlySpan<DailyWeather> days, double thresholdC)
    {
        var last = ImmutableArray.CreateBuilder<int>();
        var i = 0;
        while (i < days.Length)
        {
            var year = days[i].Date.Year;
            var (count, found) = (0, 0);
            for (; i < days.Length && days[i].Date.Year == year; i++)
            {
                if (days[i].Date.Month > 6)
                {
                    continue;
                }

                count++;
                if (days[i].TminC <= thresholdC)
                {
                    found = days[i].Date.DayOfYear;
                }
            }

            if (count == new DateOnly(year, 6, 30).DayOfYear)
            {
                last.Add(found);
            }
        }

        return last.ToImmutable();
    }

    private static bool FollowsOn(in DailyWeather yesterday, in DailyWeather today) => yesterday.Date.DayNumber + 1 == today.Date.DayNumber;

    // Pearson's correlation over the pairs of consecutive days.
    private static double Lag1(ReadOnlySpan<DailyWeather> days, double[] residuals)
    {
        var (n, sx, sy, sxx, syy, sxy) = (0, 0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 1; i < days.Length; i++)
        {
            if (!FollowsOn(days[i - 1], days[i]))
            {
                continue;
            }

            var (x, y) = (residuals[i - 1], residuals[i]);
            n++;
            sx += x;
            sy += y;
            sxx += x * x;
            syy += y * y;
            sxy += x * y;
        }

        return (sxy - (sx * sy / n)) / Math.Sqrt((sxx - (sx * sx / n)) * (syy - (sy * sy / n)));
    }

    private struct Tally
    {
        public int Days;
        public double Tmin;
        public double Tmax;
        private double _tminSquares;
        private double _tmaxSquares;
        private int _wet;
        private int _afterDry;
        private int _wetAfterDry;
        private int _afterWet;
        private int _wetAfterWet;
        private double _rain;
        private int _cold;
        private int _frost;

        public void Add(in DailyWeather day, bool? wetYesterday)
        {
            var wet = day.RainMm > 0;
            Days++;
            Tmin += day.TminC;
            Tmax += day.TmaxC;
            _rain += day.RainMm;
            _wet += wet ? 1 : 0;
            _cold += day.TminC < HardeningNightC ? 1 : 0;
            _frost += day.TminC <= FrostC ? 1 : 0;
            if (wetYesterday == true)
            {
                _afterWet++;
                _wetAfterWet += wet ? 1 : 0;
            }
            else if (wetYesterday == false)
            {
                _afterDry++;
                _wetAfterDry += wet ? 1 : 0;
            }
        }

        public void AddDeviation(double tmin, double tmax)
        {
            _tminSquares += tmin * tmin;
            _tmaxSquares += tmax * tmax;
        }

        public readonly MonthStatistics ToStatistics() =>
            new()
            {
                Days = Days,
                TminMeanC = Tmin / Days,
                TmaxMeanC = Tmax / Days,
                TminSdC = Math.Sqrt(_tminSquares / (Days - 1)),
                TmaxSdC = Math.Sqrt(_tmaxSquares / (Days - 1)),
                WetDays = _wet,
                AfterDry = _afterDry,
                WetAfterDry = _wetAfterDry,
                AfterWet = _afterWet,
                WetAfterWet = _wetAfterWet,
                RainMm = _rain,
                ColdNights = _cold,
                FrostNights = _frost,
            };
    }
}
