using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

/// <summary>
/// What a series of seven days shows, by hand: four in January and three in February. The statistics of two cities' record, worked out by
/// others, are in tests/Published/Weather.
/// </summary>
public class WeatherStatisticsTests
{
    private static readonly DailyWeather[] s_days =
    [
        new(new(2021, 1, 1), 0, 8, 0),
        new(new(2021, 1, 2), 4.4, 9, 3),
        new(new(2021, 1, 3), 1, 13, 2),
        new(new(2021, 1, 4), 5, 10, 0),
        new(new(2021, 2, 10), 4, 14, 1),
        new(new(2021, 2, 11), 10, 20, 0),
        new(new(2021, 2, 12), 0, 11, 5),
    ];

    private readonly WeatherStatistics _found = WeatherStatistics.Of(s_days);

    [Fact]
    public void Means_and_spreads_are_those_of_the_month()
    {
        // January: 0, 4.4, 1 and 5 have mean 2.6 and squares about it 6.76 + 3.24 + 2.56 + 5.76 = 18.32; 8, 9, 13 and 10 mean 10 and 4 + 1
        // + 9 + 0 = 14.
        var january = _found.Months[0];
        Assert.Equal((4, 2.6, 10), (january.Days, Math.Round(january.TminMeanC, 12), Math.Round(january.TmaxMeanC, 12)));
        Assert.Equal(Math.Sqrt(18.32 / 3), january.TminSdC, 1e-12);
        Assert.Equal(Math.Sqrt(14 / 3.0), january.TmaxSdC, 1e-12);
    }

    [Fact]
    public void Nights_below_4_4_are_cold_and_nights_of_0_freeze()
    {
        Assert.Equal([(2, 1), (2, 1)], _found.Months[..2].Select(month => (month.ColdNights, month.FrostNights)));
    }

    [Fact]
    public void Rain_is_counted_by_the_day_before()
    {
        // January: dry, wet, wet, dry. February: wet, dry, wet, the first with no day before it.
        Assert.Equal(
            [(2, 1, 1, 2, 1), (2, 1, 1, 1, 0)],
            _found.Months[..2].Select(month => (month.WetDays, month.AfterDry, month.WetAfterDry, month.AfterWet, month.WetAfterWet))
        );
        Assert.Equal(
            [(0.5, 1, 0.5), (2 / 3.0, 1, 0)],
            _found.Months[..2].Select(month => (month.WetShare, month.ChanceAfterDry, month.ChanceAfterWet))
        );
    }

    [Fact]
    public void Days_carry_over_to_the_next_day_alone()
    {
        // Five pairs of neighbours, each value less its month's mean over its month's spread: a lowest of 4.4 C in January is (4.4 - 2.6) /
        // 2.471 = 0.728, and so on.
        double[] yesterday = [-1.0521344493758, 0.7284007726448, -0.6474673534620, -0.1324532357065, 1.0596258856520];
        double[] today = [0.7284007726448, -0.6474673534620, 0.9712010301930, 1.0596258856520, -0.9271726499455];
        Assert.Equal(Correlation(yesterday, today), _found.TminLag1, 1e-9);
        Assert.Equal(-0.8788328504, _found.TminLag1, 1e-9);
        Assert.Equal(-0.4054193730, _found.TmaxLag1, 1e-9);

        // Pearson's, by its definition.
        static double Correlation(double[] x, double[] y)
        {
            var (a, b) = (x.Average(), y.Average());
            double Sum(Func<int, double> of) => Enumerable.Range(0, x.Length).Sum(of);
            return Sum(i => (x[i] - a) * (y[i] - b)) / Math.Sqrt(Sum(i => (x[i] - a) * (x[i] - a)) * Sum(i => (y[i] - b) * (y[i] - b)));
        }
    }

    // 10 March is day 69.
    [Theory]
    [InlineData(0, 69)]
    [InlineData(0.1, 0)]
    public void A_night_at_the_threshold_is_the_last_of_spring(double tmin, int last)
    {
        DailyWeather[] spring =
        [
            .. Enumerable.Range(0, 181).Select(day => new DailyWeather(new DateOnly(2021, 1, 1).AddDays(day), day == 68 ? tmin : 5, 10, 0)),
        ];
        Assert.Equal(last, Assert.Single(WeatherStatistics.LastSpringNight(spring, 0)));
        Assert.Empty(WeatherStatistics.LastSpringNight(spring.AsSpan(1), 0));
    }

    [Fact]
    public void Rain_that_never_stops_and_never_starts_is_taken_as_every_other_day()
    {
        var month = new MonthWeather
        {
            WetAfterDry = 0,
            WetAfterWet = 1,
            RainShape = 1,
            RainScaleMm = 1,
            TminWetC = 0,
            TminDryC = 0,
            TmaxWetC = 0,
            TmaxDryC = 0,
            TminSdC = 1,
            TmaxSdC = 1,
        };
        Assert.Equal(0.5, month.WetShare);
        Assert.Equal(0.25, (month with { WetAfterDry = 0.1, WetAfterWet = 0.7 }).WetShare, 1e-12); // 0.1 / (1 + 0.1 - 0.7)
    }
}
