using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Tests.Doubt;

public sealed class ValueRangeTests
{
    // One in twenty below the low end and one in twenty above the high one; the middle of a lognormal is the root of the product.
    [Fact]
    public void A_lognormal_range_has_a_twentieth_beyond_either_end()
    {
        var range = new ValueRange(RangeShape.Lognormal, 20, 80, 30);
        Assert.Equal(20, range.Quantile(0.05), 1e-6);
        Assert.Equal(40, range.Quantile(0.5), 1e-6);
        Assert.Equal(80, range.Quantile(0.95), 1e-6);
    }

    // The odds of 0.2 and 0.8 are 1/4 and 4: their middle is 1, a half.
    [Fact]
    public void A_range_of_a_share_is_one_of_odds()
    {
        var range = new ValueRange(RangeShape.Odds, 0.2, 0.8, 0.7);
        Assert.Equal(0.2, range.Quantile(0.05), 1e-6);
        Assert.Equal(0.5, range.Quantile(0.5), 1e-6);
        Assert.Equal(0.8, range.Quantile(0.95), 1e-6);
    }

    // On 0 to 4 with the top at 1 a quarter lies below 1; at u = 1/16 the root of 1/16 x 4 x 1 is 1/2; at u = 3/4 it is 4 less the root of
    // 1/4 x 4 x 3.
    [Theory]
    [InlineData(0.25, 1)]
    [InlineData(0.0625, 0.5)]
    [InlineData(0.75, 2.2679491924311228)]
    public void A_triangular_range_is_likeliest_as_given(double u, double expected) =>
        Assert.Equal(expected, new ValueRange(RangeShape.Triangular, 0, 4, 1).Quantile(u), 1e-9);

    [Fact]
    public void A_uniform_range_is_even() => Assert.Equal(2.5, new ValueRange(RangeShape.Uniform, 2, 4, 3).Quantile(0.25), 1e-12);

    // Remembered days have a deviation of 0.15: 40 days may be 40 x exp(-1.645 x 0.15) to 40 x exp(1.645 x 0.15), 31.3 to 51.2.
    [Fact]
    public void A_value_from_memory_has_the_range_of_the_judgement()
    {
        var column = DoubtColumn.All.Single(each => string.Equals(each.Field.Name, "days_to_ready", StringComparison.Ordinal));
        var range = column.RangeOf(40, Trust.Memory)!.Value;
        Assert.Equal(31.25, range.Low, 0.01);
        Assert.Equal(51.19, range.High, 0.01);
        Assert.Null(column.RangeOf(40, Trust.User));
    }

    [Fact]
    public void Nothing_that_is_not_there_is_in_doubt()
    {
        var share = DoubtColumn.All.Single(each => string.Equals(each.Field.Name, "stand_loss", StringComparison.Ordinal));
        Assert.Null(share.RangeOf(0, Trust.Assumption));
        Assert.NotNull(share.RangeOf(0.1, Trust.Assumption));
    }
}
