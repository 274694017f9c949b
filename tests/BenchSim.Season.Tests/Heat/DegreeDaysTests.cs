using BenchSim.Season.Heat;

namespace BenchSim.Season.Tests.Heat;

/// <summary>The ends of the closed forms, by hand; what lies between is checked in tests/Published/Heat.</summary>
public class DegreeDaysTests
{
    // A day from 10 to 20: its middle 15 lies 5 above its lowest. A threshold at or below the lowest cuts nothing off; at or above the
    // highest nothing is left.
    [Theory]
    [InlineData(5, 10)]
    [InlineData(10, 5)]
    [InlineData(20, 0)]
    [InlineData(25, 0)]
    public void Thresholds_outside_a_day(double lower, double expected)
    {
        Assert.Equal(expected, DegreeDays.SingleSine(10, 20, lower), 1e-12);
        Assert.Equal(expected, DegreeDays.SingleTriangle(10, 20, lower), 1e-12);
        Assert.Equal(lower < 15 ? 15 - lower : 0, DegreeDays.Mean(10, 20, lower), 1e-12);
    }

    [Fact]
    public void A_day_of_one_temperature_has_no_shape()
    {
        Assert.Equal([2, 0, 0], new[] { 8.0, 10, 12 }.Select(lower => DegreeDays.SingleSine(10, 10, lower)));
        Assert.Equal([2, 0, 0], new[] { 8.0, 10, 12 }.Select(lower => DegreeDays.SingleTriangle(10, 10, lower)));
    }
}
