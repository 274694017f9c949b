using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Tests.Heat;

public class HourlyClimateTests
{
    private static readonly HouseAir Heated = new(NightC: 12, DayC: 16, VentC: 24, DayLiftK: 8);

    [Fact]
    public void Coldest_at_three_hottest_at_fifteen_middle_at_nine_and_twenty_one()
    {
        Assert.Equal(-2, HourlyClimate.OutdoorC(3, -2, 10), 1e-12);
        Assert.Equal(10, HourlyClimate.OutdoorC(15, -2, 10), 1e-12);
        Assert.Equal(4, HourlyClimate.OutdoorC(9, -2, 10), 1e-12);
        Assert.Equal(4, HourlyClimate.OutdoorC(21, -2, 10), 1e-12);
    }

    [Fact]
    public void Sun_lifts_from_six_to_eighteen_most_at_noon()
    {
        Assert.Equal(8, HourlyClimate.LiftK(12, 8), 1e-12);
        Assert.Equal(4, HourlyClimate.LiftK(8, 8), 1e-12);
        Assert.All([0, 3, 6, 18, 19, 23], hour => Assert.Equal(0, HourlyClimate.LiftK(hour, 8), 1e-12));
    }

    [Theory]
    [InlineData(0, 0, 12.0, 24, 12)] // heated
    [InlineData(15, 5, 12.0, 24, 20)] // warmed by the sun alone
    [InlineData(20, 8, 12.0, 24, 24)] // vented
    [InlineData(28, 8, 12.0, 24, 28)] // hotter outdoors than the vent set-point
    public void Air_of_a_house(double outdoor, double lift, double heating, double vent, double expected)
    {
        Assert.Equal(expected, HourlyClimate.InsideC(outdoor, lift, heating, vent));
        Assert.Equal(Math.Min(outdoor + lift, Math.Max(vent, outdoor)), HourlyClimate.InsideC(outdoor, lift, null, vent));
    }

    [Fact]
    public void Day_set_point_holds_from_six_to_seventeen()
    {
        var inside = new double[24];
        new AirHours(Heated with { DayLiftK = 0 }).FillDay(-10, -10, inside);
        Assert.Equal([12, 12, 12, 12, 12, 12, 16, 16, 16, 16, 16, 16, 16, 16, 16, 16, 16, 16, 12, 12, 12, 12, 12, 12], inside);
    }

    // 12 C by night, 16 C by day, vents at 24 C, at most 8 K of sun. Outdoors 8 to 24 C: 16 + 8 cos(15 degrees times the hours from 15:00);
    // the root of a half of 8 is 5.656854. Outdoors 20 to 32 C it is hotter than the vents are set to.
    [Theory]
    [InlineData(8, 24, 0, 12)] // 16 - 5.66 = 10.34: heated
    [InlineData(8, 24, 3, 12)] // 8: heated
    [InlineData(8, 24, 6, 16)] // 10.34 and no sun yet: heated to the day's set-point
    [InlineData(8, 24, 9, 16 + 5.656854)] // 16, and 8 sin 45 of sun
    [InlineData(8, 24, 12, 24)] // 21.66 + 8: vented
    [InlineData(8, 24, 15, 24)]
    [InlineData(8, 24, 17, 24)] // 16 + 6.93 + 2.07
    [InlineData(8, 24, 18, 16 + 5.656854)]
    [InlineData(8, 24, 21, 16)]
    [InlineData(20, 32, 15, 32)]
    [InlineData(20, 32, 9, 26)]
    [InlineData(20, 32, 3, 20)]
    public void Air_of_a_house_through_a_day(double tmin, double tmax, int hour, double expected)
    {
        Assert.Equal(expected, HourlyClimate.InsideC(Heated, hour, tmin, tmax), 1e-6);
        var inside = new double[24];
        new AirHours(Heated).FillDay(tmin, tmax, inside);
        Assert.Equal(expected, inside[hour], 1e-6);
    }

    [Fact]
    public void A_day_at_once_is_the_day_hour_by_hour()
    {
        HouseAir[] houses = [Heated, Heated with { DayC = null }, Heated with { NightC = null, DayC = null }, Heated with { DayC = 10 }];
        var (outdoor, inside) = (new double[24], new double[24]);
        new AirHours(null).FillDay(-2, 18, outdoor);
        Assert.All(outdoor.Index(), hour => Assert.Equal(8 + (10 * Math.Cos(Math.PI * (hour.Index - 15) / 12)), hour.Item, 1e-12));
        foreach (var house in houses)
        {
            new AirHours(house).FillDay(-2, 18, inside);
            Assert.All(inside.Index(), hour => Assert.Equal(HourlyClimate.InsideC(house, hour.Index, -2, 18), hour.Item, 1e-12));
        }
    }

    [Fact]
    public void Day_set_point_defaults_to_night() =>
        Assert.Equal(12, HourlyClimate.InsideC(Heated with { DayC = null, DayLiftK = 0 }, 12, -10, -10));

    [Fact]
    public void An_always_cold_day_needs_the_mean_difference_less_the_sun()
    {
        // Always below both set-points: 12 h x 12 + 12 h x 16 - 24 x 0 C mean = 336, less the sun's lift of 8 x sum of sin(pi k / 12), k
        // = 0..11, which is cot(pi / 24) = 7.5957541: 336 - 60.766 = 275.234 kelvin-hours.
        Assert.Equal(275.23397, HourlyClimate.HeatingKelvinHours(Heated, -3, 3), 1e-4);
        Assert.Equal(336, HourlyClimate.HeatingKelvinHours(-3, 3, 0, 12, 16), 1e-9);
    }

    [Fact]
    public void Nights_need_heat_that_a_sunny_afternoon_does_not()
    {
        // 12 C kept, outdoors 0 to 24 C: too cold by 12 times the cosine's depth at 22:00 to 08:00; the sun, 100 K at noon, makes up for
        // all from 07:00 on. Left are 22:00 to 06:00: sines of 15, 30, 45, 60, 75, 90, 75, 60 and 45 degrees, together 6.836935.
        Assert.Equal(12 * 6.836935, HourlyClimate.HeatingKelvinHours(0, 24, 100, 12, 12), 1e-4);
    }

    [Fact]
    public void Warm_days_and_unheated_houses_need_none()
    {
        Assert.Equal(0, HourlyClimate.HeatingKelvinHours(Heated, 17, 30));
        Assert.Equal(0, HourlyClimate.HeatingKelvinHours(Heated with { NightC = null, DayC = null }, -20, -10));
    }

    [Fact]
    public void A_colder_set_point_never_needs_more_heat()
    {
        var before = double.MaxValue;
        for (var night = 20.0; night >= 4; night -= 0.5)
        {
            var now = HourlyClimate.HeatingKelvinHours(2, 14, 8, night, night);
            Assert.True(now <= before);
            before = now;
        }
    }

    [Fact]
    public void A_span_of_another_length_is_refused() =>
        Assert.Throws<ArgumentException>(() => new AirHours(Heated).FillDay(0, 10, new double[23]));
}
