using BenchSim.Season.Weather;

namespace Published.Weather;

/// <summary>Our statistics of the daily record against those computed independently with numpy (weather_reference.json).</summary>
public class ReferenceStatisticsTests
{
    [Theory]
    [InlineData("Seattle")]
    [InlineData("New York")]
    public void Statistics_of_the_record_equal_the_independent_ones(string place)
    {
        var reference = DataFolder.Json("weather_reference.json").GetProperty(place);
        var statistics = WeatherStatistics.Of(DataFolder.Days(place));
        for (var month = 1; month <= 12; month++)
        {
            var theirs = reference.GetProperty("monthly").GetProperty($"{month}");
            var ours = statistics.Months[month - 1];
            Assert.Equal(theirs.GetProperty("n_days").GetInt32(), ours.Days);
            Assert.Equal(theirs.GetProperty("tmin_mean").GetDouble(), ours.TminMeanC, 1e-4);
            Assert.Equal(theirs.GetProperty("tmax_mean").GetDouble(), ours.TmaxMeanC, 1e-4);
            Assert.Equal(theirs.GetProperty("tmin_sd").GetDouble(), ours.TminSdC, 1e-4);
            Assert.Equal(theirs.GetProperty("tmax_sd").GetDouble(), ours.TmaxSdC, 1e-4);
            Assert.Equal(theirs.GetProperty("wet_days").GetInt32(), ours.WetDays);
            Assert.Equal(theirs.GetProperty("n_dry_prev").GetInt32(), ours.AfterDry);
            Assert.Equal(theirs.GetProperty("n_wet_prev").GetInt32(), ours.AfterWet);
            Assert.Equal(theirs.GetProperty("p01").GetDouble(), ours.ChanceAfterDry, 1e-4);
            Assert.Equal(theirs.GetProperty("p11").GetDouble(), ours.ChanceAfterWet, 1e-4);
            Assert.Equal(theirs.GetProperty("precip_total_mm").GetDouble(), ours.RainMm, 1e-4);
            Assert.Equal(theirs.GetProperty("nights_tmin_lt_4.4").GetInt32(), ours.ColdNights);
            Assert.Equal(theirs.GetProperty("nights_tmin_le_0").GetInt32(), ours.FrostNights);
        }

        Assert.Equal(reference.GetProperty("lag1_residual").GetProperty("tmin").GetDouble(), statistics.TminLag1, 1e-4);
        Assert.Equal(reference.GetProperty("lag1_residual").GetProperty("tmax").GetDouble(), statistics.TmaxLag1, 1e-4);
    }

    [Theory]
    [InlineData("Seattle")]
    [InlineData("New York")]
    public void Last_spring_nights_equal_the_independent_ones(string place)
    {
        var years = DataFolder.Json("weather_reference.json").GetProperty(place).GetProperty("by_year");
        var days = DataFolder.Days(place);
        foreach (var (key, threshold) in new[] { ("0", 0.0), ("-2.2", -2.2), ("2.2", 2.2), ("4.4", 4.4), ("10", 10) })
        {
            var theirs = Enumerable
                .Range(2012, 4)
                .Select(year => years.GetProperty($"{year}").GetProperty($"last_spring_tmin_le_{key}").GetDateTime().DayOfYear);
            Assert.Equal(theirs, WeatherStatistics.LastSpringNight(days, threshold));
        }
    }

    [Theory]
    [InlineData("Seattle")]
    [InlineData("New York")]
    public void Gamma_amounts_equal_the_independent_maximum_likelihood(string place)
    {
        var reference = DataFolder.Json("weather_reference.json").GetProperty(place).GetProperty("monthly");
        var days = DataFolder.Days(place);
        for (var month = 1; month <= 12; month++)
        {
            var (shape, scale) = WeatherFit.Gamma([
                .. days.Where(day => day.Date.Month == month && day.RainMm > 0).Select(day => day.RainMm),
            ]);
            Assert.Equal(reference.GetProperty($"{month}").GetProperty("gamma_mle_shape").GetDouble(), shape, 1e-4);
            Assert.Equal(reference.GetProperty($"{month}").GetProperty("gamma_mle_scale").GetDouble(), scale, 1e-3);
        }
    }

    [Fact]
    public void Defaults_of_monthly_normals_are_the_averages_of_the_24_city_months()
    {
        var reference = DataFolder.Json("weather_reference.json");
        var months = new[] { "Seattle", "New York" }
            .SelectMany(place => reference.GetProperty(place).GetProperty("monthly").EnumerateObject().Select(month => month.Value))
            .ToList();
        double Average(string name) => months.Average(month => month.GetProperty(name).GetDouble());

        Assert.Equal(24, months.Count);
        Assert.Equal(WeatherNormals.DefaultTminSdC, Average("tmin_sd"), 0.005);
        Assert.Equal(WeatherNormals.DefaultTmaxSdC, Average("tmax_sd"), 0.005);
        Assert.Equal(WeatherNormals.DefaultWetLessDryTminC, Average("tmin_mean_wet") - Average("tmin_mean_dry"), 0.005);
        Assert.Equal(WeatherNormals.DefaultWetLessDryTmaxC, Average("tmax_mean_wet") - Average("tmax_mean_dry"), 0.005);
        Assert.Equal(WeatherNormals.DefaultRainShape, Average("gamma_mle_shape"), 0.005);

        // The default persistence is a published rule of thumb; the two cities agree with it to 0.02.
        Assert.Equal(WeatherNormals.DefaultRainPersistence, Average("p11") - Average("p01"), 0.02);
    }
}
