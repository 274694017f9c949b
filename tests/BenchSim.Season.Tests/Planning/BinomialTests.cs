using BenchSim.Season.Planning;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Tests.Planning;

/// <summary>The binomial law against sums done by hand.</summary>
public class BinomialTests
{
    // Ten coins: 8, 9 or 10 heads are 45 + 10 + 1 of 1024. All of 3 at 0.9: 0.9^3. At least one of 4 at 0.3: 1 - 0.7^4.
    [Theory]
    [InlineData(10, 0.5, 8, 56 / 1024.0)]
    [InlineData(3, 0.9, 3, 0.729)]
    [InlineData(4, 0.3, 1, 0.7599)]
    [InlineData(1, 0.3, 1, 0.3)]
    public void Chance_of_at_least_so_many(int tries, double chance, int wanted, double expected) =>
        Assert.Equal(expected, Binomial.AtLeast(tries, chance, wanted), 1e-12);

    [Theory]
    [InlineData(5, 0, 0, 1)]
    [InlineData(5, 0, 1, 0)]
    [InlineData(5, 1, 5, 1)]
    [InlineData(5, 1, 6, 0)]
    [InlineData(5, 0.5, 6, 0)]
    [InlineData(5, 0.5, 0, 1)]
    [InlineData(5, 0.5, -1, 1)]
    [InlineData(0, 0.5, 0, 1)]
    [InlineData(0, 0.5, 1, 0)]
    public void What_is_certain_is_certain(int tries, double chance, int wanted, double expected) =>
        Assert.Equal(expected, Binomial.AtLeast(tries, chance, wanted));

    // 4 tries at a quarter: 81, 108, 54, 12 and 1 of 256. At three quarters the same from the other end.
    [Theory]
    [InlineData(0.25, new[] { 81, 189, 243, 255, 256 })]
    [InlineData(0.75, new[] { 1, 13, 67, 175, 256 })]
    public void Cumulative_chances_by_hand(double chance, int[] of256)
    {
        var found = new double[5];
        Binomial.Cumulative(4, chance, found);
        Assert.All(found.Zip(of256), pair => Assert.Equal(pair.Second / 256.0, pair.First, 1e-15));
        Assert.Equal(1, found[4]);
    }

    [Fact]
    public void Without_luck_all_or_none_succeed()
    {
        var found = new double[4];
        Binomial.Cumulative(3, 0, found);
        Assert.Equal([1, 1, 1, 1], found);
        Binomial.Cumulative(3, 1, found);
        Assert.Equal([0, 0, 0, 1], found);
    }

    [Fact]
    public void Room_beyond_the_law_is_left_alone()
    {
        double[] found = [9, 9, 9, 9];
        Binomial.Cumulative(1, 0.5, found);
        Assert.Equal([0.5, 1, 9, 9], found);
    }

    // 2,000 coins: exactly 1,000 heads has chance C(2000, 1000) / 2^2000 = 0.01783901114585432; the two sides share the rest. Chances of
    // far fewer are below the smallest number, and 0.
    [Fact]
    public void Many_tries_lose_no_digits()
    {
        var found = new double[2001];
        Array.Fill(found, 7); // what stood there before is written over
        Binomial.Cumulative(2000, 0.5, found);
        Assert.Equal((1 - 0.01783901114585432) / 2, found[999], 1e-13);
        Assert.Equal((1 + 0.01783901114585432) / 2, found[1000], 1e-13);
        Assert.Equal(0, found[0]);
        Assert.Equal(1, found[2000]);
    }

    [Theory]
    [InlineData(1e-9, 0)]
    [InlineData(0.3, 0)]
    [InlineData(0.31640625, 0)] // 81 / 256 itself
    [InlineData(0.3165, 1)]
    [InlineData(0.9, 2)]
    [InlineData(0.99, 3)]
    [InlineData(0.999, 4)]
    public void The_smallest_number_whose_chance_reaches_a_draw(double draw, int expected) =>
        Assert.Equal(expected, Binomial.Quantile([81 / 256.0, 189 / 256.0, 243 / 256.0, 255 / 256.0, 1], draw));

    [Fact]
    public void A_kept_table_is_made_anew_for_another_chance()
    {
        // Of one coin at a half, a draw of 0.4 is no head; at three quarters it is one.
        var cache = new BinomialCache(1);
        Assert.Equal(
            [0, 1, 1, 0],
            [cache.Quantile(0.5, 0.4), cache.Quantile(0.75, 0.4), cache.Quantile(0.75, 0.4), cache.Quantile(0.5, 0.4)]
        );
    }
}
