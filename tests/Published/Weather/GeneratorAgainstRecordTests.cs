using System.Text.Json;
using BenchSim.Season.Weather;
using Xunit.Abstractions;

namespace Published.Weather;

/// <summary>
/// The generator, fitted to the daily record of two cities, against the independently computed statistics of that record
/// (weather_reference.json). 1,000 generated years (12,000 springs for the tests by sampling error), seed 20 fixed.
/// </summary>
public class GeneratorAgainstRecordTests(ITestOutputHelper output)
{
    // Sampling error of the generated side is small: a month's mean temperature over 1,000 years has a standard error below 0.07 C, a
    // share of wet days below 0.005, a chance of rain below 0.012 (July after a wet day: 2,700 days). The tolerances are those asked of
    // the generator.
    [Theory]
    [InlineData("Seattle")]
    [InlineData("New York")]
    public void Means_wet_days_and_persistence_of_each_month_are_reproduced(string place)
    {
        var reference = DataFolder.Json("weather_reference.json").GetProperty(place);
        var drawn = GeneratedYears.StatisticsOf(place);
        Say(place, reference.GetProperty("monthly"), drawn);
        for (var month = 1; month <= 12; month++)
        {
            var record = reference.GetProperty("monthly").GetProperty($"{month}");
            var ours = drawn.Months[month - 1];
            Assert.Equal(record.GetProperty("tmin_mean").GetDouble(), ours.TminMeanC, 0.5);
            Assert.Equal(record.GetProperty("tmax_mean").GetDouble(), ours.TmaxMeanC, 0.5);
            Assert.Equal(record.GetProperty("wet_fraction").GetDouble(), ours.WetShare, 0.03);
            Assert.Equal(record.GetProperty("p01").GetDouble(), ours.ChanceAfterDry, 0.05);
            Assert.Equal(record.GetProperty("p11").GetDouble(), ours.ChanceAfterWet, 0.05);
        }
    }

    [Theory]
    [InlineData("Seattle")]
    [InlineData("New York")]
    public void Day_to_day_persistence_of_temperature_is_reproduced(string place)
    {
        var record = DataFolder.Json("weather_reference.json").GetProperty(place).GetProperty("lag1_residual");
        var drawn = GeneratedYears.StatisticsOf(place);
        output.WriteLine(
            $"{place}, day to day, record and generated: lowest {record.GetProperty("tmin").GetDouble():0.000}, {drawn.TminLag1:0.000}; "
                + $"highest {record.GetProperty("tmax").GetDouble():0.000}, {drawn.TmaxLag1:0.000}"
        );
        Assert.Equal(record.GetProperty("tmin").GetDouble(), drawn.TminLag1, 0.08);
        Assert.Equal(record.GetProperty("tmax").GetDouble(), drawn.TmaxLag1, 0.08);
    }

    [Theory]
    [InlineData("Seattle")]
    [InlineData("New York")]
    public void Spread_and_rain_of_each_month_are_reproduced(string place)
    {
        // A generator with the right means and the wrong spread would hide cold nights. A month's spread in the record has a standard
        // error of about 10 %: 124 days that carry over with correlation r = 0.67 count as 124 (1 - r^2) / (1 + r^2) = 47, and the
        // standard error is 1 / sqrt(2 * 47). So a month may be 25 % off (two and a half standard errors), and the mean of the twelve 8 %
        // (nearly three of theirs).
        var reference = DataFolder.Json("weather_reference.json").GetProperty(place).GetProperty("monthly");
        var drawn = GeneratedYears.StatisticsOf(place);
        var (tmin, tmax, rain) = (new double[12], new double[12], new double[12]);
        for (var month = 1; month <= 12; month++)
        {
            var record = reference.GetProperty($"{month}");
            var ours = drawn.Months[month - 1];
            tmin[month - 1] = ours.TminSdC / record.GetProperty("tmin_sd").GetDouble();
            tmax[month - 1] = ours.TmaxSdC / record.GetProperty("tmax_sd").GetDouble();
            rain[month - 1] = ours.RainMm / ours.WetDays / record.GetProperty("wet_day_mean_mm").GetDouble();
        }

        Assert.All(tmin.Concat(tmax), ratio => Assert.Equal(1, ratio, 0.25));
        Assert.Equal(1, tmin.Average(), 0.08);
        Assert.Equal(1, tmax.Average(), 0.08);

        // The mean of a fitted gamma distribution is the mean of the amounts exactly; what is left is the luck of 1,000 years, below 2 %.
        Assert.All(rain, ratio => Assert.Equal(1, ratio, 0.05));
    }

    /// <summary>
    /// Monte Carlo test: the record is four years, so its figure is placed among the figures of 3,000 blocks of four generated springs.
    /// Two-sided chance of a figure as far out = twice the smaller tail, record included (0.0007 at least). Six tests (two cities; nights
    /// below 4.4 C in April and in May; last night at or below 0 C), Bonferroni: each refuses below 0.01 / 6, so a right generator would
    /// be refused with a chance of at most 1 %.
    /// </summary>
    [Theory]
    [InlineData("Seattle")]
    [InlineData("New York")]
    public void Cold_nights_and_last_frost_lie_within_the_sampling_error_of_four_years(string place)
    {
        var record = Spring.OfRecord(DataFolder.Days(place));
        var drawn = Spring.Drawn(place);
        Assert.Equal(4, record.Count);
        Assert.False(IsRefused(record, drawn.True, spring => spring.ColdNightsOfApril, $"{place}, nights below 4.4 C in April"));
        Assert.False(IsRefused(record, drawn.True, spring => spring.ColdNightsOfMay, $"{place}, nights below 4.4 C in May"));
        Assert.False(IsRefused(record, drawn.True, spring => spring.LastFrost, $"{place}, day of the last night at or below 0 C"));

        // The test has teeth: it refuses nights three degrees too cold or too warm.
        Assert.All([drawn.Colder, drawn.Warmer], wrong =>
            Assert.True(
                IsRefused(record, wrong, spring => spring.ColdNightsOfApril) || IsRefused(record, wrong, spring => spring.LastFrost)
            )
        );
    }

    private void Say(string place, JsonElement record, WeatherStatistics drawn)
    {
        double Worst(string name, Func<MonthStatistics, double> ours) =>
            Enumerable
                .Range(1, 12)
                .Max(month => Math.Abs(record.GetProperty($"{month}").GetProperty(name).GetDouble() - ours(drawn.Months[month - 1])));
        output.WriteLine(
            $"{place}, worst month: mean lowest {Worst("tmin_mean", month => month.TminMeanC):0.00}, mean highest "
                + $"{Worst("tmax_mean", month => month.TmaxMeanC):0.00}, share of wet days "
                + $"{Worst("wet_fraction", month => month.WetShare):0.000}, chance of rain after a dry day "
                + $"{Worst("p01", month => month.ChanceAfterDry):0.000}, after a wet day "
                + $"{Worst("p11", month => month.ChanceAfterWet):0.000}"
        );
    }

    private bool IsRefused(List<Spring> record, List<Spring> drawn, Func<Spring, int> figure, string? name = null)
    {
        var seen = record.Sum(figure);
        var blocks = drawn.Chunk(4).Select(block => block.Sum(figure)).ToList();
        var low = blocks.Count(block => block <= seen) + 1.0;
        var high = blocks.Count(block => block >= seen) + 1.0;
        var chance = Math.Min(1, 2 * Math.Min(low, high) / (blocks.Count + 1));
        if (name is not null)
        {
            output.WriteLine(
                $"{name}, a year: record {record.Average(figure):0.0}, generated {drawn.Average(figure):0.0}, p = {chance:0.00}"
            );
        }

        return chance < 0.01 / 6;
    }
}
