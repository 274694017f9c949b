using BenchSim.Engine.Randomness;
using BenchSim.Season.Weather;
using MathNet.Numerics;

namespace BenchSim.Season.Tests.Weather;

public class GammaQuantileTableTests
{
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.4386)]
    [InlineData(0.74)]
    [InlineData(1)]
    [InlineData(2.5)]
    [InlineData(20)]
    [InlineData(100)]
    public void Quantiles_are_true_to_five_parts_in_a_million(double shape)
    {
        // The regularized incomplete gamma function gives the chance back. An error dx of x changes it by f(x) dx.
        var table = new GammaQuantileTable(shape);
        for (var probit = -5.0; probit <= 5; probit += 0.0371)
        {
            var x = table.AtProbit(probit);
            if (x < 1e-12)
            {
                continue;
            }

            var logDensity = (shape * Math.Log(x)) - x - SpecialFunctions.GammaLn(shape);
            var miss =
                probit < 0
                    ? SpecialFunctions.GammaLowerRegularized(shape, x) - Normal.Cumulative(probit)
                    : Normal.Cumulative(-probit) - SpecialFunctions.GammaUpperRegularized(shape, x);
            Assert.InRange(miss / Math.Exp(logDensity), -5e-6, 5e-6);
        }
    }

    [Fact]
    public void Shape_one_is_the_exponential_distribution()
    {
        var table = new GammaQuantileTable(1);
        for (var chance = 0.001; chance < 1; chance += 0.01)
        {
            Assert.Equal(1, table.AtProbit(Normal.Quantile(chance)) / -Math.Log(1 - chance), 2e-6);
        }
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.6)]
    [InlineData(30)]
    public void More_luck_is_never_less_rain(double shape)
    {
        var table = new GammaQuantileTable(shape);
        var before = 0.0;
        for (var probit = -9.0; probit <= 9; probit += 0.01)
        {
            var x = table.AtProbit(probit);
            Assert.True(x >= before && x > 0 && double.IsFinite(x));
            before = x;
        }
    }
}
