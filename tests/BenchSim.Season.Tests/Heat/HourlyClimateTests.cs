using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Tests.Heat;

public class HourlyClimateTests
{
    private static readonly House Heated = new() { Id = "main", Name = "Main", NightC = 12, DayC = 16, VentC = 24, DayLiftK = 8 };

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
        HourlyClimate.InsideDay(Heated with { DayLiftK = 0 }, -10, -10, inside);
        Assert.Equal([12, 12, 12, 12, 12, 12, 16, 16, 16, 16, 16, 16, 16, 16, 16, 16, 16, 16, 12, 12, 12, 12, 12, 12], inside);
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
    public void A_span_of_another_length_is_refused() => Assert.Throws<ArgumentException>(() => HourlyClimate.InsideDay(Heated, 0, 10, new double[23]));
}
