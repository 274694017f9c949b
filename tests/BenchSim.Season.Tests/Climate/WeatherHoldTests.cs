using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Tests.Climate;

/// <summary>
/// The weather holds of docs/model.md section 7, each at its edge. Three nights of forecast, crops that go to the table above 5 C and
/// leave above 3 C.
/// </summary>
public class WeatherHoldTests
{
    private static readonly SiteRules s_rules = new()
    {
        ForecastNights = 3,
        WetLimitMm = 25,
        CoverGainK = 0,
    };

    // The round of day 10 looks at the nights after days 10, 11 and 12.
    [Theory]
    [InlineData(9, 4.9, false)]
    [InlineData(10, 4.9, true)]
    [InlineData(12, 4.9, true)]
    [InlineData(13, 4.9, false)]
    [InlineData(11, 5, false)]
    public void A_forecast_night_too_cold_keeps_trays_from_the_table(int night, double celsius, bool isHeld)
    {
        double[] nights = [.. Enumerable.Repeat(10.0, 20)];
        nights[night] = celsius;
        Assert.Equal(isHeld, WeatherHold.FromTable(nights, 10, s_rules, 5));
    }

    // Under a cover of 2 K a night of 3 C is one of 5 C.
    [Theory]
    [InlineData(3, false)]
    [InlineData(2.9, true)]
    public void The_cover_counts_for_the_table(double celsius, bool isHeld) =>
        Assert.Equal(isHeld, WeatherHold.FromTable([celsius, 10, 10], 0, s_rules with { CoverGainK = 2 }, 5));

    [Theory]
    [InlineData(4.9, 6.9)]
    [InlineData(5, 5)]
    [InlineData(6, 6)]
    public void The_cover_is_on_in_nights_too_cold_to_go_out(double celsius, double under) =>
        Assert.Equal(under, WeatherHold.UnderCover(celsius, s_rules with { CoverGainK = 2 }, 5), 1e-12);

    // For the field the lowest of days 11, 12 and 13 counts, and the cover of the table does not help.
    [Theory]
    [InlineData(10, 2.9, false)]
    [InlineData(11, 2.9, true)]
    [InlineData(13, 2.9, true)]
    [InlineData(14, 2.9, false)]
    [InlineData(12, 3, false)]
    public void A_forecast_night_too_cold_keeps_trays_from_the_field(int day, double celsius, bool isHeld)
    {
        var weather = Mild();
        weather.Tmin[SeasonWeather.LeadDays + day] = celsius;
        Assert.Equal(isHeld, WeatherHold.FromField(weather, 10, s_rules with { CoverGainK = 2 }, 3, FieldCover.Open));
    }

    // Each cover of the field adds its own: 1, 2 and 3 K to the 3 C that the crop wants.
    [Theory]
    [InlineData(FieldCover.Open, 3)]
    [InlineData(FieldCover.RowCover, 2)]
    [InlineData(FieldCover.LowTunnel, 1)]
    [InlineData(FieldCover.Tunnel, 0)]
    public void The_cover_of_the_field_counts_there(FieldCover cover, double enough)
    {
        var weather = Mild();
        var rules = s_rules with { RowCoverGainK = 1, LowTunnelGainK = 2, TunnelGainK = 3 };
        weather.Tmin[SeasonWeather.LeadDays + 12] = enough;
        Assert.False(WeatherHold.FromField(weather, 10, rules, 3, cover));
        weather.Tmin[SeasonWeather.LeadDays + 12] = enough - 0.1;
        Assert.True(WeatherHold.FromField(weather, 10, rules, 3, cover));
    }

    // The rain of days 8 and 9 counts, together.
    [Theory]
    [InlineData(7, 30, 0, false)]
    [InlineData(8, 25, 0, false)]
    [InlineData(8, 25, 0.1, true)]
    [InlineData(9, 25.1, 0, true)]
    [InlineData(10, 30, 0, false)]
    public void The_rain_of_the_two_days_before_keeps_trays_from_the_field(int day, double rain, double rainOfDay9, bool isHeld)
    {
        var weather = Mild();
        weather.Rain[SeasonWeather.LeadDays + 9] = rainOfDay9;
        weather.Rain[SeasonWeather.LeadDays + day] = rain;
        Assert.Equal(isHeld, WeatherHold.IsWet(weather, 10, s_rules));
        Assert.Equal(isHeld, WeatherHold.FromField(weather, 10, s_rules, 3, FieldCover.Open));
    }

    // Cold holds under a tunnel as elsewhere, rain does not.
    [Theory]
    [InlineData(FieldCover.Open, 10, true)]
    [InlineData(FieldCover.RowCover, 10, true)]
    [InlineData(FieldCover.LowTunnel, 10, true)]
    [InlineData(FieldCover.Tunnel, 10, false)]
    [InlineData(FieldCover.Tunnel, 1, true)]
    public void Rain_does_not_keep_trays_from_a_tunnel(FieldCover cover, double night, bool isHeld)
    {
        var weather = Mild();
        weather.Rain[SeasonWeather.LeadDays + 9] = 40;
        weather.Tmin[SeasonWeather.LeadDays + 12] = night;
        Assert.Equal(isHeld, WeatherHold.FromField(weather, 10, s_rules, 3, cover));
    }

    [Fact]
    public void Past_the_end_the_last_day_holds()
    {
        var weather = new SeasonWeather(2);
        (weather.Tmin[^1], weather.Tmax[^1], weather.Rain[^1]) = (1, 2, 3);
        (weather.Tmin[0], weather.Tmax[0], weather.Rain[0]) = (4, 5, 6);
        Assert.Equal((1, 2, 3), (weather.TminOf(1), weather.TmaxOf(1), weather.RainOf(1)));
        Assert.Equal((1, 2, 3), (weather.TminOf(9), weather.TmaxOf(9), weather.RainOf(9)));
        Assert.Equal((4, 5, 6), (weather.TminOf(-30), weather.TmaxOf(-30), weather.RainOf(-30)));
        Assert.Equal((2, 32), (weather.Days, weather.Tmin.Length));
    }

    private static SeasonWeather Mild()
    {
        var weather = new SeasonWeather(20);
        Array.Fill(weather.Tmin, 10);
        Array.Fill(weather.Tmax, 20);
        return weather;
    }
}
