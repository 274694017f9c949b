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
        var table = Table([.. Enumerable.Repeat(10.0, 24 * 50)]);
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
        var table = Table(24, 24, 48, 48, 0, 0);
        Assert.Equal(24, table.Hours);
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
        var table = Table(24e-6, 24e-6, 24e-6);
        Assert.Equal(units, table.At(hour));
    }

    [Fact]
    public void A_level_is_reached_at_the_first_instant_that_has_it()
    {
        var table = Table(24, 24, 48, 48, 0, 0, 24, 0);
        Assert.Equal(0, table.FirstAtOrAbove(0, 0));
        Assert.Equal(3, table.FirstAtOrAbove(2_000_000, 3)); // there already
        Assert.Equal(2, table.FirstAtOrAbove(2_000_000, 0));
        Assert.Equal(2.5, table.FirstAtOrAbove(3_000_000, 0.5), 6);
        Assert.Equal(4, table.FirstAtOrAbove(6_000_000, 1));
        Assert.Equal(5.5, table.FirstAtOrAbove(6_000_000, 5.5));
        Assert.Equal(6.5, table.FirstAtOrAbove(6_500_000, 5), 6); // past two hours without heat
        Assert.Equal(7, table.FirstAtOrAbove(7_000_000, 6.25));
        Assert.Equal(double.PositiveInfinity, table.FirstAtOrAbove(7_000_001, 0));
        Assert.Equal(double.PositiveInfinity, table.FirstAtOrAbove(7_000_001, 99));
    }

    [Theory]
    [InlineData(1.2345674, 1_234_567)]
    [InlineData(1.2345676, 1_234_568)]
    [InlineData(0, 0)]
    public void Degree_days_in_whole_millionths(double degreeDays, long units) => Assert.Equal(units, HeatTable.Units(degreeDays));

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    public void A_search_from_any_hour_finds_the_first_that_has_the_level(double nothingFrom)
    {
        // Uneven heat, none at all for four days: by hand the first hour whose sum, rounded, is there.
        var random = new Random(7);
        double[] rates =
        [
            .. Enumerable.Range(0, 24 * 20).Select(hour => hour >= nothingFrom && hour < nothingFrom + 96 ? 0 : 30 * random.NextDouble()),
        ];
        var table = Table(rates);
        var sums = new double[rates.Length + 1];
        for (var hour = 0; hour < rates.Length; hour++)
        {
            sums[hour + 1] = sums[hour] + rates[hour];
        }

        long[] units = [.. sums.Select(sum => (long)Math.Round(sum * (1e6 / 24)))];
        for (var draw = 0; draw < 2000; draw++)
        {
            var from = random.Next(rates.Length);
            var level = units[from] + random.NextInt64(units[^1] - units[from] + 1);
            var high = Array.FindIndex(units, from, each => each >= level);
            Assert.Equal(units[from], table.At(from));
            var expected =
                high == from ? from
                : units[high] == level ? high
                : high - 1 + ((level - 0.5 - units[high - 1]) / (units[high] - units[high - 1]));
            Assert.Equal(expected, table.FirstAtOrAbove(level, from));
        }
    }

    // Halves go to the even neighbour, as Math.Round has it; so do the numbers next to a half go where they belong, up to where a double
    // has no halves left.
    [Fact]
    public void Rounding_by_a_great_number_is_rounding()
    {
        double[] wholes = [0, 1, 2, 3, 41, 1_000_000, 4_300_000_000, (1L << 45) + 1, (1L << 50) - 1, (1L << 51) - 2];
        foreach (var whole in wholes)
        {
            foreach (var part in new[] { 0, 0.25, 0.5, 0.75 })
            {
                var number = whole + part;
                foreach (var each in new[] { number, Math.BitIncrement(number), Math.BitDecrement(number) })
                {
                    Assert.Equal((long)Math.Round(each), HeatTable.Whole(each));
                    Assert.Equal((long)Math.Round(-each), HeatTable.Whole(-each));
                }
            }
        }

        Assert.Equal([0, 2, 2, 4], new[] { 0.5, 1.5, 2.5, 3.5 }.Select(HeatTable.Whole));
        var random = new Random(4);
        for (var draw = 0; draw < 100_000; draw++)
        {
            var number = Math.Exp(random.NextDouble() * 35);
            Assert.Equal((long)Math.Round(number), HeatTable.Whole(number));
        }
    }

    // Hours that are filled as they are asked for give what hours filled at once give, and each day is asked for once, in order.
    [Fact]
    public void Filled_when_asked_it_is_the_same()
    {
        const int Days = 42;
        double[] rates = [.. Enumerable.Range(0, Days * 24).Select(hour => 12 + (10 * Math.Sin(hour)))];
        var (whole, asked) = (Table(rates), 0);
        whole.At(Days * 24);
        var heat = new HeatSums(Days, new double[Days], 0, Fill);
        var lazy = heat.Add(AsItIs, 0);
        for (var round = 0; round < 2; round++)
        {
            Assert.Equal(whole.At(30.5), lazy.At(30.5));
            Assert.InRange(asked, 2, Days - 1);
            Assert.Equal(whole.FirstAtOrAbove(HeatTable.Units(300), 31), lazy.FirstAtOrAbove(HeatTable.Units(300), 31));
            Assert.Equal(
                Enumerable.Range(0, (Days * 24) + 9).Select(hour => whole.At(hour)),
                Enumerable.Range(0, (Days * 24) + 9).Select(hour => lazy.At(hour))
            );
            Assert.Equal(double.PositiveInfinity, lazy.FirstAtOrAbove(long.MaxValue / 2, 0));
            Assert.Equal(Days, asked);
            Renew();
        }

        // Hour after hour, so that each is asked for as the first that is not there yet, and past the end.
        Assert.All(Enumerable.Range(0, (Days * 24) + 2), hour => Assert.Equal(whole.At(hour + 0.5), lazy.At(hour + 0.5)));

        void Renew()
        {
            asked = 0;
            heat.Renew();
            heat.Ask(lazy.Block);
        }

        void Fill(int air, int day, Span<double> into)
        {
            Assert.Equal(asked, day);
            rates.AsSpan(day * 24, 24).CopyTo(into);
            asked++;
        }
    }

    // A sum that is asked for when others stand at some day is filled up to there; one that is asked for neither under the present weather
    // nor was under the one before is not filled.
    [Fact]
    public void Sums_that_come_later_are_filled_as_far()
    {
        const int Days = 30;
        var (airs, asked) = (Enumerable.Range(0, 3).Select(air => Enumerable.Repeat(air + 1.0, 24).ToArray()).ToArray(), new int[3]);
        var heat = new HeatSums(Days, new double[Days], 0, Fill);
        var first = heat.Add(AsItIs, 1);
        Assert.Equal(HeatTable.Units(2 * 15), first.At(24 * 15));
        var later = heat.Add(AsItIs, 2);
        Assert.Equal(HeatTable.Units(3 * 15), later.At(24 * 15));
        Assert.True(asked[1] < Days);
        Assert.Equal(asked[1], asked[2]);

        heat.Renew();
        asked.AsSpan().Clear();
        heat.Ask(first.Block);
        Assert.Equal(HeatTable.Units(2 * 30), first.At(24 * 40));
        Assert.Equal([0, Days, Days], asked);

        heat.Renew();
        asked.AsSpan().Clear();
        heat.Ask(first.Block);
        Assert.Equal(HeatTable.Units(2 * 30), first.At(24 * 40));
        Assert.Equal([0, Days, 0], asked);
        heat.Ask(later.Block);
        Assert.Equal(HeatTable.Units(3 * 30), later.At(24 * 40));
        Assert.Equal([0, Days, Days], asked);

        void Fill(int air, int day, Span<double> into)
        {
            airs[air].CopyTo(into);
            asked[air]++;
        }
    }

    // Adds the temperature itself: base 0, and never past its optimum.
    private static HeatLaw AsItIs { get; } = HeatLaw.Emergence(0, 1e6, 1e6, 2e6);

    // A table of rates a day, hour by hour; none after the last.
    private static HeatTable Table(params double[] rates)
    {
        var days = (rates.Length + 23) / 24;
        var hours = new double[days * 24];
        rates.CopyTo(hours, 0);
        return new HeatSums(days, new double[days], 0, (_, day, into) => hours.AsSpan(day * 24, 24).CopyTo(into)).Add(AsItIs, 0);
    }
}
