namespace BenchSim.Engine.Tests;

public class CountInTimeTests
{
    // Five periods: 3 in the first two, 5 in the third, 1 in the last two: 3 + 3 + 5 + 1 + 1 = 13.
    [Fact]
    public void The_sum_is_that_of_the_number_at_the_end_of_each_period()
    {
        var count = new CountInTime();
        count.Change(3, 5);
        count.Change(2, 3);
        count.Change(-4, 2);
        Assert.Equal(1, count.Value);
        Assert.Equal(13, count.Sum);
    }
}
