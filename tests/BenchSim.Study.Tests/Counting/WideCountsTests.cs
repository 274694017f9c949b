using BenchSim.Study.Counting;
using CsCheck;

namespace BenchSim.Study.Tests.Counting;

public class WideCountsTests
{
    [Fact]
    public void Is_exact_for_as_many_seasons_as_it_keeps_values()
    {
        // 1,024 different values: 10 % of 1,024 is 102.4, so the 103rd smallest; 50 %: the 512th; 95 %: 972.8, the 973rd.
        var seen = Read(Of([.. Enumerable.Range(1, 1024).Reverse().Select(i => i * 1_000_003L)]), 1024);

        Assert.False(seen.IsClassed);
        Assert.Equal(103 * 1_000_003L, seen.Quantile(10));
        Assert.Equal(512 * 1_000_003L, seen.Quantile(50));
        Assert.Equal(973 * 1_000_003L, seen.Quantile(95));
    }

    [Fact]
    public void Agrees_with_sorting_for_any_numbers_and_any_split() =>
        Gen.Select(Gen.OneOf(Gen.Const(0L), Gen.Long[0, 20], Gen.Long[0, 5_000_000_000]).Array[1, 60], Gen.Int[0, 60])
            .Sample(
                (values, cut) =>
                {
                    var left = Of(values[..Math.Min(cut, values.Length)]);
                    left.Merge(Of(values[Math.Min(cut, values.Length)..]));
                    Naive.Check(values, Read(left, values.Length));
                },
                seed: "0000KfHk3Ryn",
                iter: 500
            );

    [Fact]
    public void With_more_values_the_moments_stay_exact_and_quantiles_err_upward_by_less_than_a_256th()
    {
        Random random = new(20270301);
        long[] values = [.. Enumerable.Range(0, 5000).Select(_ => random.NextInt64(1, 1L << random.Next(1, 40)))];
        var seen = Read(Of(values), values.Length);
        long[] sorted = [.. values.Order()];

        Assert.Equal((UInt128)(ulong)values.Sum(), seen.Moments().Sum);
        Assert.Equal((sorted[0], sorted[^1]), (seen.Moments().Least, seen.Moments().Most));
        foreach (var percent in new[] { 5, 10, 25, 50, 75, 90, 95, 99 })
        {
            var exact = sorted[((percent * values.Length) + 99) / 100 - 1];
            var told = seen.Quantile(percent);
            Assert.InRange(told, exact, exact * (1 + (1.0 / 256)));
        }

        Assert.Equal(sorted[^1], seen.Quantile(100));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(300)]
    [InlineData(1023)]
    [InlineData(1024)]
    [InlineData(1025)]
    [InlineData(1900)]
    public void The_split_does_not_show_even_where_only_the_whole_has_too_many_values(int cut)
    {
        // 2,000 different values: halves below 1,024 are kept value by value, the whole is not, whichever way it came about.
        long[] values = [.. Enumerable.Range(0, 2000).Select(i => 100_000L + (i * 37L))];
        var whole = Read(Of(values), 2000);
        var merged = Of(values[cut..]);
        merged.Merge(Of(values[..cut]));
        var parts = Read(merged, 2000);

        Assert.True(whole.IsClassed);
        Assert.Equal(whole.Moments(), parts.Moments());
        for (var percent = 1; percent <= 100; percent++)
        {
            Assert.Equal(whole.Quantile(percent), parts.Quantile(percent));
        }
    }

    [Fact]
    public void Classes_follow_on_without_gap_and_are_narrow()
    {
        // Below 512 a class is one value; above, the class of v ends below v + v / 256.
        for (long value = 0; value < 512; value++)
        {
            Assert.Equal(value, WideCount.UpperEnd(WideCount.ClassOf(value)));
        }

        for (var index = 511; index < 9000; index++)
        {
            var lower = WideCount.UpperEnd(index - 1) + 1;
            var upper = WideCount.UpperEnd(index);
            Assert.Equal(index, WideCount.ClassOf(lower));
            Assert.Equal(index, WideCount.ClassOf(upper));
            Assert.InRange(upper - lower, 0, (lower / 256.0) - 1 + 0.001);
        }

        Assert.Equal(long.MaxValue, WideCount.UpperEnd(WideCount.ClassOf(long.MaxValue)));
    }

    [Fact]
    public void Memory_does_not_grow_with_the_seasons()
    {
        // 300,000 different values: kept one by one they would take 2.4 MB at the least. Classes from 1 to 2^40 are 8,448 counts of 4
        // bytes, 34 kB; growing there by doubling takes less than four times as much.
        Random random = new(20270302);
        WideCounts counts = new(1);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 300_000; i++)
        {
            counts.Add(0, random.NextInt64(1, 1L << 40));
        }

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 200_000);
    }

    [Fact]
    public void Zero_is_counted_like_any_other_value()
    {
        // 0 0 0 4: P50 and P75 are 0, P95 is 4.
        var seen = Read(Of(0, 4, 0, 0), 4);

        Assert.Equal((0L, 0L, 4L), (seen.Quantile(50), seen.Quantile(75), seen.Quantile(95)));
        Assert.Equal(new Moments(4, 4, 16, 0, 4), seen.Moments());
    }

    [Fact]
    public void Zeros_beside_classes_are_in_every_figure()
    {
        // 2,000 different values and 2,000 seasons of 0: half of the seasons at 0, the smallest 0, the sums those of the values.
        long[] values = [.. Enumerable.Range(0, 2000).Select(i => 100_000L + (i * 37L)), .. new long[2000]];
        var seen = Read(Of(values), values.Length);

        Assert.True(seen.IsClassed);
        Assert.Equal((0L, 4000), (seen.Quantile(50), seen.Moments().Seasons));
        Assert.Equal((0L, 100_000L + (1999 * 37L)), (seen.Moments().Least, seen.Moments().Most));
        Assert.Equal((UInt128)(ulong)values.Sum(), seen.Moments().Sum);
    }

    [Fact]
    public void Negative_numbers_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new WideCounts(1).Add(0, -1));

    private static WideCounts Of(params long[] values)
    {
        WideCounts counts = new(1);
        foreach (var value in values)
        {
            counts.Add(0, value);
        }

        return counts;
    }

    private static Seen Read(WideCounts counts, int seasons)
    {
        Seen seen = new();
        counts.Read(0, seen);
        seen.AddZeros(seasons);
        return seen;
    }
}
