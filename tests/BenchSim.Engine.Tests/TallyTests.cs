namespace BenchSim.Engine.Tests;

public class TallyTests
{
    [Fact]
    public void Small_case_by_hand()
    {
        var tally = new Tally();
        foreach (var value in new[] { 3.1, 2.7, 3.6, 2.9, 3.3 })
        {
            tally.Add(value);
        }

        // Sum 15.6; deviations -0.02, -0.42, 0.48, -0.22, 0.18: squares 0.0004 + 0.1764 + 0.2304 + 0.0484 + 0.0324 = 0.488; / 4 = 0.122.
        Assert.Equal(5, tally.Count);
        Assert.Equal(3.12, tally.Mean, 12);
        Assert.Equal(0.122, tally.Variance, 12);
        Assert.Equal((2.7, 3.6), (tally.Min, tally.Max));
    }

    // NIST Statistical Reference Datasets, univariate, NumAcc4: 10000000.2, then 500 times 10000000.1 and 10000000.3; mean 10000000.2,
    // standard deviation 0.1. The textbook sum of squares loses every digit here.
    [Fact]
    public void Large_mean_and_small_spread_keep_their_digits()
    {
        var tally = new Tally();
        tally.Add(10000000.2);
        for (var i = 0; i < 500; i++)
        {
            tally.Add(10000000.1);
            tally.Add(10000000.3);
        }

        Assert.Equal(0, (tally.Mean / 10000000.2) - 1, 1e-15);
        Assert.Equal(0.1, Math.Sqrt(tally.Variance), 1e-8);
    }

    [Fact]
    public void Nothing_added_says_so()
    {
        var tally = new Tally();
        Assert.True(double.IsNaN(tally.Mean) && double.IsNaN(tally.Variance) && double.IsNaN(tally.Min) && double.IsNaN(tally.Max));
        tally.Add(-2);
        Assert.Equal((1L, -2.0, -2.0, -2.0), (tally.Count, tally.Mean, tally.Min, tally.Max));
        Assert.True(double.IsNaN(tally.Variance));
        tally.Clear();
        Assert.Equal(0, tally.Count);
        Assert.True(double.IsNaN(tally.Max));
    }

    [Fact]
    public void Level_by_hand()
    {
        // 2 on days 1-3, 5 on days 3-4, 0 on days 4-6: 2 x 2 + 5 x 1 = 9 over 5 days.
        var level = new Level(1, 2);
        level.Set(3, 5);
        level.Set(4, 0);
        Assert.Equal(9, level.Area(6), 12);
        Assert.Equal(1.8, level.Mean(6), 12);
        Assert.Equal((0.0, 5.0, 0.0), (level.Min, level.Max, level.Value));
        Assert.Throws<ArgumentOutOfRangeException>(() => level.Set(3.9, 1));

        level.Restart(6);
        level.Set(8, 4);
        Assert.Equal((0.0, 4.0), (level.Min, level.Max));
        Assert.Equal(2, level.Mean(10), 12);
        Assert.Equal(0, new Level(5, 0).Mean(5));
        Assert.Equal(7, new Level(5, 7).Mean(5));
    }
}
