using BenchSim.Season.Climate;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Tests.Heat;

public class HourlyClimateTests
{
    private static readonly HouseAir s_heated = new(NightC: 12, DayC: 16, VentC: 24, DayLiftK: 8);

    [Fact]
    public void Coldest_at_three_hottest_at_fifteen_middle_at_nine_and_twenty_one()
    {
        var outdoors = Through(null, -2, 10);
        Assert.Equal(-2, outdoors[3], 1e-12);
        Assert.Equal(10, outdoors[15], 1e-12);
        Assert.Equal(4, outdoors[9], 1e-12);
        Assert.Equal(4, outdoors[21], 1e-12);
    }

    [Fact]
    public void Sun_lifts_from_six_to_eighteen_most_at_noon()
    {
        Assert.Equal(8, HourlyClimate.LiftK(12, 8), 1e-12);
        Assert.Equal(4, HourlyClimate.LiftK(8, 8), 1e-12);
        Assert.All([0, 3, 6, 18, 19, 23], hour => Assert.Equal(0, HourlyClimate.LiftK(hour, 8), 1e-12));
    }

    // At noon the lift is all there, whatever the day's cosine: the same outdoors all day.
    [Theory]
    [InlineData(0, 0, 12.0, 24, 12)] // heated
    [InlineData(15, 5, 12.0, 24, 20)] // warmed by the sun alone
    [InlineData(20, 8, 12.0, 24, 24)] // vented
    [InlineData(28, 8, 12.0, 24, 28)] // hotter outdoors than the vent set-point
    [InlineData(0, 0, null, 24, 0)] // unheated
    public void Air_of_a_house(double outdoor, double lift, double? heating, double vent, double expected) =>
        Assert.Equal(expected, Through(new HouseAir(heating, null, vent, lift), outdoor, outdoor)[12], 1e-12);

    [Fact]
    public void Day_set_point_holds_from_six_to_seventeen()
    {
        var inside = Through(s_heated with { DayLiftK = 0 }, -10, -10);
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
        Assert.Equal(expected, Through(s_heated, tmin, tmax)[hour], 1e-6);
    }

    [Fact]
    public void Day_set_point_defaults_to_night() => Assert.Equal(12, Through(s_heated with { DayC = null, DayLiftK = 0 }, -10, -10)[12]);

    [Fact]
    public void An_always_cold_day_needs_the_mean_difference_less_the_sun()
    {
        // Always below both set-points: 12 h x 12 + 12 h x 16 - 24 x 0 C mean = 336, less the sun's lift of 8 x sum of sin(pi k / 12), k
        // = 0..11, which is cot(pi / 24) = 7.5957541: 336 - 60.766 = 275.234 kelvin-hours.
        Assert.Equal(275.23397, Heating(s_heated, -3, 3), 1e-4);
        Assert.Equal(336, Heating(s_heated with { DayLiftK = 0 }, -3, 3), 1e-9);
    }

    [Fact]
    public void Nights_need_heat_that_a_sunny_afternoon_does_not()
    {
        // 12 C kept, outdoors 0 to 24 C: too cold by 12 times the cosine's depth at 22:00 to 08:00; the sun, 100 K at noon, makes up for
        // all from 07:00 on. Left are 22:00 to 06:00: sines of 15, 30, 45, 60, 75, 90, 75, 60 and 45 degrees, together 6.836935.
        Assert.Equal(12 * 6.836935, Heating(s_heated with { DayC = null, DayLiftK = 100 }, 0, 24), 1e-4);
    }

    [Fact]
    public void Warm_days_and_unheated_houses_need_none()
    {
        Assert.Equal(0, Heating(s_heated, 17, 30));
        Assert.Equal(0, Heating(s_heated with { NightC = null, DayC = null }, -20, -10));
    }

    [Fact]
    public void A_colder_set_point_never_needs_more_heat()
    {
        var before = double.MaxValue;
        for (var night = 20.0; night >= 4; night -= 0.5)
        {
            var now = Heating(s_heated with { NightC = night, DayC = null }, 2, 14);
            Assert.True(now <= before);
            before = now;
        }
    }

    // At the equator on 22 March the sun is 0.0018 radians from overhead at noon, its sines those of 15, 30, ... 165 degrees, together
    // cot(pi / 24) = 7.5957541. Above the air come 24 x 60 / pi x 0.082 x (1 + 0.033 cos(2 pi 81 / 365)) = 37.800 MJ/m2; through the air,
    // at a range of 16 K, 0.16 x 4 = 64 % of it: 24.192 MJ, at noon 24.192e6 / 3600 / 7.5957541 = 884.7 W/m2. A house that rises by
    // 0.01 K for a watt is 8.847 K above outdoors then, vents shut; the kelvin-hours of the day are 67.20, and of the 13 hours without sun
    // each brings a third of 5 x 67.20 W / 13 = 8.615 W/m2, which is 0.8615 K where 10 W hold a kelvin.
    [Fact]
    public void Heat_of_a_day_in_the_sun_by_hand()
    {
        var weather = new SeasonWeather(2);
        weather.Tmin.AsSpan().Fill(-20);
        weather.Tmax.AsSpan().Fill(-4);
        var outdoors = new Outdoors(new SunDays(0, Sun.Inland, new DateOnly(2027, 3, 22), 2));
        outdoors.Take(weather);
        var house = new HouseAir(12, null, 24, 0, new HouseSun(0.01, 0.1, 0));
        var (inside, kelvinHours) = (new double[24], new double[1]);

        // Unheated: the air itself. Outdoors -12 + 8 cos(15 degrees x hours from 15:00): at noon -12 + 5.657, at 03:00 -20.
        new AirHours(house with { NightC = null }).FillDay(outdoors, 0, inside);
        Assert.Equal(-12 + 5.657 + 8.847, inside[12], 2e-3);
        Assert.Equal(-20 + 0.8615, inside[3], 2e-3);

        // Always too cold: 24 x (12 + 12) less what the sun and the ground bring.
        new AirHours(house).FillHeating(outdoors, kelvinHours);
        Assert.Equal(576 - 67.20 - (13 * 0.8615), kelvinHours[0], 0.02);
    }

    private static double[] Through(HouseAir? house, double tmin, double tmax)
    {
        var inside = new double[24];
        new AirHours(house).FillDay(Alike(tmin, tmax), 0, inside);
        return inside;
    }

    private static double Heating(HouseAir house, double tmin, double tmax)
    {
        var kelvinHours = new double[1];
        new AirHours(house).FillHeating(Alike(tmin, tmax), kelvinHours);
        return kelvinHours[0];
    }

    // Days that are all alike.
    private static Outdoors Alike(double tmin, double tmax)
    {
        var weather = new SeasonWeather(2);
        weather.Tmin.AsSpan().Fill(tmin);
        weather.Tmax.AsSpan().Fill(tmax);
        var outdoors = new Outdoors(null);
        outdoors.Take(weather);
        return outdoors;
    }
}
