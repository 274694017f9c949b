using BenchSim.Season.Values;

namespace BenchSim.Season.Tests.Values;

/// <summary>Measured values in words. 0 C is 32 F, 1 K is 1.8 F, an inch is 25.4 mm.</summary>
public class UnitWordsTests
{
    [Theory]
    [InlineData(15.26, UnitSystem.Metric, "15.3 C")]
    [InlineData(15.26, UnitSystem.Imperial, "59.5 F")]
    [InlineData(-0.01, UnitSystem.Metric, "0 C")]
    [InlineData(-18, UnitSystem.Imperial, "-0.4 F")]
    [InlineData(4.4, UnitSystem.Imperial, "40 F")]
    [InlineData(-2.2, UnitSystem.Imperial, "28 F")]
    [InlineData(12.8, UnitSystem.Imperial, "55 F")]
    [InlineData(4.3888889, UnitSystem.Imperial, "39.9 F")]
    [InlineData(18.333, UnitSystem.Metric, "18.3 C")]
    public void Temperatures(double celsius, UnitSystem units, string words) => Assert.Equal(words, UnitWords.Temperature(celsius, units));

    [Theory]
    [InlineData(0.25, UnitSystem.Metric, "0.3 C", "+0.3 C")]
    [InlineData(0.25, UnitSystem.Imperial, "0.5 F", "+0.5 F")]
    public void Differences(double kelvin, UnitSystem units, string bare, string signed)
    {
        Assert.Equal((bare, signed), (UnitWords.Difference(kelvin, units), UnitWords.Change(kelvin, units)));
        Assert.Equal(signed.Replace('+', '-'), UnitWords.Change(-kelvin, units));
    }

    [Fact]
    public void Rain_of_a_year() =>
        Assert.Equal(
            ("820 mm", "32.3 inches"),
            (UnitWords.YearsRain(820.4, UnitSystem.Metric), UnitWords.YearsRain(820.4, UnitSystem.Imperial))
        );
}
