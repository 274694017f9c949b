using BenchSim.Season.Weather;
using CsCheck;

namespace BenchSim.Season.Tests.Weather;

public class MeanPreservingCurveTests
{
    [Fact]
    public void The_mean_of_each_month_is_the_monthly_mean_exactly() =>
        Gen.Double[-40, 40]
            .Array[12]
            .Sample(monthly =>
            {
                var daily = MeanPreservingCurve.Daily(monthly);
                for (var month = 1; month <= 12; month++)
                {
                    var mean = Enumerable
                        .Range(1, DateTime.DaysInMonth(2001, month))
                        .Average(day => daily[MeanPreservingCurve.PlaceOf(new DateOnly(2001, month, day))]);
                    Assert.Equal(monthly[month - 1], mean, 1e-10);
                }
            });

    [Fact]
    public void A_year_without_seasons_is_flat() =>
        Assert.All(MeanPreservingCurve.Daily([7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7, 7]), day => Assert.Equal(7, day, 1e-12));

    [Fact]
    public void A_sine_year_is_followed_to_a_tenth_of_a_degree()
    {
        // Closed form: daily values of 10 - 12 cos(2 pi (d - 15) / 365) and their monthly means.
        static double Value(DateOnly date) => 10 - (12 * Math.Cos(2 * Math.PI * (date.DayOfYear - 15) / 365.0));
        var year = Enumerable.Range(0, 365).Select(day => new DateOnly(2001, 1, 1).AddDays(day)).ToList();
        var daily = MeanPreservingCurve.Daily([.. year.GroupBy(date => date.Month).Select(month => month.Average(Value))]);
        Assert.All(year, date => Assert.Equal(Value(date), daily[MeanPreservingCurve.PlaceOf(date)], 0.1));
    }

    [Fact]
    public void Neighbouring_days_differ_little_across_month_and_year_ends()
    {
        // A season of 24 C between its months moves at most about 24 pi / 365 = 0.21 C a day.
        var daily = MeanPreservingCurve.Daily([-2, -1, 4, 10, 16, 20, 22, 21, 17, 11, 5, 0]);
        for (var place = 0; place < 366; place++)
        {
            Assert.InRange(daily[(place + 1) % 366] - daily[place], -0.3, 0.3);
        }
    }

    [Fact]
    public void Leap_day_has_its_own_place_between_its_neighbours()
    {
        Assert.Equal(58, MeanPreservingCurve.PlaceOf(new DateOnly(2023, 2, 28)));
        Assert.Equal(59, MeanPreservingCurve.PlaceOf(new DateOnly(2024, 2, 29)));
        Assert.Equal(60, MeanPreservingCurve.PlaceOf(new DateOnly(2024, 3, 1)));
        Assert.Equal(60, MeanPreservingCurve.PlaceOf(new DateOnly(2023, 3, 1)));
        Assert.Equal(365, MeanPreservingCurve.PlaceOf(new DateOnly(2023, 12, 31)));
        Assert.Equal(365, MeanPreservingCurve.PlaceOf(new DateOnly(2024, 12, 31)));
    }
}
