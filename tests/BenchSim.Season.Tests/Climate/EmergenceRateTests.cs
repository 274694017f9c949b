using BenchSim.Season.Climate;

namespace BenchSim.Season.Tests.Climate;

public class EmergenceRateTests
{
    // By hand, with base 10, optimum 30, ceiling 40: below the optimum T - 10; above it 20 (40 - T) / 10.
    [Theory]
    [InlineData(-5, 0)]
    [InlineData(10, 0)]
    [InlineData(10.5, 0.5)]
    [InlineData(22, 12)]
    [InlineData(30, 20)]
    [InlineData(32, 16)]
    [InlineData(35, 10)]
    [InlineData(40, 0)]
    [InlineData(55, 0)]
    public void The_rate_rises_to_the_optimum_and_falls_to_the_ceiling(double temperature, double degreeDays) =>
        Assert.Equal(degreeDays, EmergenceRate.At(temperature, 10, 30, 30, 40), 12);

    // The same, level from 30 to 35: 20 up to there, above it 20 (40 - T) / 5.
    [Theory]
    [InlineData(22, 12)]
    [InlineData(30, 20)]
    [InlineData(32, 20)]
    [InlineData(35, 20)]
    [InlineData(36, 16)]
    [InlineData(40, 0)]
    public void The_rate_is_level_from_the_optimum_to_the_end_of_the_plateau(double temperature, double degreeDays) =>
        Assert.Equal(degreeDays, EmergenceRate.At(temperature, 10, 30, 35, 40), 12);

    [Theory]
    [InlineData(20, 30, 30, 30, 40)]
    [InlineData(20, 10, 40, 40, 40)]
    [InlineData(20, 10, 40, 40, 35)]
    [InlineData(20, 10, 30, 29, 40)]
    [InlineData(20, 10, 30, 40, 40)]
    [InlineData(20, double.NaN, 30, 30, 40)]
    [InlineData(20, 10, double.NaN, 30, 40)]
    [InlineData(20, 10, 30, double.NaN, 40)]
    [InlineData(20, 10, 30, 30, double.NaN)]
    [InlineData(double.NaN, 10, 30, 30, 40)]
    public void Temperatures_out_of_order_or_not_a_number_are_refused(
        double temperature,
        double low,
        double best,
        double level,
        double high
    ) => Assert.Throws<ArgumentOutOfRangeException>(() => EmergenceRate.At(temperature, low, best, level, high));
}
