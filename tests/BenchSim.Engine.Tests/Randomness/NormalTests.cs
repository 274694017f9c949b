using BenchSim.Engine.Randomness;

namespace BenchSim.Engine.Tests.Randomness;

/// <summary>
/// Expected values: erfc(-z / sqrt 2) / 2 and its root, worked out with mpmath (python) at 40 digits. Wichura (1988) prints for AS 241
/// the same -0.67448975019608171, -3.0902323061678132 and -9.2623400897984076 at 0.25, 0.001 and 1e-20.
/// </summary>
public class NormalTests
{
    [Theory]
    [InlineData(-37.5, 4.6053530095819548e-308)]
    [InlineData(-30, 4.9067139271481871e-198)]
    [InlineData(-20, 2.7536241186062337e-89)]
    [InlineData(-10, 7.6198530241605261e-24)]
    [InlineData(-6, 9.8658764503769814e-10)]
    [InlineData(-5.7, 5.9903714010635282e-9)]
    [InlineData(-5.6, 1.0717590258310929e-8)]
    [InlineData(-5, 2.8665157187919391e-7)]
    [InlineData(-4, 3.1671241833119921e-5)]
    [InlineData(-3, 0.0013498980316300945)]
    [InlineData(-2, 0.022750131948179207)]
    [InlineData(-1, 0.15865525393145705)]
    [InlineData(-0.7, 0.24196365222307303)]
    [InlineData(-0.67, 0.2514288950953101)]
    [InlineData(-0.5, 0.3085375387259869)]
    [InlineData(-0.1, 0.46017216272297102)]
    [InlineData(0, 0.5)]
    [InlineData(0.1, 0.53982783727702898)]
    [InlineData(0.67, 0.7485711049046899)]
    [InlineData(0.7, 0.75803634777692697)]
    [InlineData(1, 0.84134474606854295)]
    [InlineData(3, 0.99865010196836991)]
    [InlineData(8, 0.99999999999999938)]
    public void Cumulative_agrees_with_40_digit_arithmetic(double z, double expected) =>
        Assert.Equal(0, (Normal.Cumulative(z) / expected) - 1, 2e-15 * Math.Max(1, z * z / 16));

    // Far out the square of z has more digits than a double: they must not be lost before the exponential is taken. Expected: the series of
    // the error function at the very double of z, in 900-digit arithmetic (python's decimal).
    [Theory]
    [InlineData(-33.3, 1.93050550592784e-243)]
    [InlineData(-21.7, 1.0258139526968736e-104)]
    [InlineData(-12.34, 2.7577941516989773e-35)]
    [InlineData(-5.9, 1.8175078630994284e-9)]
    public void Far_out_no_digit_is_lost(double z, double expected) => Assert.Equal(0, (Normal.Cumulative(z) / expected) - 1, 2e-15);

    [Theory]
    [InlineData(5e-324, -38.467405617144346)]
    [InlineData(1e-300, -37.047096299361199)]
    [InlineData(1e-100, -21.273453560965324)]
    [InlineData(1e-20, -9.2623400897984076)]
    [InlineData(1.4e-11, -6.6567230915181836)]
    [InlineData(1e-08, -5.6120012441747887)]
    [InlineData(1e-05, -4.2648907939228246)]
    [InlineData(0.001, -3.0902323061678135)]
    [InlineData(0.01, -2.3263478740408411)]
    [InlineData(0.074, -1.4466320671589785)]
    [InlineData(0.075, -1.4395314709384559)]
    [InlineData(0.076, -1.4325027208258116)]
    [InlineData(0.25, -0.67448975019608174)]
    [InlineData(0.4, -0.25334710313579974)]
    [InlineData(0.5000001, 2.5066282733116483e-7)]
    [InlineData(0.75, 0.67448975019608174)]
    [InlineData(0.924, 1.4325027208258119)]
    [InlineData(0.926, 1.4466320671589788)]
    [InlineData(0.975, 1.9599639845400539)]
    [InlineData(0.999, 3.0902323061678133)]
    [InlineData(0.999999, 4.7534243088170878)]
    public void Quantile_agrees_with_40_digit_arithmetic(double u, double expected) =>
        Assert.Equal(0, (Normal.Quantile(u) / expected) - 1, 1e-15);

    [Fact]
    public void The_middle_is_exactly_zero() => Assert.Equal(0.0, Normal.Quantile(0.5));

    [Fact]
    public void Far_out_the_chance_is_nought_or_one()
    {
        Assert.Equal(0, Normal.Cumulative(double.NegativeInfinity));
        Assert.Equal(0, Normal.Cumulative(-1e300));
        Assert.Equal(1, Normal.Cumulative(double.PositiveInfinity));
        Assert.True(double.IsNaN(Normal.Cumulative(double.NaN)));
    }

    // Rows of every length up to 40, in them chances of all branches and next to the ends of the middle one: to the bit each by itself.
    [Fact]
    public void A_row_of_chances_has_the_bits_of_each()
    {
        var random = new Random(5);
        double[] edges = [0.075, 0.925, 0.5, double.Epsilon, 1 - Math.Pow(2, -53), Math.Exp(-25), 1e-300];
        double[] chances =
        [
            .. edges,
            .. edges.Where(edge => edge > 1e-300).Select(Math.BitDecrement),
            .. edges.Where(edge => edge < 0.99).Select(Math.BitIncrement),
            .. Enumerable.Range(0, 5000).Select(_ => 1 - random.NextDouble()).Where(chance => chance < 1),
        ];
        var from = 0;
        for (var length = 0; from + length <= chances.Length; length = (length + 1) % 41)
        {
            var values = new double[length];
            Normal.Quantiles(chances.AsSpan(from, length), values);
            Assert.Equal(chances.AsSpan(from, length).ToArray().Select(Normal.Quantile), values);
            from += length;
        }

        Assert.True(from > 4900);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void A_row_with_a_chance_outside_the_open_interval_is_refused(double u)
    {
        double[] chances = [0.5, 0.5, u, 0.5, 0.5, 0.5, 0.5, 0.5];
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Quantiles(chances, new double[8]));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void A_chance_outside_the_open_interval_is_refused(double u) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Quantile(u));

    // exp(s z - s^2/2), s^2 = ln(1 + cv^2), worked out with mpmath at 40 digits.
    [Theory]
    [InlineData(0.1, 0.25, 0.70761380655753905)]
    [InlineData(0.5, 0.25, 0.97014250014533189)]
    [InlineData(0.9, 0.3, 1.3953201894673219)]
    [InlineData(0.001, 1.0, 0.05396817563020308)]
    [InlineData(0.999, 0.1, 1.3542931583191558)]
    [InlineData(0.3, 0, 1)]
    public void A_lognormal_factor_of_mean_one(double u, double cv, double expected) =>
        Assert.Equal(0, (Lognormal.MeanOne(u, cv) / expected) - 1, 1e-14);

    [Fact]
    public void Without_spread_the_factor_is_1_whatever_the_chance() => Assert.Equal(1, Lognormal.MeanOne(0, 0));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_senseless_spread_is_refused(double cv) => Assert.Throws<ArgumentOutOfRangeException>(() => Lognormal.MeanOne(0.5, cv));
}
