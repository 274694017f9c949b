using BenchSim.Season.Climate;

namespace BenchSim.Season.Tests.Climate;

public class HeatTableTests
{
    // Ten degree-days a day: forty take four days to the minute, at whatever time of day they begin.
    [Theory]
    [InlineData(8)]
    [InlineData(9.5)]
    [InlineData(17.5)]
    public void Whole_days_of_heat_are_reached_at_the_same_time_of_day(double hourOfDay)
    {
        var table = new HeatTable(24 * 50);
        table.Fill([.. Enumerable.Repeat(10.0, 24 * 50)]);
        for (var day = 0; day < 40; day++)
        {
            var from = (24 * day) + hourOfDay;
            var reached = table.FirstAtOrAbove(table.At(from) + HeatTable.Units(40), from);

            Assert.True(reached <= from + 96, $"day {day}: {reached - from} hours");
            Assert.Equal(from + 96, reached, 4);
        }
    }

    [Fact]
    public void Heat_is_summed_by_the_hour_and_linear_between()
    {
        // 24 degree-days a day are one an hour; 48 are two; none in the last hours.
        var table = new HeatTable(6);
        table.Fill([24, 24, 48, 48, 0, 0]);
        Assert.Equal(6, table.Hours);
        Assert.Equal([0, 1, 2, 4, 6, 6, 6], Enumerable.Range(0, 7).Select(hour => table.At(hour) / 1e6));
        Assert.Equal([0.25, 1.5, 2.5, 5.5, 6], new[] { 0.25, 1.5, 2.25, 3.75, 4.5 }.Select(hour => table.At(hour) / 1e6));
        Assert.Equal(6_000_000, table.At(99.5));
    }

    // One millionth of a degree-day an hour: between hours a half goes up, less goes down.
    [Theory]
    [InlineData(0.25, 0)]
    [InlineData(0.5, 1)]
    [InlineData(0.75, 1)]
    [InlineData(1.4375, 1)]
    [InlineData(1.5, 2)]
    public void Parts_of_the_smallest_unit_are_rounded(double hour, long units)
    {
        var table = new HeatTable(3);
        table.Fill([24e-6, 24e-6, 24e-6]);
        Assert.Equal(units, table.At(hour));
    }

    [Fact]
    public void A_level_is_reached_at_the_first_instant_that_has_it()
    {
        var table = new HeatTable(8);
        table.Fill([24, 24, 48, 48, 0, 0, 24, 0]);
        Assert.Equal(0, table.FirstAtOrAbove(0, 0));
        Assert.Equal(3, table.FirstAtOrAbove(2_000_000, 3)); // there already
        Assert.Equal(2, table.FirstAtOrAbove(2_000_000, 0));
        Assert.Equal(2.5, table.FirstAtOrAbove(3_000_000, 0.5), 6);
        Assert.Equal(4, table.FirstAtOrAbove(6_000_000, 1));
        Assert.Equal(5.5, table.FirstAtOrAbove(6_000_000, 5.5));
        Assert.Equal(6.5, table.FirstAtOrAbove(6_500_000, 5), 6); // past two hours without heat
        Assert.Equal(7, table.FirstAtOrAbove(7_000_000, 6.25));
        Assert.Equal(double.PositiveInfinity, table.FirstAtOrAbove(7_000_001, 0));
        Assert.Equal(double.PositiveInfinity, table.FirstAtOrAbove(7_000_001, 20));
    }

    [Theory]
    [InlineData(1.2345674, 1_234_567)]
    [InlineData(1.2345676, 1_234_568)]
    [InlineData(0, 0)]
    public void Degree_days_in_whole_millionths(double degreeDays, long units) => Assert.Equal(units, HeatTable.Units(degreeDays));

    // Hours that are filled as they are asked for give what hours filled at once give, and each is asked for once, in order.
    [Fact]
    public void Filled_when_asked_it_is_the_same()
    {
        const int Hours = 1000;
        double[] rates = [.. Enumerable.Range(0, Hours).Select(hour => 12 + (10 * Math.Sin(hour)))];
        var (whole, lazy, asked) = (new HeatTable(Hours), new HeatTable(Hours), 0);
        whole.Fill(rates);
        for (var round = 0; round < 2; round++)
        {
            asked = 0;
            lazy.Start(Fill);
            Assert.Equal(whole.At(30.5), lazy.At(30.5));
            Assert.InRange(asked, 31, Hours - 1);
            Assert.Equal(whole.FirstAtOrAbove(HeatTable.Units(300), 31), lazy.FirstAtOrAbove(HeatTable.Units(300), 31));
            Assert.Equal(
                Enumerable.Range(0, Hours + 9).Select(hour => whole.At(hour)),
                Enumerable.Range(0, Hours + 9).Select(hour => lazy.At(hour))
            );
            Assert.Equal(double.PositiveInfinity, lazy.FirstAtOrAbove(long.MaxValue, 0));
            Assert.Equal(Hours, asked);
        }

        // Hour after hour, so that each is asked for as the first that is not there yet, and past the end.
        asked = 0;
        lazy.Start(Fill);
        Assert.All(Enumerable.Range(0, Hours + 2), hour => Assert.Equal(whole.At(hour + 0.5), lazy.At(hour + 0.5)));

        void Fill(int from, Span<double> into)
        {
            Assert.Equal(asked, from);
            rates.AsSpan(from, into.Length).CopyTo(into);
            asked += into.Length;
        }
    }

    [Fact]
    public void Filled_to_its_end_it_asks_no_more()
    {
        var (table, asked) = (new HeatTable(300), 0);
        table.Start((_, into) => asked += into.Length);
        table.FillAll();
        Assert.Equal(300, asked);
        Assert.Equal(0, table.At(299.5));
        Assert.Equal(300, asked);
    }

    [Fact]
    public void A_table_without_hours_or_with_too_few_rates_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new HeatTable(0));
        Assert.Throws<ArgumentException>(() => new HeatTable(3).Fill([1, 2]));
        var table = new HeatTable(1);
        table.Fill([24, 24]);
        Assert.Equal(1_000_000, table.At(1));
    }
}
