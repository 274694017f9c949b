using BenchSim.Season.Planning;
using BenchSim.Season.Stands;
using MathNet.Numerics;

namespace BenchSim.Season.Tests.Planning;

/// <summary>The law of a packet's germination: Beta(v n, (1 - v) n).</summary>
public class BetaLawTests
{
    private static readonly double[] s_chances =
    [
        1e-9,
        1e-6,
        0.001,
        0.01,
        0.1,
        0.25,
        0.4,
        0.5,
        0.6,
        0.75,
        0.9,
        0.99,
        0.999,
        1 - 1e-6,
        1 - 1e-9,
    ];

    // Beta(a, 1) has the quantile u^(1/a); Beta(1, b) has 1 - (1 - u)^(1/b); Beta(1, 1) is even between 0 and 1.
    [Theory]
    [InlineData(2, 1e-6)]
    [InlineData(3, 1e-6)]
    [InlineData(4, 1e-6)]
    [InlineData(10, 1e-7)]
    [InlineData(400, 1e-7)]
    public void Quantiles_in_closed_form(int sample, double closeness)
    {
        // All seeds but one came up, or all but one did not.
        var a = sample - 1.0;
        var (good, bad) = (new BetaLaw(a / sample, sample), new BetaLaw(1.0 / sample, sample));
        Assert.All(s_chances, u =>
        {
            Assert.Equal(Math.Pow(u, 1 / a), good.Quantile(u), closeness);
            Assert.Equal(1 - Math.Pow(1 - u, 1 / a), bad.Quantile(u), closeness);
        });
    }

    // Beta(1/2, 1/2) is the arcsine law: its quantile is sin^2(pi u / 2).
    [Fact]
    public void A_test_of_one_seed_is_the_arcsine_law()
    {
        var packet = new BetaLaw(0.5, 1);
        Assert.All(s_chances, u => Assert.Equal(Math.Pow(Math.Sin(Math.PI * u / 2), 2), packet.Quantile(u), 2e-6));
    }

    // The regularized incomplete beta function gives the chance back; a miss dx of the quantile changes it by the density times dx.
    [Theory]
    [InlineData(0.95, 400)]
    [InlineData(0.5, 400)]
    [InlineData(0.12, 50)]
    [InlineData(0.999, 400)]
    [InlineData(0.8, 10)]
    public void Quantiles_are_true_to_a_ten_millionth(double germination, int sample)
    {
        var packet = new BetaLaw(germination, sample);
        var (a, b) = (germination * sample, (1 - germination) * sample);
        var scale = SpecialFunctions.GammaLn(a + b) - SpecialFunctions.GammaLn(a) - SpecialFunctions.GammaLn(b);
        for (var point = 1; point < 1000; point++)
        {
            var x = packet.Quantile(point / 1000.0);
            var density = Math.Exp(scale + ((a - 1) * Math.Log(x)) + ((b - 1) * Math.Log(1 - x)));
            Assert.InRange((SpecialFunctions.BetaRegularized(a, b, x) - (point / 1000.0)) / density, -1e-7, 1e-7);
        }
    }

    [Fact]
    public void The_mean_is_the_packet_value_and_the_spread_that_of_its_test()
    {
        // Beta(380, 20): mean 0.95, variance 0.95 x 0.05 / 401.
        var packet = new BetaLaw(0.95, 400);
        double[] values = [.. Enumerable.Range(0, 10_000).Select(point => packet.Quantile((point + 0.5) / 10_000))];
        Assert.Equal(0.95, values.Average(), 1e-6);
        Assert.Equal(0.95 * 0.05 / 401, values.Average(value => (value - 0.95) * (value - 0.95)), 1e-7);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_packet_of_all_or_nothing_has_no_spread(double germination)
    {
        var packet = new BetaLaw(germination, 400);
        Assert.All(s_chances, u => Assert.Equal(germination, packet.Quantile(u)));
    }

    [Fact]
    public void Better_luck_is_never_a_worse_packet_however_far_out()
    {
        var packet = new BetaLaw(0.9, 400);
        var before = 0.0;
        for (var tenths = -150; tenths <= 150; tenths++)
        {
            var u = Math.Pow(10, tenths / 10.0);
            var value = packet.Quantile(u / (1 + u));
            Assert.InRange(value, before, 1);
            before = value;
        }
    }

    [Fact]
    public void A_test_without_seeds_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new BetaLaw(0.9, 0));
}
