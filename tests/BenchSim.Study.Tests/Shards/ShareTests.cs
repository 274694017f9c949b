using BenchSim.Study.Shards;

namespace BenchSim.Study.Tests.Shards;

public class ShareTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(10, 3)]
    [InlineData(203, 4)]
    [InlineData(1_000_000, 10_000)]
    [InlineData(7, 7)]
    public void Shares_follow_one_another_and_are_alike(int seasons, int of)
    {
        var next = 0;
        for (var number = 1; number <= of; number++)
        {
            (var first, var count) = new Share(number, of).SeasonsOf(seasons);
            Assert.Equal(next, first);
            Assert.InRange(count, seasons / of, (seasons + of - 1) / of);
            next = first + count;
        }

        Assert.Equal(seasons, next);
    }

    [Theory]
    [InlineData("2/4", 2, 4)]
    [InlineData("1/1", 1, 1)]
    [InlineData("10000/10000", 10_000, 10_000)]
    public void Reads_a_share(string text, int number, int of)
    {
        Assert.True(Share.TryParse(text, out var share));
        Assert.Equal(new Share(number, of), share);
        Assert.Equal(text, share.ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("2")]
    [InlineData("0/4")]
    [InlineData("5/4")]
    [InlineData("-1/4")]
    [InlineData("1/4/2")]
    [InlineData("1/10001")]
    [InlineData("1/99999999999")]
    [InlineData(" 1/4")]
    [InlineData("1.0/4")]
    public void Refuses_what_is_no_share(string text) => Assert.False(Share.TryParse(text, out _));
}
